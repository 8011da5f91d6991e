package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.picture.Chart;
import farwatt.picture.StudyCharts;
import farwatt.quantity.Units;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Heading;
import farwatt.study.Scatter;
import farwatt.study.Sink;
import farwatt.study.Spread;
import farwatt.workbook.StudyTable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A tolerance study. */
@Command(
        name = "spread",
        description = "Cells take values by chance many times over. Values: 'x +- 5 %' (all alike), 'x ~ 5 %' (bell"
                + " curve, standard deviation), 'a, b, c', 'a .. b'.")
final class SpreadVerb extends StudyVerb {
    private static final List<String> LEVELS =
            List.of("least", "p1", "p5", "p25", "p50", "p75", "p95", "p99", "greatest");

    @Option(
            names = "--vary",
            required = true,
            paramLabel = "'CELL = VALUES'",
            description = "What spreads, such as 'trunk.length = 95 m +- 5 %'; may be said several times.")
    private List<String> vary = new ArrayList<>();

    @Option(names = "--read", required = true, arity = "1..*", paramLabel = "EXPR", description = "What to work out.")
    private List<String> reads = new ArrayList<>();

    @Option(names = "--runs", paramLabel = "N", description = "How many times; ${DEFAULT-VALUE} unless said.")
    private int runs = Spread.USUAL_RUNS;

    @Option(names = "--seed", paramLabel = "N", description = "Another number, other chances; 1 unless said.")
    private long seed = 1;

    @Option(
            names = "-o",
            paramLabel = "FILE",
            description = "Writes every run there to a .csv, or how often what came out to an .xlsx.")
    private String file = "";

    @Mixin
    private StudyPicture picture = new StudyPicture();

    @Override
    void study(Ground ground, Effort effort) throws Refusal, IOException {
        picture.check(scenario());
        Spread spread = Spread.of(ground, varies(ground, vary), reads, runs, seed);
        Values values = new Values();
        if (isWorkbook(file)) {
            workbook(file, ground, sheets(ground, effort), effort);
            return;
        }
        if (!file.isEmpty()) {
            try (StudyFile out = new StudyFile(file, spread.columns())) {
                List<Scatter> all = spread.run(effort, values.before(out));
                text(all);
                out.done();
                values.draw(all, ground);
            }
            written(file);
        } else if (json) {
            try (StudyJson out = new StudyJson(
                    output(), spread.columns(), new Units(ground.plan().currency()))) {
                List<Scatter> all = spread.run(effort, values.before(out::point));
                summary(out.summary(), all);
                values.draw(all, ground);
            }
        } else {
            List<Scatter> all = spread.run(effort, values.before(point -> {}));
            text(all);
            values.draw(all, ground);
        }
    }

    @Override
    List<StudyTable> sheets(Ground ground, Effort effort) throws Refusal, IOException {
        Spread spread = Spread.of(ground, varies(ground, vary), reads, runs, seed);
        double[][] kept = new double[reads.size()][runs];
        List<Scatter> all = spread.run(effort, point -> {
            for (int r = 0; r < kept.length; r++) {
                kept[r][(int) point.number()] = point.inside(vary.size() + r);
            }
        });
        List<StudyTable> sheets = new ArrayList<>();
        for (int r = 0; r < kept.length; r++) {
            sheets.add(sheetsOf(ground).spread(all.get(r), kept[r]));
        }
        return sheets;
    }

    /** What was read, kept for the picture where one is wanted. */
    private final class Values {
        private final double[][] kept = new double[picture.isWanted() ? reads.size() : 0][runs];

        Sink before(Sink sink) {
            return point -> {
                for (int r = 0; r < kept.length; r++) {
                    kept[r][(int) point.number()] = point.inside(vary.size() + r);
                }
                sink.take(point);
            };
        }

        void draw(List<Scatter> all, Ground ground) throws Refusal {
            List<Chart> charts = new ArrayList<>();
            for (int r = 0; r < kept.length; r++) {
                Scatter scatter = all.get(r);
                OptionalDouble target =
                        StudyPicture.target(ground, scatter.heading().name());
                charts.add(StudyCharts.of(scatter, DoubleStream.of(kept[r]), target, picture.below(ground)));
            }
            if (!charts.isEmpty()) {
                picture.write(output(), charts);
            }
        }
    }

    private void text(List<Scatter> all) {
        List<String> headings = new ArrayList<>(List.of("read", "mean", "deviation"));
        headings.addAll(LEVELS);
        headings.addAll(List.of("without value", "fails", "95 % interval"));
        TextTable table = new TextTable(headings);
        for (Scatter scatter : all) {
            Heading heading = scatter.heading();
            List<String> cells = new ArrayList<>(List.of(heading.name()));
            cells.add(heading.isNumber() ? heading.text(scatter.mean()) : "");
            cells.add(heading.isNumber() ? difference(heading, scatter.deviation()) : "");
            for (double level : scatter.levels()) {
                cells.add(heading.isNumber() ? heading.text(level) : "");
            }
            cells.add(Long.toString(scatter.without()));
            // a figure holds or fails nothing; a condition does
            cells.add(heading.isNumber() ? "" : share(scatter.failing()));
            cells.add(heading.isNumber() ? "" : share(scatter.failingLeast()) + " .. " + share(scatter.failingMost()));
            table.row(cells);
        }
        table.lines().forEach(output()::line);
    }

    /** A deviation of temperatures is no temperature. */
    private static String difference(Heading heading, double inside) {
        Units units = new Units("EUR");
        boolean celsius = heading.unit().isAbsoluteTemperature();
        return Double.isNaN(inside)
                ? "–"
                : farwatt.quantity.Show.text(inside, celsius ? units.need("K") : heading.unit());
    }

    private static String share(double share) {
        return farwatt.quantity.Show.text(share, new Units("EUR").need("%"));
    }

    private void summary(JsonOut out, List<Scatter> all) throws IOException {
        JsonGenerator json = out.json();
        json.writeNumberField("runs", runs);
        json.writeNumberField("seed", seed);
        json.writeArrayFieldStart("read");
        for (Scatter scatter : all) {
            json.writeStartObject();
            json.writeStringField("name", scatter.heading().name());
            if (scatter.heading().isNumber()) {
                out.number("mean", scatter.mean());
                out.number("deviation", scatter.deviation());
                for (int i = 0; i < LEVELS.size(); i++) {
                    out.number(LEVELS.get(i), scatter.levels().get(i));
                }
            }
            json.writeNumberField("without", scatter.without());
            if (!scatter.heading().isNumber()) {
                out.number("failing", scatter.failing());
                out.number("failing_least", scatter.failingLeast());
                out.number("failing_most", scatter.failingMost());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
