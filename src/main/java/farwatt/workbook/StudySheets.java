package farwatt.workbook;

import farwatt.language.Type;
import farwatt.quantity.Unit;
import farwatt.study.Effect;
import farwatt.study.Effects;
import farwatt.study.Fit;
import farwatt.study.Grown;
import farwatt.study.Heading;
import farwatt.study.Points;
import farwatt.study.Scatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Makes sheets of what studies found: which table, and which of the workbook's own charts. Any thread. */
public final class StudySheets {
    private static final int MOST_EFFECTS = 16;
    private static final int LONGEST_TITLE = 31;

    private final String basis;

    /** @param basis what the studies stood on, in words */
    public StudySheets(String basis) {
        this.basis = basis;
    }

    /**
     * Every combination of values: one cell that varies gives lines, two give a shaded map for each figure, more are
     * listed.
     *
     * @param varied how many columns are cells of the plan; they come first
     */
    public List<StudyTable> sweep(Points points, int varied) {
        List<StudyTable> sheets = new ArrayList<>();
        if (varied == 1) {
            alike(points, varied)
                    .forEach((unit, columns) -> sheets.add(lines("Sweep of ", points, varied, columns, basis)));
        } else if (varied == 2) {
            for (int read = varied; read < points.columns().size(); read++) {
                sheets.add(heat(points, read));
            }
        } else {
            List<Integer> all =
                    IntStream.range(0, points.columns().size()).boxed().toList();
            String title = title("Sweep of ", points.columns().get(varied).name());
            sheets.add(listed(points, title, basis, StudyTable.Shape.TABLE, all, varied));
        }
        return sheets;
    }

    /** Columns that were read, by the unit in which they can be drawn together. */
    private static Map<String, List<Integer>> alike(Points points, int varied) {
        Map<String, List<Integer>> alike = new LinkedHashMap<>();
        for (int read = varied; read < points.columns().size(); read++) {
            Heading heading = points.columns().get(read);
            String unit = heading.isNumber() ? heading.unit().symbol() : "words";
            alike.computeIfAbsent(unit, k -> new ArrayList<>()).add(read);
        }
        return alike;
    }

    private StudyTable lines(String prefix, Points points, int varied, List<Integer> reads, String note) {
        Heading along = points.columns().get(0);
        boolean numbers = points.columns().get(reads.get(0)).isNumber();
        List<Integer> columns = new ArrayList<>(List.of(0));
        columns.addAll(reads);
        StudyTable.Shape drawn = along.isNumber() ? StudyTable.Shape.LINE : StudyTable.Shape.HISTOGRAM;
        String title = title(prefix, points.columns().get(reads.get(0)).name());
        return listed(points, title, note, numbers ? drawn : StudyTable.Shape.TABLE, columns, varied);
    }

