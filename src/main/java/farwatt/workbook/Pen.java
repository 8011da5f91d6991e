package farwatt.workbook;

import farwatt.report.Place;
import java.util.function.UnaryOperator;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;

/** Puts entries into cells: numbers as numbers, texts as texts that never become formulas. */
final class Pen {
    private static final String LOOKS_LIKE_FORMULA = "=+-@\t\r\n";

    private static final int NOTE_COLUMNS = 4;
    /** A column is rarely narrower. */
    private static final int NOTE_DIGITS = 8;

    private final Book book;

    Pen(Book book) {
        this.book = book;
    }

    /**
     * Fills one cell.
     *
     * @param cells turns names in formulas into cells
     */
    void put(Row row, int column, Entry entry, Form usual, Place place, UnaryOperator<String> cells) {
        Form form = entry.form().orElse(usual);
        Cell cell = row.createCell(column);
        cell.setCellStyle(style(entry, form));
        value(cell, entry.content(), place, cells);
    }

    private XSSFCellStyle style(Entry entry, Form form) {
        boolean guard = entry.content() instanceof Entry.Words words
                && !words.text().isEmpty()
                && LOOKS_LIKE_FORMULA.indexOf(words.text().charAt(0)) >= 0;
        return guard ? book.look.guarded(form, entry.tone()) : book.look.cell(form, entry.tone());
    }

    private void value(Cell cell, Entry.Content content, Place place, UnaryOperator<String> cells) {
        if (content instanceof Entry.Live live && !book.places.holds(live.formula())) {
            // what it looks into was left out, so the result stands alone
            value(cell, live.result(), place, cells);
        } else if (content instanceof Entry.Live live) {
            cell.setCellFormula(cells.apply(live.formula()));
            if (live.result() instanceof Entry.Amount number) {
                cell.setCellValue(number.value());
            } else {
                cell.setCellValue(live.result() instanceof Entry.Words words ? book.text(words.text(), place) : "");
            }
        } else if (content instanceof Entry.Amount number) {
            cell.setCellValue(number.value());
        } else if (content instanceof Entry.Words words) {
            cell.setCellValue(book.text(words.text(), place));
        } else if (content instanceof Entry.Day day) {
            cell.setCellValue(day.date());
        }
    }

    /** A note that is shown when someone points at the cell. */
    void note(SXSSFSheet sheet, Cell cell, String text) {
        int right = cell.getColumnIndex() + 1;
        int below = cell.getRowIndex() + 1;
        int high = 2 + Widths.lines(text, NOTE_COLUMNS * NOTE_DIGITS);
        var anchor = new XSSFClientAnchor(0, 0, 0, 0, right, below, right + NOTE_COLUMNS, below + high);
        Comment note = sheet.createDrawingPatriarch().createCellComment(anchor);
        note.setString(new XSSFRichTextString(Book.legal(text)));
        note.setAuthor("Farwatt");
        note.setAddress(cell.getRowIndex(), cell.getColumnIndex());
    }

    /** A text that belongs to no table. */
    void part(Row row, int column, String text, Look.Part part) {
        Cell cell = row.createCell(column);
        cell.setCellStyle(book.look.part(part));
        cell.setCellValue(book.text(text, Place.NONE));
    }
}
