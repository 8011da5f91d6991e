package farwatt.workbook;

import farwatt.engine.Still;
import farwatt.picture.Diagram;
import farwatt.picture.DiagramPicture;
import farwatt.picture.Heading;
import farwatt.picture.Palette;
import farwatt.picture.Picture;
import farwatt.picture.PictureFile;
import farwatt.report.Refusal;
import farwatt.review.Review;
import java.nio.ByteBuffer;
import java.util.Optional;

/** The single-line diagram as it goes on the summary. */
final class SiteDiagram {
    /** More nodes could not be read on a page. */
    private static final int MOST_NODES = 60;

    private static final double WIDEST = 500;
    private static final double HIGHEST = 640;

    private SiteDiagram() {}

    /** The diagram of what was solved; empty for large networks, which the schedules list, and where no font is. */
    static Optional<BookPicture> of(Still still, Review review, Optional<String> scenario) {
        Diagram diagram = Diagram.of(still, Optional.of(review));
        if (diagram.cards().isEmpty() || diagram.cards().size() > MOST_NODES) {
            return Optional.empty();
        }
        Heading heading = Heading.of(still, Optional.of(review), scenario, Optional.empty());
        Picture picture = new DiagramPicture(diagram, heading, Palette.LIGHT);
        double scale = Math.min(1, Math.min(WIDEST / picture.width(), HIGHEST / picture.height()));
        try {
            return Optional.of(new BookPicture(
                    ByteBuffer.wrap(PictureFile.png(picture)),
                    picture.width() * scale,
                    picture.height() * scale,
                    picture.title() + "\n" + picture.description()));
        } catch (Refusal noFont) {
            return Optional.empty();
        }
    }
}
