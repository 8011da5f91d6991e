package farwatt.command;

import farwatt.engine.Calculation;
import farwatt.picture.Diagram;
import farwatt.picture.Palette;
import farwatt.picture.Picture;
import farwatt.report.Messages;
import farwatt.review.Reviewer;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Draws the single-line diagram. */
@Command(name = "diagram", description = "The single-line diagram as a picture: PNG or SVG.")
final class DiagramVerb extends PlanVerb {
    @Option(names = "-o", paramLabel = "FILE", required = true, description = "Where to write it: .png or .svg.")
    private Path target = Path.of("");

    @Override
    public Integer call() throws Exception {
        Calculation calculation = calculation();
        sayNotices();
        corner().ifPresent(calculation::look);
        Diagram diagram = Diagram.of(calculation.still(), Optional.of(Reviewer.review(calculation)));
        String name = calculation.plan().name();
        String scenario = scenario().isEmpty() ? "" : ", " + scenario();
        String title = (name.isEmpty() ? "Plan" : name) + scenario + ", "
                + calculation.corner().phrase();
        Picture.of(diagram, title).write(target, Palette.LIGHT);
        output().say(Messages.text(CommandCode.PICTURE, target));
        return Exit.DONE;
    }
}
