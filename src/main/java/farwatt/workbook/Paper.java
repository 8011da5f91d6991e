package farwatt.workbook;

import org.apache.poi.ss.usermodel.PrintSetup;

/** The paper that pages are laid out for, always on its long side. */
public enum Paper {
    A4(PrintSetup.A4_PAPERSIZE, 297),
    LETTER(PrintSetup.LETTER_PAPERSIZE, 279.4);

    /** Left and right margin together. */
    static final double MARGINS = 20;

    private final short code;
    private final double length;

    Paper(short code, double length) {
        this.code = code;
        this.length = length;
    }

    /** The number workbooks know it by. */
    short code() {
        return code;
    }

    /** Millimetres between the margins on the long side. */
    double printable() {
        return length - MARGINS;
    }
}
