package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Value;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;
import farwatt.review.CornerVerdict;
import farwatt.review.Finding;
import farwatt.review.Review;
import farwatt.review.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** The first sheet: the job, whether it holds, what is left at each node, what to mind, what else is in here. */
final class SummaryPage {
    private static final int[] WIDE = {29, 16, 17, 19, 15, 15, 17};
    private static final int MOST_NODES = 12;
    private static final int MOST_FINDINGS = 8;

    private final Book book;
    private final Pen pen;
    private final Calculation calc;
    private final Review review;
    private final List<Schedule> tables;
    private final Optional<BookPicture> picture;
    private final List<ScenarioTable.Side> sides;
    private final SXSSFSheet sheet;
    private final double page;
    private int at;
    private double used;

    SummaryPage(Book book, String name, Handover content, List<Schedule> tables) {
        this.book = book;
        pen = new Pen(book);
        calc = content.calc();
        review = content.review();
        this.tables = tables;
        picture = content.picture();
        sides = content.sides();
        sheet = book.sheet(name);
        page = new Pages(book, sheet).height();
    }

    void write(List<NodePower> power) {
        sheet.setDefaultRowHeightInPoints(Press.LINE + 2);
        for (int i = 0; i < WIDE.length; i++) {
            sheet.setColumnWidth(i, WIDE[i] * 256);
        }
        Row title = row(Press.LINE * 2);
        pen.part(title, 0, book.imprint.title(), Look.Part.TITLE);
        pen.part(row(), 0, "Hand-over record of a network that carries its power along", Look.Part.NOTE);
        verdict();
        planned();
        corners();
        scenarios();
        picture.ifPresent(this::picture);
        nodes(power);
        findings();
        cautions();
        contents();
        new Pages(book, sheet).blocks(WIDE, at - 1);
    }

    /** The picture as wide as the page, or as high as it where that is less. */
    private void picture(BookPicture drawn) {
        float line = Press.LINE + 2;
        int rows = PicturePen.rows(drawn, WIDE, page - 3 * line, line);
        section("Diagram", rows);
        int first = at;
        for (int i = 0; i < rows; i++) {
            row();
        }
        new PicturePen(book, sheet).put(drawn, first, rows, WIDE, line);
    }

    private Row row() {
        return row(Press.LINE + 2);
    }

    /** The next row, so many points high; keeps count of where on the page it comes to stand. */
    private Row row(float height) {
        Row row = sheet.createRow(at++);
        row.setHeightInPoints(height);
        used = used + height > page ? height : used + height;
        return row;
    }

    /** A heading is never the last thing on a page. */
    private void section(String text, int lines) {
        double needed = (lines + 2) * (Press.LINE + 2);
        if (used + needed > page) {
            sheet.setRowBreak(at - 1);
            used = 0;
        }
        Row row = row(Press.LINE * 2);
        pen.part(row, 0, text, Look.Part.SECTION);
    }

    private void put(Row row, int column, Entry entry, Form form) {
        pen.put(row, column, entry, form, new Place(Titles.SUMMARY, "", ""), book.places::resolve);
    }

    private void headings(Column... columns) {
        int lines = 1;
        for (int i = 0; i < columns.length; i++) {
            lines = Math.max(lines, Widths.lines(columns[i].title(), WIDE[i] - 1));
        }
        Row row = row(lines * Press.LINE + 3);
        for (int i = 0; i < columns.length; i++) {
            var cell = row.createCell(i);
            cell.setCellStyle(book.look.heading(columns[i]));
            cell.setCellValue(columns[i].title());
        }
        // the last one goes over the rest of the page
        for (int i = columns.length; i < WIDE.length; i++) {
            row.createCell(i).setCellStyle(book.look.heading(columns[columns.length - 1]));
        }
    }

    /** A new row that ends with a sentence across columns, high enough for its lines. */
    private Row sentence(int from, String text) {
        int wide = 0;
        for (int i = from; i < WIDE.length; i++) {
            wide += WIDE[i];
        }
        Row row = row(Widths.sentenceLines(text, wide - 2) * Press.LINE + 2);
        for (int i = from + 1; i < WIDE.length; i++) {
            put(row, i, Entry.NONE, Form.SENTENCE);
        }
        put(row, from, Entry.words(text), Form.SENTENCE);
        if (from < WIDE.length - 1) {
            sheet.addMergedRegion(new CellRangeAddress(row.getRowNum(), row.getRowNum(), from, WIDE.length - 1));
        }
        return row;
    }

