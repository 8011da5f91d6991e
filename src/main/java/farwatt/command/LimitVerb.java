package farwatt.command;

import farwatt.picture.StudyCharts;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Limit;
import farwatt.study.Limited;
import farwatt.study.Points;
import farwatt.study.Sides;
import farwatt.study.Vary;
import farwatt.workbook.StudyTable;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Finds how far a value may go. */
@Command(name = "limit", description = "The farthest value along a span for which a condition holds.")
final class LimitVerb extends StudyVerb {
    @Option(
            names = "--vary",
            required = true,
            paramLabel = "'CELL = a .. b'",
            description = "What to vary, from the side where the condition holds.")
    private String vary = "";

    @Option(names = "--holds", required = true, paramLabel = "EXPR", description = "The condition.")
    private String holds = "";

    @Mixin
    private StudyPicture picture = new StudyPicture();

    @Override
    void study(Ground ground, Effort effort) throws Refusal, IOException {
        picture.check(scenario());
        Vary span = Vary.of(ground, vary);
        Limited limited = Limit.find(ground, span, holds, effort);
        if (picture.isWanted()) {
            Optional<Points> sides = Sides.along(ground, span, holds, limited, effort);
            picture.write(output(), List.of(StudyCharts.of(limited, sides, picture.below(ground))));
        }
        if (json) {
            json(ground, limited);
        } else {
            text(limited);
        }
    }

    @Override
    List<StudyTable> sheets(Ground ground, Effort effort) throws Refusal {
        Vary span = Vary.of(ground, vary);
        Limited limited = Limit.find(ground, span, holds, effort);
        Points tried = Sides.along(ground, span, holds, limited, effort).orElse(limited.points());
        return List.of(sheetsOf(ground).limit(tried, answer(limited)));
    }

    private static String answer(Limited limited) {
        String name = limited.heading().name();
        if (limited.farthest().isEmpty()) {
            return Messages.text(CommandCode.HOLDS_NOWHERE, name);
        }
        String farthest = shown(limited, limited.farthest().get());
        return limited.beyond()
                .map(beyond -> Messages.text(CommandCode.HOLDS_TO, name, farthest, shown(limited, beyond)))
                .orElseGet(() -> Messages.text(CommandCode.HOLDS_TO_END, name, farthest));
    }

    private void text(Limited limited) {
        output().line(answer(limited));
        if (!limited.monotonic()) {
            output().line(Messages.text(CommandCode.NOT_MONOTONIC));
            output().line("");
            StudyText.table(output(), limited.points());
        }
        StudyText.reasons(output(), limited.points());
    }

    private static String shown(Limited limited, double inside) {
        return farwatt.quantity.Show.text(inside, limited.heading().unit(), 8);
    }

    private void json(Ground ground, Limited limited) throws IOException {
        try (StudyJson out = new StudyJson(
                output(), limited.points().columns(), new Units(ground.plan().currency()))) {
            out.points(limited.points());
            JsonOut summary = out.summary();
            summary.number("farthest", limited.farthest().orElse(Double.NaN));
            summary.number("beyond", limited.beyond().orElse(Double.NaN));
            summary.json().writeBooleanField("monotonic", limited.monotonic());
        }
    }
}
