package farwatt.workbook;

import farwatt.quantity.Show;
import farwatt.report.Place;
import farwatt.report.Refusal;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Writes one table onto its sheet: title, note, facts, groups of columns, headings, lines, totals. */
final class Press {
    static final float LINE = 13;
    /** Points of a row that someone writes into with a pen. */
    private static final float HAND = 28;

    private static final int MOST_ROWS = SpreadsheetVersion.EXCEL2007.getMaxRows();
    private static final int LOOK_AHEAD = 200;
    private static final int MOST_COLUMNS = SpreadsheetVersion.EXCEL2007.getMaxColumns();

    private final Book book;
    private final Pen pen;
    private final Places.Place place;
    private final Schedule schedule;
    private final List<Column> columns;
    private final SXSSFSheet sheet;
    private final Widths widths;
    private final Sum[] sums;
    private final boolean handwriting;

    Press(Book book, Places.Place place) {
        this.book = book;
        this.place = place;
        pen = new Pen(book);
        schedule = place.schedule();
        columns = schedule.columns();
        sheet = book.sheet(place.sheet());
        widths = new Widths(columns);
        sums = Stream.generate(Sum::new).limit(columns.size()).toArray(Sum[]::new);
        handwriting = columns.stream().anyMatch(column -> column.band() == Column.Band.READ);
    }

    /** Says no to what a sheet cannot hold. */
    static void check(Schedule schedule) throws Refusal {
        int above = 16 + schedule.facts().size();
        if (schedule.lines().size() > MOST_ROWS - above) {
            throw Refusal.of(
                    WorkbookCode.TOO_MANY_ROWS,
                    schedule.name(),
                    schedule.lines().size(),
                    MOST_ROWS - above);
        }
        if (schedule.columns().size() > MOST_COLUMNS) {
            throw Refusal.of(
                    WorkbookCode.TOO_MANY_COLUMNS,
                    schedule.name(),
                    schedule.columns().size(),
                    MOST_COLUMNS);
        }
    }

    /** Writes everything; {@code done} hears after each line how many lines there are. */
    void run(IntConsumer done) {
        look();
        head();
        for (int line = 0; line < schedule.lines().size(); line++) {
            book.cancel.check();
            line(place.first() + line, schedule.lines().at(line));
            done.accept(line + 1);
        }
        totals();
        int[] wide = widths.all();
        for (Schedule.Fact fact : schedule.facts()) {
            wide[0] = Math.max(wide[0], Widths.length(fact.label()) + Widths.AIR);
        }
        for (int i = 0; i < wide.length; i++) {
            sheet.setColumnWidth(i, wide[i] * 256);
        }
        finish(wide);
    }

    /** The first lines say how wide columns get, and with that how high the headings. */
    private void look() {
        for (int line = 0; line < Math.min(LOOK_AHEAD, schedule.lines().size()); line++) {
            List<Entry> entries = schedule.lines().at(line);
            for (int i = 0; i < columns.size(); i++) {
                widths.see(i, entries.get(i));
            }
        }
    }

    private void head() {
        sheet.setDefaultRowHeightInPoints(LINE + 2);
        Row title = sheet.createRow(0);
        title.setHeightInPoints(LINE * 2);
        pen.part(title, 0, schedule.name(), Look.Part.TITLE);
        pen.part(sheet.createRow(1), 0, schedule.note(), Look.Part.NOTE);
        for (int i = 0; i < schedule.facts().size(); i++) {
            Schedule.Fact fact = schedule.facts().get(i);
            Row row = sheet.createRow(place.firstFact() + i);
            pen.part(row, 0, fact.label(), Look.Part.LABEL);
            put(row, 1, fact.value(), fact.form());
            pen.part(row, 2, fact.note(), Look.Part.NOTE);
        }
        headings();
    }

