package farwatt.workbook;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Name;
import farwatt.engine.Calculation;
import farwatt.engine.Fault;
import farwatt.engine.Value;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What to expect at both ends of every run, cells to write readings in, and what these say: the workbook works the
 * ratio and the verdict out as soon as something is typed (IEEE 802.3 knows no such test; the bands are practice).
 */
final class TestTable {
    private static final String READINGS = "AND(ISNUMBER({r_near}),ISNUMBER({r_far}),ISNUMBER({taken}))";

    private final Calculation calc;
    private final Loops loops;
    private final int[] runs;

    private TestTable(Calculation calc) {
        this.calc = calc;
        loops = Loops.of(calc);
        runs = InUse.places(calc, Table.RUNS);
    }

    static Schedule of(Calculation calc) {
        TestTable table = new TestTable(calc);
        List<Column> columns = new ArrayList<>(expected());
        columns.addAll(read());
        columns.addAll(said());
        boolean misses = IntStream.of(table.runs)
                .anyMatch(run -> table.value(run, "loop").fault().isPresent());
        if (misses) {
            columns.add(
                    Column.of("why", "why a figure is missing", Form.SENTENCE).in(Column.Band.ANSWER));
        }
        return new Schedule(
                Titles.TEST,
                "What to expect " + calc.corner().phrase() + ". Write readings into the sand-coloured cells under load;"
                        + " pair loop is what a tester shows over one pair.",
                columns,
                new Schedule.Lines() {
                    @Override
                    public int size() {
                        return table.runs.length;
                    }

                    @Override
                    public List<Entry> at(int line) {
                        List<Entry> entries = table.line(table.runs[line]);
                        return misses ? entries : entries.subList(0, entries.size() - 1);
                    }
                });
    }

    private static List<Column> expected() {
        Column.Band band = Column.Band.ANSWER;
        return List.of(
                Column.of("run", "run", Form.WORD),
                Column.of("from", "from", Form.WORD).in(Column.Band.PLANNED),
                Column.of("to", "to", Form.WORD).in(Column.Band.PLANNED),
                Column.of("pairs", "pairs", Form.WHOLE).in(band),
                Column.of("near", "volts near", Form.TWO).in("V").in(band),
                Column.of("far", "volts far", Form.TWO).in("V").in(band),
                Column.of("amps", "amps", Form.THREE).in("A").in(band),
                Column.of("temp", "wire temp", Form.ONE).in("°C").in(band),
                Column.of("now", "loop now", Form.THREE).in("Ω").in(band),
                Column.of("at20", "loop at 20 °C", Form.THREE).in("Ω").in(band),
                Column.of("pair", "pair loop at 20 °C", Form.THREE).in("Ω").in(band));
    }

    private static List<Column> read() {
        return List.of(
                reading("r_near", "volts near", "V", "seen_volts_near"),
                reading("r_far", "volts far", "V", "seen_volts_far"),
                reading("r_amps", "amps", "A", "seen_amps").as(Form.READING_FINE),
                reading("r_watts", "or watts", "W", "seen_watts"),
                reading("r_temp", "wire temp", "°C", "seen_temp"));
    }

    private static Column reading(String key, String heading, String unit, String name) {
        Name.Range range = Catalogue.need(Table.RUNS, name).plausible().orElseThrow();
        return Column.of(key, heading, Form.READING)
                .in(unit)
                .in(Column.Band.READ)
                .within(range.low(), range.high());
    }

    private static List<Column> said() {
        Column.Band band = Column.Band.ANSWER;
        return List.of(
                Column.of("kelvin", "loop a kelvin", Form.FOUR).in("Ω/K").in(band),
                Column.of("taken", "amps taken", Form.THREE).in("A").in(band),
                Column.of("seen", "loop read", Form.THREE).in("Ω").in(band),
                Column.of("expect", "loop to expect", Form.THREE).in("Ω").in(band),
                Column.of("ratio", "ratio", Form.THREE).in(band),
                Column.of("spread", "uncertain by", Form.SHARE).in(band),
                Column.of("verdict", "verdict", Form.ADVICE).in(band));
    }

