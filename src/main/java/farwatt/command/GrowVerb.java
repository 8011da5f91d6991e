package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.picture.StudyCharts;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Grow;
import farwatt.study.Grown;
import farwatt.study.Sides;
import farwatt.workbook.StudyTable;
import java.io.IOException;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Adds copies until a condition is met. */
@Command(name = "grow", description = "Adds copies of a device or switch with its run until a condition is met.")
final class GrowVerb extends StudyVerb {
    @Option(names = "--copy", required = true, paramLabel = "ID", description = "The device or switch to copy.")
    private String copy = "";

    @Option(
            names = "--until",
            required = true,
            paramLabel = "EXPR",
            description = "A condition, such as 'gate.reserve_share < reserve_target'.")
    private String until = "";

    @Option(names = "--most", paramLabel = "N", description = "Copies to try at most; ${DEFAULT-VALUE} unless said.")
    private int most = Grow.USUAL_MOST;

    @Mixin
    private StudyPicture picture = new StudyPicture();

    @Override
    void study(Ground ground, Effort effort) throws Refusal, IOException {
        picture.check(scenario());
        Grown grown = Grow.until(ground, copy, until, most, Sides.of(ground, until), effort);
        if (picture.isWanted()) {
            picture.write(output(), List.of(StudyCharts.of(grown, copy, picture.below(ground))));
        }
        if (json) {
            json(ground, grown);
            return;
        }
        StudyText.table(output(), grown.points());
        output().line("");
        output().line(Messages.text(CommandCode.GROWN, grown.fitted(), copy));
        output().line(grown.stoppedBy());
        grown.firstDark().ifPresent(at -> output().line(Messages.text(CommandCode.FIRST_DARK, at, grown.darkId())));
    }

    @Override
    List<StudyTable> sheets(Ground ground, Effort effort) throws Refusal {
        Grown grown = Grow.until(ground, copy, until, most, Sides.of(ground, until), effort);
        return List.of(sheetsOf(ground).grow(grown, copy));
    }

    private void json(Ground ground, Grown grown) throws IOException {
        try (StudyJson out = new StudyJson(
                output(), grown.points().columns(), new Units(ground.plan().currency()))) {
            out.points(grown.points());
            JsonGenerator json = out.summary().json();
            json.writeNumberField("fitted", grown.fitted());
            json.writeStringField("stopped_by", grown.stoppedBy());
            json.writeBooleanField("reached", grown.reached());
            if (grown.firstDark().isPresent()) {
                json.writeNumberField("first_dark", grown.firstDark().get());
            } else {
                json.writeNullField("first_dark");
            }
            json.writeStringField("dark", grown.darkId());
        }
    }
}
