package farwatt.command;

import farwatt.quantity.Units;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Points;
import farwatt.study.Sink;
import farwatt.study.Sweep;
import farwatt.workbook.StudyTable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Works out every combination of values in some cells. */
@Command(
        name = "sweep",
        description = "Every combination of values in some cells, with what expressions then give. Values: 'a, b, c' or"
                + " 'a .. b by c'.")
final class SweepVerb extends StudyVerb {
    private static final int MOST_SHOWN = 10_000;

    @Option(
            names = "--over",
            required = true,
            paramLabel = "'CELL = VALUES'",
            description = "What to vary, such as 'trunk.gauge = 22 AWG, 24 AWG'; may be said several times.")
    private List<String> over = new ArrayList<>();

    @Option(names = "--read", required = true, arity = "1..*", paramLabel = "EXPR", description = "What to work out.")
    private List<String> reads = new ArrayList<>();

    @Option(
            names = "-o",
            paramLabel = "FILE",
            description = "Writes the points there: as they come to a .csv, with charts to an .xlsx.")
    private String file = "";

    @Mixin
    private StudyPicture picture = new StudyPicture();

    @Override
    void study(Ground ground, Effort effort) throws Refusal, IOException {
        picture.check(scenario());
        if (isWorkbook(file)) {
            Sweep whole = Sweep.of(ground, varies(ground, over), reads);
            Points points = whole.points(effort);
            workbook(file, ground, sheetsOf(ground).sweep(points, whole.varied()), effort);
            drawn(ground, points, whole.varied());
            return;
        }
        Sweep sweep = Sweep.of(ground, varies(ground, over), reads);
        Optional<Points> kept = picture.isWanted() ? Optional.of(sweep.points(effort)) : Optional.empty();
        if (!file.isEmpty()) {
            try (StudyFile out = new StudyFile(file, sweep.columns())) {
                run(sweep, kept, effort, out);
                out.done();
            }
            written(file);
        } else if (json) {
            Summary summary = new Summary(sweep.columns(), sweep.varied());
            try (StudyJson out = new StudyJson(
                    output(), sweep.columns(), new Units(ground.plan().currency()))) {
                run(sweep, kept, effort, point -> {
                    summary.take(point);
                    out.point(point);
                });
                summary.write(out.summary());
            }
        } else {
            if (sweep.size() > MOST_SHOWN) {
                throw Refusal.of(CommandCode.TOO_LONG_TO_SHOW, sweep.size(), MOST_SHOWN);
            }
            Points points = kept.isPresent() ? kept.get() : sweep.points(effort);
            StudyText.table(output(), points);
            StudyText.reasons(output(), points);
        }
        if (kept.isPresent()) {
            drawn(ground, kept.get(), sweep.varied());
        }
    }

    private void drawn(Ground ground, Points points, int varied) throws Refusal {
        if (picture.isWanted()) {
            picture.write(output(), ground, points, varied);
        }
    }

    @Override
    List<StudyTable> sheets(Ground ground, Effort effort) throws Refusal {
        Sweep sweep = Sweep.of(ground, varies(ground, over), reads);
        return sheetsOf(ground).sweep(sweep.points(effort), sweep.varied());
    }

    /** Hands the points on: those that are kept, or as they are worked out. */
    private static void run(Sweep sweep, Optional<Points> kept, Effort effort, Sink sink) throws IOException {
        if (kept.isPresent()) {
            kept.get().to(sink);
        } else {
            sweep.run(effort, sink);
        }
    }
}