    private List<Entry> line(int run) {
        List<Entry> entries = new ArrayList<>();
        entries.add(Entry.words(calc.id(Table.RUNS, run)));
        entries.add(Entry.words(LabelTable.end(calc, run, "from")));
        entries.add(Entry.words(LabelTable.end(calc, run, "to")));
        Value pairs = value(run, "pairs");
        entries.add(pairs.isPresent() ? Entry.number(Double.parseDouble(pairs.words())) : Entry.NONE);
        for (String name : List.of("volts_near", "volts_far", "amps", "wire_temp", "loop")) {
            entries.add(Figure.of(value(run, name)));
        }
        entries.add(Entry.number(loops.at20(run)));
        boolean known = pairs.isPresent() && !Double.isNaN(loops.at20(run));
        entries.add(
                known ? Entry.live("{pairs}*{at20}", Double.parseDouble(pairs.words()) * loops.at20(run)) : Entry.NONE);
        for (String name : List.of("seen_volts_near", "seen_volts_far", "seen_amps", "seen_watts", "seen_temp")) {
            entries.add(Figure.of(value(run, name)));
        }
        entries.addAll(said(run));
        return entries;
    }

    private List<Entry> said(int run) {
        Value loop = value(run, "loop");
        double seen = plain(run, "seen_loop");
        double ratio = plain(run, "seen_ratio");
        return List.of(
                Entry.number(loops.perKelvin(run)),
                Entry.live(
                        "IF(ISNUMBER({r_amps}),{r_amps},IF(AND(ISNUMBER({r_watts}),ISNUMBER({r_near})),"
                                + "IF({r_near}>0,{r_watts}/{r_near},0),\"\"))",
                        taken(run)),
                Entry.live("IF(" + READINGS + ",IF({taken}>0,({r_near}-{r_far})/{taken},\"\"),\"\")", seen),
                Double.isNaN(loops.at20(run))
                        ? Entry.NONE
                        : Entry.live(
                                "IF(ISNUMBER({r_temp}),{at20}+{kelvin}*({r_temp}-20),IF(ISNUMBER({now}),{now},\"\"))",
                                expected(run)),
                Entry.live(
                        "IF(AND(ISNUMBER({seen}),ISNUMBER({expect})),IF({expect}>0,{seen}/{expect},\"\"),\"\")", ratio),
                Entry.live(
                        "IF(" + READINGS + ",IF({r_near}<>{r_far},SQRT(2*(" + Judging.VOLTS_ERROR.cell()
                                + "/({r_near}-{r_far}))^2+" + Judging.AMPS_ERROR.cell() + "^2+"
                                + Judging.MODEL_ERROR.cell() + "^2),\"\"),\"\")",
                        Double.isNaN(seen) ? Double.NaN : plain(run, "seen_spread")),
                Entry.live(Judging.verdict(), verdict(run, ratio)),
                Entry.words(loop.fault().map(Fault::text).orElse("")));
    }

    private double taken(int run) {
        double amps = plain(run, "seen_amps");
        double near = plain(run, "seen_volts_near");
        double watts = plain(run, "seen_watts");
        return Double.isNaN(amps) && !Double.isNaN(watts) && !Double.isNaN(near) ? (near > 0 ? watts / near : 0) : amps;
    }

    private double expected(int run) {
        double celsius = plain(run, "seen_temp");
        return Double.isNaN(celsius) ? plain(run, "loop") : loops.at20(run) + loops.perKelvin(run) * (celsius - 20);
    }

    private String verdict(int run, double ratio) {
        if (Double.isNaN(ratio)) {
            return "";
        }
        double drop = plain(run, "seen_volts_near") - plain(run, "seen_volts_far");
        if (drop < Judging.DROP_LEAST.of(calc)) {
            return Judging.FEW_VOLTS;
        }
        if (plain(run, "seen_spread") > Judging.SPREAD_MOST.of(calc)) {
            return Judging.UNSURE;
        }
        return value(run, "seen_verdict").words();
    }

    private double plain(int run, String name) {
        Value value = value(run, name);
        return value.isPresent() ? value.inside() : Double.NaN;
    }

    private Value value(int run, String name) {
        return calc.value(Table.RUNS, run, name);
    }
}