    private void headings() {
        if (schedule.isBanded()) {
            bands(sheet.createRow(place.bands()));
        }
        Row row = sheet.createRow(place.headings());
        int lines = 1;
        int[] wide = widths.all();
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            var cell = row.createCell(i);
            cell.setCellStyle(book.look.heading(column));
            cell.setCellValue(book.text(column.title(), Place.NONE));
            if (!column.says().isEmpty()) {
                pen.note(sheet, cell, column.says());
            }
            lines = Math.max(lines, Widths.lines(column.title(), wide[i] - Widths.AIR));
        }
        row.setHeightInPoints(LINE * lines + 3);
    }

    private void bands(Row row) {
        for (int i = 0; i < columns.size(); i++) {
            Column.Band band = columns.get(i).band();
            var cell = row.createCell(i);
            cell.setCellStyle(book.look.band(band));
            if (i == 0 || columns.get(i - 1).band() != band) {
                cell.setCellValue(
                        switch (band) {
                            case PLANNED -> "as planned";
                            case ANSWER -> "worked out";
                            case READ -> "read on site";
                            case OTHER -> "";
                        });
            }
        }
    }

    private void line(int at, List<Entry> entries) {
        SXSSFRow row = sheet.createRow(at);
        int lines = 1;
        for (int i = 0; i < columns.size(); i++) {
            Entry entry = entries.get(i);
            Form form = columns.get(i).form();
            widths.see(i, entry);
            if (entry.shown() instanceof Entry.Amount amount) {
                sums[i].add(amount.value());
            }
            put(row, i, entry, form);
            if (form.isWrapped() && entry.shown() instanceof Entry.Words words) {
                lines = Math.max(lines, Widths.sentenceLines(words.text(), form.widest() + Widths.AIR - 1));
            }
        }
        if (lines > 1 || handwriting) {
            row.setHeightInPoints(Math.max(handwriting ? HAND : 0, LINE * lines + 3));
        }
    }

    private void put(Row row, int column, Entry entry, Form form) {
        Place where = new Place(
                schedule.name(),
                "",
                column < columns.size() ? columns.get(column).heading() : "");
        pen.put(row, column, entry, form, where, formula -> book.places.resolve(formula, place, row.getRowNum()));
    }

    /** The line under the table follows the filter: it adds up the lines that are shown. */
    private void totals() {
        if (!schedule.isSummed() || schedule.lines().size() == 0) {
            return;
        }
        Row row = sheet.createRow(place.end());
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            var cell = row.createCell(i);
            boolean sum = column.total() == Column.Total.SUM;
            cell.setCellStyle(book.look.total(sum ? column.form() : Form.WORD));
            if (sum) {
                Entry total = Entry.number(sums[i].value());
                widths.see(i, total.as(column.form()));
                cell.setCellFormula(
                        book.places.resolve("SUBTOTAL(109,{" + column.key() + ":all})", place, place.end()));
                cell.setCellValue(sums[i].value());
            } else if (i == 0) {
                cell.setCellValue("total");
            }
        }
    }

    /** What is typed later is looked at by the program that it is typed into. */
    private void checks() {
        DataValidationHelper helper = sheet.getDataValidationHelper();
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).bounds().isEmpty() || schedule.lines().size() == 0) {
                continue;
            }
            Column.Bounds bounds = columns.get(i).bounds().get();
            String low = Show.number(bounds.low(), 6);
            String high = Show.number(bounds.high(), 6);
            DataValidation check = helper.createValidation(
                    helper.createDecimalConstraint(DataValidationConstraint.OperatorType.BETWEEN, low, high),
                    new CellRangeAddressList(place.first(), place.end() - 1, i, i));
            String unit = columns.get(i).unit();
            check.createErrorBox(
                    columns.get(i).heading(), "Type a number from " + low + " to " + high + " " + unit + ".");
            check.setShowErrorBox(true);
            sheet.addValidationData(check);
        }
    }

    private void finish(int[] wide) {
        int last = Math.max(place.headings(), place.end() - (schedule.isSummed() ? 0 : 1));
        if (schedule.lines().size() > 0) {
            sheet.setAutoFilter(new CellRangeAddress(place.headings(), place.end() - 1, 0, columns.size() - 1));
        }
        sheet.createFreezePane(1, place.first());
        checks();
        if (schedule.chart().isPresent() && schedule.lines().size() > 0) {
            new StudyChart(book, place, sheet).draw(schedule.chart().get());
        }
        new Pages(book, sheet).table(wide, place, last);
    }
}
