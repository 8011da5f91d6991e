package farwatt.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.Header;
import org.apache.poi.ss.usermodel.IgnoredErrorType;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/**
 * How a sheet goes onto paper: on its long side, headings repeated, shrunk a little where that makes it fit, else cut
 * between columns with the first one repeated. Everything is worked out from column widths.
 */
final class Pages {
    /** Millimetres of one digit's width: seven pixels of 1/96 inch. */
    private static final double DIGIT = 7 * 25.4 / 96;

    private static final int SMALLEST = 62;
    private static final int CUT_SCALE = 75;
    /** Where someone writes with a pen. */
    private static final int SMALLEST_BY_HAND = 66;

    /** Share of a page's width that is filled: fonts differ a little from machine to machine. */
    private static final double SAFE = 0.86;

    /** Digits that a column is wide where nothing is said. */
    private static final int USUAL = 8;

    /** Millimetres above and below. */
    private static final double MARGIN = 16;

    private static final double SAFE_HEIGHT = 0.96;
    private static final double INCH = 25.4;
    private static final int MOST_LINE = 180;

    private final Book book;
    private final SXSSFSheet sheet;

    Pages(Book book, SXSSFSheet sheet) {
        this.book = book;
        this.sheet = sheet;
    }

    /** A table: its headings stand on every page. */
    void table(int[] wide, Places.Place place, int last) {
        paper();
        boolean hand = place.schedule().columns().stream().anyMatch(c -> c.band() == Column.Band.READ);
        int digits = IntStream.of(wide).sum();
        int scale = hand ? SMALLEST_BY_HAND : SMALLEST;
        boolean drawn =
                place.schedule().chart().isPresent() && (digits + StudyChart.digits()) * scale <= 100 * capacity();
        boolean fits = digits * scale <= 100 * capacity();
        List<Column> columns = place.schedule().columns();
        int cut = fits ? CUT_SCALE : fewest(wide, columns, scale);
        shrink(digits + (drawn ? StudyChart.digits() : 0), fits, cut);
        sheet.setRepeatingRows(new CellRangeAddress(place.bands(), place.headings(), -1, -1));
        if (!fits) {
            sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
            breaks(wide, columns, cut).forEach(sheet::setColumnBreak);
            // the lines above the headings would be cut on pages that have only the first column of them
            Header header = sheet.getHeader();
            header.setLeft(header.getLeft() + "\n" + escaped(place.schedule().note()));
        }
        int index = book.poi().getSheetIndex(sheet);
        int right = Math.max(lastColumn(wide, place), drawn ? StudyChart.lastColumn(place) : 0);
        int bottom = Math.max(last, drawn ? StudyChart.lastRow(place) : 0);
        book.poi().setPrintArea(index, 0, right, fits ? 0 : place.bands(), bottom);
        book.poi()
                .getXSSFWorkbook()
                .getSheetAt(index)
                .addIgnoredErrors(
                        new CellRangeAddress(0, last, 0, wide.length - 1), IgnoredErrorType.NUMBER_STORED_AS_TEXT);
    }

    /** The note above a narrow table runs on over the columns beside it. */
    private static int lastColumn(int[] wide, Places.Place place) {
        int missing =
                Widths.length(place.schedule().note()) - IntStream.of(wide).sum();
        return wide.length - 1 + Math.max(0, (missing + USUAL - 1) / USUAL);
    }

    /**
     * A page with blocks.
     *
     * @param last row on it
     */
    void blocks(int[] wide, int last) {
        paper();
        double fits = 100 * SAFE * capacity() / IntStream.of(wide).sum();
        sheet.getPrintSetup().setScale((short) Math.min(100, fits));
        book.poi().setPrintArea(book.poi().getSheetIndex(sheet), 0, wide.length - 1, 0, last);
    }

    /** A table that can be read on one page's width is fitted to it; a narrow one stays as it is. */
    private void shrink(int digits, boolean fits, int cut) {
        PrintSetup setup = sheet.getPrintSetup();
        boolean roomy = digits <= SAFE * capacity();
        if (fits && !roomy) {
            sheet.setFitToPage(true);
            setup.setFitWidth((short) 1);
            setup.setFitHeight((short) 0);
        } else {
            setup.setScale((short) (roomy ? 100 : cut));
        }
    }

    /** Points that fit below each other at full size. */
    double height() {
        return SAFE_HEIGHT * (book.imprint.paper().height() - 2 * MARGIN) / INCH * 72;
    }

    /** Digits that fit beside each other at full size. */
    private double capacity() {
        return book.imprint.paper().printable() / DIGIT;
    }

    /** The largest scale that needs no more pages beside each other than the smallest. */
    private int fewest(int[] wide, List<Column> columns, int smallest) {
        int least = breaks(wide, columns, smallest).size();
        int scale = CUT_SCALE;
        while (scale > smallest && breaks(wide, columns, scale).size() > least) {
            scale--;
        }
        return scale;
    }

    /** The columns after which to cut: where a page is full, or before a group that would otherwise be torn. */
    private List<Integer> breaks(int[] wide, List<Column> columns, int scale) {
        double room = SAFE * capacity() * 100 / scale;
        List<Integer> breaks = new ArrayList<>();
        double used = 0;
        for (int i = 0; i < wide.length; i++) {
            boolean starts =
                    i > 0 && columns.get(i).band() != columns.get(i - 1).band();
            double needed = starts && used > room / 2 ? group(wide, columns, i) : wide[i];
            if (i > 0 && used + needed > room) {
                breaks.add(i - 1);
                used = wide[0];
            }
            used += wide[i];
        }
        return breaks;
    }

    private static double group(int[] wide, List<Column> columns, int first) {
        double sum = 0;
        for (int i = first;
                i < wide.length && columns.get(i).band() == columns.get(first).band();
                i++) {
            sum += wide[i];
        }
        return sum;
    }

    private void paper() {
        PrintSetup setup = sheet.getPrintSetup();
        setup.setPaperSize(book.imprint.paper().code());
        setup.setLandscape(true);
        double side = Paper.MARGINS / 2 / INCH;
        sheet.setMargin(PageMargin.LEFT, side);
        sheet.setMargin(PageMargin.RIGHT, side);
        sheet.setMargin(PageMargin.TOP, MARGIN / INCH);
        sheet.setMargin(PageMargin.BOTTOM, MARGIN / INCH);
        sheet.setMargin(PageMargin.HEADER, 7 / INCH);
        sheet.setMargin(PageMargin.FOOTER, 7 / INCH);
        Header header = sheet.getHeader();
        header.setLeft(escaped(book.imprint.title()));
        header.setRight(escaped(sheet.getSheetName()));
        Footer footer = sheet.getFooter();
        footer.setLeft(escaped("Farwatt " + book.imprint.version()));
        footer.setCenter(book.imprint.date().toString());
        footer.setRight("&P / &N");
    }

    /** In headers and footers an ampersand starts a code. */
    private static String escaped(String text) {
        String plain = Book.legal(text.replace('\n', ' '));
        String cut = plain.codePointCount(0, plain.length()) > MOST_LINE
                ? plain.substring(0, plain.offsetByCodePoints(0, MOST_LINE - 1)) + "…"
                : plain;
        return cut.replace("&", "&&");
    }
}