    private void verdict() {
        section("Verdict", 1);
        boolean holds = review.verdict().holds();
        Row row = sentence(1, review.verdict().text());
        put(row, 0, Entry.words(holds ? "holds" : "does not hold").in(holds ? Tone.GOOD : Tone.BAD), Form.WORD);
    }

    private void planned() {
        section("What was planned, and what flows " + corner(), 4);
        Set<String> missing = new LinkedHashSet<>();
        Row[] rows = {row(), row(), row(), row()};
        figure(rows[0], "cable without slack, m", "cable_length", Titles.RUNS, "length", missing);
        figure(rows[1], "lost in cables, W", "lost", Titles.RUNS, "loss", missing);
        figure(rows[2], "sent by the sources, W", "sent", Titles.SOURCES, "sent", missing);
        figure(rows[3], "taken from the mains, W", "mains", Titles.SOURCES, "mains", missing);
        count(rows[0], "sources", Titles.SOURCES, Table.SOURCES);
        count(rows[1], "switches", Titles.SWITCHES, Table.SWITCHES);
        count(rows[2], "runs", Titles.RUNS, Table.RUNS);
        count(rows[3], "devices", Titles.DEVICES, Table.DEVICES);
        missing.forEach(reason -> pen.part(row(), 0, reason, Look.Part.NOTE));
    }

    private String corner() {
        return calc.corner().phrase();
    }

    private void count(Row row, String label, String title, Table table) {
        pen.part(row, 3, label, Look.Part.LABEL);
        put(row, 4, Entry.live("COUNTA({" + title + "!id:all})", InUse.places(calc, table).length), Form.WHOLE);
    }

    private void figure(Row row, String label, String name, String title, String key, Set<String> missing) {
        Value value = calc.value(Table.PLAN, 0, name);
        boolean there = has(title, key);
        Entry entry = Figure.of(value);
        if (there && value.isPresent()) {
            entry = Entry.live(
                    "SUM({" + title + "!" + key + ":all})", value.unit().fromInside(value.inside()));
        }
        pen.part(row, 0, label, Look.Part.LABEL);
        put(row, 1, entry, Form.ONE);
        value.fault().ifPresent(fault -> missing.add(fault.text()));
    }

    private boolean has(String title, String key) {
        return book.places
                .find(title)
                .filter(place -> place.schedule().columns().stream()
                        .anyMatch(column -> column.key().equals(key)))
                .isPresent();
    }

    private void corners() {
        section("Verdict in each corner", 3);
        headings(
                Column.of("corner", "corner", Form.WORD),
                Column.of("verdict", "verdict", Form.WORD),
                Column.of("share", "least share left", Form.SHARE),
                Column.of("headroom", "least headroom, V", Form.TWO),
                Column.of("words", "what it means", Form.WORD));
        for (Map.Entry<Corner, CornerVerdict> one : review.corners().entrySet()) {
            CornerVerdict verdict = one.getValue();
            Row row = sentence(4, one.getKey().phrase());
            put(row, 0, Entry.words(one.getKey().word()), Form.WORD);
            put(
                    row,
                    1,
                    Entry.words(verdict.holds() ? "holds" : "does not hold").in(verdict.holds() ? Tone.GOOD : Tone.BAD),
                    Form.WORD);
            put(row, 2, Entry.number(verdict.leastReserveShare()), Form.SHARE);
            put(row, 3, Entry.number(verdict.leastHeadroom()), Form.TWO);
        }
    }

    private void scenarios() {
        if (sides.isEmpty()) {
            return;
        }
        section("Verdict in each scenario", Math.min(sides.size(), 4));
        headings(
                Column.of("scenario", "scenario", Form.WORD),
                Column.of("verdict", "verdict", Form.WORD),
                Column.of("share", "least share left", Form.SHARE),
                Column.of("words", "in words", Form.WORD));
        for (ScenarioTable.Side side : sides) {
            Verdict verdict = side.review().verdict();
            double least = side.review().corners().values().stream()
                    .mapToDouble(CornerVerdict::leastReserveShare)
                    .filter(Double::isFinite)
                    .min()
                    .orElse(Double.NaN);
            Row row = sentence(3, verdict.text());
            put(row, 0, Entry.words(side.id()), Form.SENTENCE);
            put(
                    row,
                    1,
                    Entry.words(verdict.holds() ? "holds" : "does not hold").in(verdict.holds() ? Tone.GOOD : Tone.BAD),
                    Form.WORD);
            put(row, 2, Entry.number(least), Form.SHARE);
        }
    }

