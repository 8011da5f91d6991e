package farwatt.command;

import farwatt.picture.Chart;
import farwatt.picture.Figures;
import farwatt.picture.Palette;
import farwatt.picture.PictureFile;
import farwatt.picture.Stack;
import farwatt.picture.StudyCharts;
import farwatt.picture.SweepChart;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.study.Ground;
import farwatt.study.Points;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** What verbs of studies have that also draw. */
final class StudyPicture {
    @Option(
            names = "--picture",
            paramLabel = "FILE",
            description = "Draws the result there; the name ends in .png or .svg.")
    private Path file = Path.of("");

    private String scenario = "";

    boolean isWanted() {
        return !file.toString().isEmpty();
    }

    /** Looks whether it can be written, before anything long is worked out. */
    void check(String scenarioLookedAt) throws Refusal {
        scenario = scenarioLookedAt.equals("base") ? "" : scenarioLookedAt;
        if (isWanted()) {
            PictureFile.check(file);
        }
    }

    /** What stands below the title. */
    String below(Ground ground) {
        return Stream.of(ground.plan().name(), scenario, ground.corner().phrase())
                .filter(text -> !text.isBlank())
                .collect(Collectors.joining(" · "));
    }

    static OptionalDouble target(Ground ground, String read) {
        return StudyCharts.target(ground.plan(), read);
    }

    /** Draws the points of a sweep, what was read one below the other. */
    void write(Output output, Ground ground, Points points, int varied) throws Refusal {
        List<Chart> charts = new ArrayList<>();
        for (int read = varied; read < points.columns().size(); read++) {
            OptionalDouble target = target(ground, points.columns().get(read).name());
            charts.add(SweepChart.of(Figures.of(points), varied, read, List.of(), target, below(ground))
                    .chart());
        }
        write(output, charts);
    }

    /** Draws charts one below the other; to be called where a picture is wanted. */
    void write(Output output, List<Chart> charts) throws Refusal {
        PictureFile.write(Stack.of(charts, Palette.LIGHT), file);
        output.say(Messages.text(CommandCode.DRAWN, file));
    }
}