    /** Points line by line, with a column for reasons where a figure is missing. */
    private static StudyTable listed(
            Points points, String title, String note, StudyTable.Shape shape, List<Integer> columns, int varied) {
        List<Column> shown = new ArrayList<>();
        for (int column : columns) {
            shown.add(column(points.columns().get(column), column, column < varied));
        }
        List<List<Entry>> lines = new ArrayList<>();
        List<String> reasons = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            List<Entry> line = new ArrayList<>();
            String reason = "";
            for (int column : columns) {
                line.add(entry(points, i, column));
                reason = reason.isEmpty() ? points.why(i, column).orElse("") : reason;
            }
            lines.add(line);
            reasons.add(reason);
        }
        if (reasons.stream().anyMatch(reason -> !reason.isEmpty())) {
            shown.add(Column.of("why", "why a figure is missing", Form.SENTENCE));
            for (int i = 0; i < lines.size(); i++) {
                lines.get(i).add(Entry.words(reasons.get(i)));
            }
        }
        return new StudyTable(title, note, shape, shown, lines);
    }

    private StudyTable heat(Points points, int read) {
        List<Column> columns = new ArrayList<>();
        for (int column : List.of(0, 1, read)) {
            columns.add(column(points.columns().get(column), column, column < 2));
        }
        List<List<Entry>> lines = new ArrayList<>();
        Optional<String> missing = Optional.empty();
        for (int i = 0; i < points.size(); i++) {
            lines.add(List.of(entry(points, i, 0), entry(points, i, 1), entry(points, i, read)));
            missing = missing.isPresent() ? missing : points.why(i, read);
        }
        String note = basis + missing.map(why -> ". No figure in some: " + why).orElse(".");
        return new StudyTable(
                title("Map of ", points.columns().get(read).name()), note, StudyTable.Shape.HEAT, columns, lines);
    }

    /**
     * How often a figure came out in which range.
     *
     * @param values by run, inside; NaN where there is none
     */
    public StudyTable spread(Scatter scatter, double[] values) {
        Bins bins = scatter.heading().isNumber()
                ? Bins.of(scatter.heading().unit(), values)
                : Bins.ofAnswers(scatter.heading(), values);
        List<List<Entry>> lines = new ArrayList<>();
        bins.counts().forEach((range, count) -> lines.add(List.of(Entry.words(range), Entry.number(count))));
        String unit = scatter.heading().isNumber() ? scatter.heading().unit().symbol() : "";
        String without =
                scatter.without() == 0 ? "" : " " + scatter.without() + " of " + scatter.runs() + " have no value.";
        return new StudyTable(
                title("Spread of ", scatter.heading().name()),
                basis + ". " + said(scatter) + without,
                StudyTable.Shape.HISTOGRAM,
                List.of(
                        Column.of("range", scatter.heading().name(), Form.WORD).in(Figure.symbol(unit)),
                        Column.of("times", "times", Form.WHOLE)),
                lines);
    }

    private static String said(Scatter scatter) {
        Heading heading = scatter.heading();
        if (!heading.isNumber()) {
            return scatter.runs() + " runs.";
        }
        int middle = Scatter.SHARES.indexOf(0.5);
        int low = Scatter.SHARES.indexOf(0.05);
        int high = Scatter.SHARES.indexOf(0.95);
        return scatter.runs() + " runs: the middle is "
                + heading.text(scatter.levels().get(middle)) + ", nine of ten lie between "
                + heading.text(scatter.levels().get(low)) + " and "
                + heading.text(scatter.levels().get(high)) + ".";
    }

    /** What remains with every copy that is added. */
    public StudyTable grow(Grown grown, String copy) {
        Points points = grown.points();
        List<Integer> columns = new ArrayList<>(List.of(0));
        for (int column = Grown.READS; column < points.columns().size(); column++) {
            columns.add(column);
        }
        for (int column = 1; column < Grown.READS; column++) {
            columns.add(column);
        }
        return listed(
                points,
                title("Growth by ", copy),
                basis + ". " + grown.fitted() + " more fit. " + grown.stoppedBy(),
                columns.size() > Grown.READS + 1 ? StudyTable.Shape.LINE : StudyTable.Shape.STEPS,
                columns,
                0);
    }

    /**
     * The values tried in search of a limit.
     *
     * @param tried with what is drawn over the varied cell, which comes first
     * @param said the answer
     */
    public StudyTable limit(Points tried, String said) {
        List<Integer> reads = IntStream.range(1, tried.columns().size()).boxed().toList();
        StudyTable table = lines("Limit of ", tried, 1, reads, basis + ". " + said);
        return new StudyTable(
                title("Limit of ", tried.columns().get(0).name()),
                table.note(),
                table.shape(),
                fine(table.columns()),
                table.lines());
    }

    /** Values tried by halving have no end of digits. */
    private static List<Column> fine(List<Column> columns) {
        List<Column> fine = new ArrayList<>(columns);
        Column first = fine.get(0);
        fine.set(0, first.form() == Form.FREE ? first.as(Form.THREE) : first);
        return fine;
    }

    /** What a step in each input changes, the largest first. */
    public StudyTable sensitivity(Effects effects) {
        Heading read = effects.read();
        List<List<Entry>> lines = new ArrayList<>();
        for (Effect effect : effects.effects()) {
            if (lines.size() == MOST_EFFECTS) {
                break;
            }
            Heading input = effect.input();
            lines.add(List.of(
                    Entry.words(input.name()),
                    change(read, effect.down(), effects.now()),
                    change(read, effect.up(), effects.now()),
                    Entry.words(input.text(effect.now())),
                    Entry.words(input.text(effect.low())),
                    Entry.words(read.text(effect.down())),
                    Entry.words(input.text(effect.high())),
                    Entry.words(read.text(effect.up())),
                    Entry.words(effect.why())));
        }
        int rest = effects.effects().size() - lines.size() + effects.without();
        return withoutEmptyLast(new StudyTable(
                title("Effects on ", read.name()),
                basis + ". " + read.name() + " is " + read.text(effects.now()) + " as things stand; " + rest
                        + " more inputs matter less or not at all.",
                StudyTable.Shape.HISTOGRAM,
                List.of(
                        Column.of("input", "input", Form.WORD),
                        change(read, "down"),
                        change(read, "up"),
                        Column.of("now", "now", Form.WORD),
                        Column.of("low", "down to", Form.WORD),
                        Column.of("gives_low", "gives", Form.WORD),
                        Column.of("high", "up to", Form.WORD),
                        Column.of("gives_high", "gives then", Form.WORD),
                        Column.of("why", "note", Form.SENTENCE)),
                lines));
    }

    private static StudyTable withoutEmptyLast(StudyTable table) {
        int last = table.columns().size() - 1;
        boolean empty = table.lines().stream().allMatch(line -> line.get(last).isBlank());
        return empty
                ? new StudyTable(
                        table.title(),
                        table.note(),
                        table.shape(),
                        table.columns().subList(0, last),
                        table.lines().stream()
                                .map(line -> line.subList(0, last))
                                .toList())
                : table;
    }

    /** Differences of temperatures are no temperatures. */
    private static Column change(Heading read, String way) {
        Column change = Column.of(way, "change a step " + way, read.isNumber() ? Form.of(read.unit()) : Form.WORD);
        return change.in(read.unit().isAbsoluteTemperature() ? "K" : Figure.unit(read.unit()));
    }

    private static Entry change(Heading read, double then, double now) {
        if (Double.isNaN(then) || Double.isNaN(now)) {
            return Entry.NONE;
        }
        return read.isNumber() ? Entry.number(number(read.unit(), then) - number(read.unit(), now)) : Entry.NONE;
    }

    /** How many more of which kind fit where. */
    public StudyTable room(List<Fit> fits) {
        List<List<Entry>> lines = new ArrayList<>();
        for (Fit fit : fits) {
            lines.add(List.of(
                    Entry.words(fit.node()),
                    Entry.words(fit.kind()),
                    Entry.words(fit.pattern()),
                    Entry.number(fit.more()),
                    Entry.number(fit.ports()),
                    Entry.words(fit.stoppedBy())));
        }
        return new StudyTable(
                "Room for more",
                basis,
                StudyTable.Shape.TABLE,
                List.of(
                        Column.of("node", "node", Form.WORD),
                        Column.of("kind", "kind", Form.WORD),
                        Column.of("as", "as", Form.WORD),
                        Column.of("more", "more", Form.WHOLE),
                        Column.of("ports", "free ports", Form.WHOLE),
                        Column.of("stop", "what stops one more", Form.SENTENCE)),
                lines);
    }

    private static String title(String prefix, String name) {
        String whole = prefix + name;
        int length = whole.codePointCount(0, whole.length());
        return length <= LONGEST_TITLE
                ? whole
                : whole.substring(0, whole.offsetByCodePoints(0, LONGEST_TITLE - 1)) + "…";
    }

    /** What was varied keeps the digits it was given. */
    private static Column column(Heading heading, int at, boolean varied) {
        if (!heading.isNumber()) {
            return Column.of("c" + at, heading.name(), Form.WORD);
        }
        Form usual = Form.of(heading.unit());
        Form form = varied && usual != Form.SHARE ? Form.FREE : usual;
        return Column.of("c" + at, heading.name(), form).in(Figure.unit(heading.unit()));
    }

    private static Entry entry(Points points, int point, int column) {
        Heading heading = points.columns().get(column);
        double inside = points.inside(point, column);
        if (heading.isNumber()) {
            return Double.isNaN(inside) ? Entry.NONE : Entry.number(number(heading.unit(), inside));
        }
        if (points.why(point, column).isPresent()) {
            return Entry.NONE;
        }
        Entry words = Entry.words(points.text(point, column));
        return heading.type() == Type.Plain.YES_NO ? words.in(inside == 0 ? Tone.BAD : Tone.GOOD) : words;
    }

    private static double number(Unit unit, double inside) {
        return Form.of(unit) == Form.SHARE ? inside : unit.fromInside(inside);
    }
}