    private void nodes(List<NodePower> power) {
        section("Power at each node, where least is left", 4);
        headings(
                Column.of("node", "node", Form.WORD),
                Column.of("share", "share left", Form.SHARE),
                Column.of("verdict", "verdict", Form.WORD),
                Column.of("bound", "bound by", Form.WORD),
                Column.of("corner", "corner", Form.WORD),
                Column.of("available", "can give", Form.ONE).in("W"),
                Column.of("sent", "gives", Form.ONE).in("W"));
        double target = PowerTable.target(calc);
        List<NodePower> weakest = NodePower.weakest(power);
        for (NodePower one : weakest.subList(0, Math.min(MOST_NODES, weakest.size()))) {
            boolean known = !Double.isNaN(one.share());
            String verdict = known ? PowerTable.verdict(one.share(), target) : "no figure";
            Row row = row();
            put(row, 0, Entry.words(one.id()), Form.WORD);
            put(row, 1, Entry.number(one.share()), Form.SHARE);
            put(row, 2, Entry.words(verdict).in(PowerTable.tone(verdict)), Form.WORD);
            put(row, 3, Entry.words(one.bound()), Form.WORD);
            put(row, 4, Entry.words(one.corner().word()), Form.WORD);
            put(row, 5, Entry.number(one.available()), Form.ONE);
            put(row, 6, Entry.number(one.sent()), Form.ONE);
        }
        if (weakest.size() > MOST_NODES) {
            String rest = "and " + (weakest.size() - MOST_NODES) + " more that have more left"
                    + book.places
                            .find(Titles.POWER)
                            .map(place -> ", on the sheet " + place.sheet())
                            .orElse("");
            pen.part(row(), 0, rest, Look.Part.NOTE);
        }
    }

    private void findings() {
        section("Findings", 3);
        Row counts = row();
        int column = 0;
        for (Level level : Level.values()) {
            long found =
                    review.findings().stream().filter(f -> f.level() == level).count();
            String formula = "COUNTIF({" + Titles.FINDINGS + "!level:all},\"" + level.word() + "\")";
            Tone tone = found == 0 ? Tone.PLAIN : FindingTable.tone(level);
            pen.part(counts, column, level.word(), Look.Part.LABEL);
            put(counts, column + 1, Entry.live(formula, (double) found).in(tone), Form.WHOLE);
            column += 2;
        }
        List<Finding> first = review.findings()
                .subList(0, Math.min(MOST_FINDINGS, review.findings().size()));
        for (Finding finding : first) {
            Entry level = Entry.words(finding.level().word()).in(FindingTable.tone(finding.level()));
            put(sentence(1, finding.text()), 0, level, Form.WORD);
        }
        if (review.findings().size() > first.size()) {
            int rest = review.findings().size() - first.size();
            pen.part(
                    row(),
                    0,
                    "and " + rest + " more"
                            + book.places
                                    .find(Titles.FINDINGS)
                                    .map(place -> " on the sheet " + place.sheet())
                                    .orElse(""),
                    Look.Part.NOTE);
        }
    }

    private void cautions() {
        if (review.cautions().isEmpty()) {
            return;
        }
        section("To mind", 3);
        for (String caution : review.cautions()) {
            sentence(0, caution);
        }
    }

    private void contents() {
        section("About this record", 4);
        List<String[]> lines = new ArrayList<>();
        lines.add(new String[] {"made with", "Farwatt " + book.imprint.version()});
        lines.add(new String[] {
            "plan file's fingerprint", book.imprint.fingerprint().orElse("not saved yet")
        });
        lines.add(new String[] {"corner that the tables show", calc.corner().word() + ": " + corner()});
        Row date = row();
        pen.part(date, 0, "date", Look.Part.LABEL);
        put(date, 1, Entry.day(book.imprint.date()), Form.DAY);
        for (String[] line : lines) {
            pen.part(sentence(1, line[1]), 0, line[0], Look.Part.LABEL);
        }
        section("What is in here", 4);
        for (Schedule table : tables) {
            put(sentence(1, table.note()), 0, Entry.words(table.name()), Form.WORD);
        }
        if (book.places.find(Titles.LABELS).isPresent()) {
            String note = "The cable labels in boxes, to print and cut.";
            put(sentence(1, note), 0, Entry.words(Titles.GRID), Form.WORD);
        }
    }
}
