package farwatt.workbook;

import java.util.Set;
import org.apache.poi.ss.usermodel.PrintSetup;

/** The paper that pages are laid out for, always on its long side. */
public enum Paper {
    A4(PrintSetup.A4_PAPERSIZE, 297, 210),
    LETTER(PrintSetup.LETTER_PAPERSIZE, 279.4, 215.9);

    /** Left and right margin together. */
    static final double MARGINS = 20;

    private static final Set<String> LETTER_COUNTRIES = Set.of("US", "CA", "MX", "PH", "CL", "CO");

    private final short code;
    private final double length;
    private final double height;

    Paper(short code, double length, double height) {
        this.code = code;
        this.length = length;
        this.height = height;
    }

    /** The paper that is usual in a country, by its two letters. */
    public static Paper of(String country) {
        return LETTER_COUNTRIES.contains(country) ? LETTER : A4;
    }

    /** The number workbooks know it by. */
    short code() {
        return code;
    }

    /** Millimetres of the short side. */
    double height() {
        return height;
    }

    /** Millimetres between the margins on the long side. */
    double printable() {
        return length - MARGINS;
    }
}
