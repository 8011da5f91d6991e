package farwatt.command;

import farwatt.engine.Calculation;
import farwatt.engine.Still;
import farwatt.picture.Diagram;
import farwatt.picture.DiagramPicture;
import farwatt.picture.Heading;
import farwatt.picture.Palette;
import farwatt.picture.PictureFile;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.review.Review;
import farwatt.review.Reviewer;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the single-line diagram as a picture. */
@Command(
        name = "diagram",
        description = {
            "The single-line diagram as a picture.",
            "Figures are those of one corner: the one named, else the plan's. Marks and verdict are those of the"
                    + " corner named, else of every corner."
        })
final class DiagramVerb extends PlanVerb {
    @Option(
            names = "-o",
            paramLabel = "FILE",
            required = true,
            description = "Where to write it; the name ends in .png or .svg.")
    private Path target = Path.of("");

    @Option(
            names = "--palette",
            paramLabel = "WORD",
            defaultValue = "light",
            description = "light, dark or contrast; light unless named.")
    private String palette = "light";

    @Override
    public Integer call() throws Exception {
        Palette colours = Palette.of(palette).orElseThrow(() -> badPalette(palette));
        Calculation calculation = calculation();
        sayNotices();
        Review review = corner().isPresent()
                ? Reviewer.review(calculation, calculation.corner())
                : Reviewer.review(calculation);
        Still still = calculation.still();
        Diagram diagram = Diagram.of(still, Optional.of(review));
        Heading heading = Heading.of(
                still,
                Optional.of(review),
                Optional.of(scenario()).filter(id -> !id.isEmpty()),
                Optional.of(LocalDate.now(ZoneId.systemDefault())));
        PictureFile.write(new DiagramPicture(diagram, heading, colours), target);
        output().say(Messages.text(CommandCode.DRAWN, target));
        return Exit.DONE;
    }

    private static Refusal badPalette(String word) {
        String known = Arrays.stream(Palette.values()).map(Palette::word).collect(Collectors.joining(", "));
        return Refusal.of(CommandCode.BAD_PALETTE, word, known);
    }
}
