package farwatt.workbook;

import farwatt.report.Place;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** The list of what is in a workbook of several tables; has their full names, which sheets may not. */
final class ContentsPage {
    private static final Column[] COLUMNS = {
        Column.of("sheet", "sheet", Form.WORD),
        Column.of("name", "full name", Form.SENTENCE),
        Column.of("note", "what it holds", Form.SENTENCE)
    };

    private final Book book;
    private final SXSSFSheet sheet;
    private final List<Schedule> tables;

    ContentsPage(Book book, String name, List<Schedule> tables) {
        this.book = book;
        sheet = book.sheet(name);
        this.tables = tables;
    }

    void write() {
        Pen pen = new Pen(book);
        pen.part(sheet.createRow(0), 0, book.imprint.title(), Look.Part.TITLE);
        pen.part(sheet.createRow(1), 0, "What is in here", Look.Part.NOTE);
        Row headings = sheet.createRow(2);
        int[] wide = new int[COLUMNS.length];
        for (int i = 0; i < COLUMNS.length; i++) {
            var cell = headings.createCell(i);
            cell.setCellStyle(book.look.heading(COLUMNS[i]));
            cell.setCellValue(COLUMNS[i].title());
            wide[i] = COLUMNS[i].form().widest() + 2;
            sheet.setColumnWidth(i, wide[i] * 256);
        }
        int at = 3;
        for (Schedule table : tables) {
            String[] texts = {book.places.of(table.name()).sheet(), table.name(), table.note()};
            Row row = sheet.createRow(at++);
            int lines = 1;
            for (int i = 0; i < texts.length; i++) {
                pen.put(row, i, Entry.words(texts[i]), COLUMNS[i].form(), Place.NONE, UnaryOperator.identity());
                lines = Math.max(
                        lines, Widths.sentenceLines(texts[i], COLUMNS[i].form().widest()));
            }
            row.setHeightInPoints(Press.LINE * lines + 2);
        }
        new Pages(book, sheet).blocks(wide, at - 1);
    }
}
