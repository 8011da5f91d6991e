package farwatt.workbook;

import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.streaming.SXSSFPicture;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;

/** Puts a picture onto a page of blocks, its shape kept. Sizes come from column widths; no font is asked. */
final class PicturePen {
    /** Points of one digit's width: seven pixels of 1/96 inch. */
    private static final double DIGIT = 7 * 72.0 / 96;

    private final Book book;
    private final SXSSFSheet sheet;

    PicturePen(Book book, SXSSFSheet sheet) {
        this.book = book;
        this.sheet = sheet;
    }

    /**
     * How many rows a picture takes.
     *
     * @param wide widths of the columns in digits
     * @param most points there are below each other
     * @param line points of a row
     */
    static int rows(BookPicture picture, int[] wide, double most, float line) {
        double scale = Math.min(1, Math.min(room(wide) / picture.width(), most / picture.height()));
        return Math.max(1, (int) Math.ceil(picture.height() * scale / line));
    }

    private static double room(int[] wide) {
        return IntStream.of(wide).sum() * DIGIT;
    }

    /** Puts it over rows that are there. */
    void put(BookPicture picture, int first, int rows, int[] wide, float line) {
        double scale = Math.min(1, Math.min(room(wide) / picture.width(), rows * (double) line / picture.height()));
        double width = picture.width() * scale;
        double height = picture.height() * scale;
        int column = 0;
        while (column < wide.length - 1 && width > wide[column] * DIGIT) {
            width -= wide[column] * DIGIT;
            column++;
        }
        int down = (int) (height / line);
        double rest = height - down * (double) line;
        int right = Units.toEMU(Math.min(width, wide[column] * DIGIT));
        ClientAnchor anchor = new XSSFClientAnchor(0, 0, right, Units.toEMU(rest), 0, first, column, first + down);
        anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
        byte[] bytes = new byte[picture.png().remaining()];
        picture.png().get(bytes);
        int number = book.poi().addPicture(bytes, Workbook.PICTURE_TYPE_PNG);
        SXSSFPicture there = sheet.createDrawingPatriarch().createPicture(anchor, number);
        there.getCTPicture().getNvPicPr().getCNvPr().setDescr(Book.legal(picture.alt()));
    }
}
