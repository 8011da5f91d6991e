package farwatt.workbook;

import farwatt.report.Place;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** The cable labels as boxes of one size to print and cut: beside each other those of a run's two ends. */
final class LabelPage {
    private static final int ACROSS = 4;
    private static final int WIDE = 30;
    private static final int LINES = 3;

    private final Book book;
    private final SXSSFSheet sheet;

    LabelPage(Book book, String name) {
        this.book = book;
        sheet = book.sheet(name);
    }

    /** @param labels the table of them, to which the boxes refer */
    void write(Places.Place labels) {
        Pen pen = new Pen(book);
        int size = labels.schedule().lines().size();
        int[] wide = new int[ACROSS];
        for (int i = 0; i < ACROSS; i++) {
            wide[i] = WIDE;
            sheet.setColumnWidth(i, WIDE * 256);
        }
        int at = 0;
        for (int line = 0; line < size; line += ACROSS) {
            book.cancel.check();
            Row row = sheet.createRow(at++);
            int lines = LINES;
            for (int i = 0; i < ACROSS && line + i < size; i++) {
                Entry label = labels.schedule().lines().at(line + i).get(labels.column("label"));
                String text = label.shown() instanceof Entry.Words words ? words.text() : "";
                String formula = "{" + Titles.LABELS + "!label@" + (line + i) + "}";
                pen.put(row, i, Entry.live(formula, text), Form.TAG, Place.NONE, book.places::resolve);
                lines = Math.max(lines, Widths.lines(text, WIDE - Widths.AIR));
            }
            row.setHeightInPoints(Press.LINE * lines + 6);
        }
        new Pages(book, sheet).blocks(wide, Math.max(0, at - 1));
    }
}
