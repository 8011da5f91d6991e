package farwatt.workbook;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * How everything looks: dark slate on white, pale grounds, hairlines. Each style is made once, when it is first
 * needed, so a workbook has some tens of them whatever its size. Belongs to one workbook.
 */
final class Look {
    private static final String FONT = "Arial";
    private static final short BODY = 10;
    /** Air to the left of texts, which is to the right of numbers. */
    private static final short INDENT = 1;

    private static final int INK = 0x22313A;
    private static final int QUIET = 0x616E76;
    private static final int GOOD = 0x1F6B45;
    private static final int POOR = 0x7D5200;
    private static final int BAD = 0x9B2C1F;
    private static final int HAIR = 0xD3DBDE;
    private static final int MIST = 0xE6EDF0;
    private static final int SAGE = 0xE8F0E3;
    private static final int SAND = 0xFBF2DC;
    private static final int WHITE = 0xFFFFFF;

    /** Grounds of shaded cells; numbers on the last are white, so that all can be read. */
    private static final Map<Tone, Integer> SHADES = new EnumMap<>(Map.of(
            Tone.SHADE_1, 0xEFF5F6,
            Tone.SHADE_2, 0xC8DEE3,
            Tone.SHADE_3, 0x9DC4CD,
            Tone.SHADE_4, 0x6FA8B5,
            Tone.SHADE_5, 0x2A6C80));

    private final XSSFWorkbook book;
    private final Map<Object, XSSFCellStyle> styles = new HashMap<>();
    private final Map<Object, XSSFFont> fonts = new HashMap<>();

    /** What is not a cell of a table. */
    enum Part {
        TITLE,
        NOTE,
        SECTION,
        LABEL,
        STAND_OUT
    }

    private record CellKey(Form form, Tone tone, Kind kind) {}

    private record HeadKey(Column.Band band, Kind kind) {}

    private record FontKey(int colour, int size, Kind kind) {}

    private enum Kind {
        USUAL,
        TOTAL,
        /** Text that a program might take for a formula when someone edits it. */
        GUARDED,
        BAND,
        BOLD
    }

    Look(XSSFWorkbook book) {
        this.book = book;
        XSSFFont first = book.getFontAt(0);
        first.setFontName(FONT);
        first.setFontHeightInPoints(BODY);
    }

    XSSFCellStyle cell(Form form, Tone tone) {
        return styles.computeIfAbsent(new CellKey(form, tone, Kind.USUAL), k -> body(form, tone));
    }

    /** For text that begins like a formula: stays text when someone edits it. */
    XSSFCellStyle guarded(Form form, Tone tone) {
        return styles.computeIfAbsent(new CellKey(form, tone, Kind.GUARDED), k -> {
            XSSFCellStyle style = body(form, tone);
            style.setQuotePrefixed(true);
            return style;
        });
    }

    XSSFCellStyle total(Form form) {
        return styles.computeIfAbsent(new CellKey(form, Tone.PLAIN, Kind.TOTAL), k -> {
            XSSFCellStyle style = body(form, Tone.PLAIN);
            style.setFont(font(INK, BODY, Kind.BOLD));
            style.setBorderTop(BorderStyle.THIN);
            style.setTopBorderColor(colour(INK));
            return style;
        });
    }

    XSSFCellStyle heading(Column column) {
        HeadKey key = new HeadKey(column.band(), column.form().isNumber() ? Kind.TOTAL : Kind.USUAL);
        return styles.computeIfAbsent(key, k -> {
            XSSFCellStyle style = ground(column.band());
            style.setFont(font(INK, BODY, Kind.BOLD));
            style.setWrapText(true);
            style.setVerticalAlignment(VerticalAlignment.BOTTOM);
            align(style, column.form());
            style.setBorderBottom(BorderStyle.THIN);
            style.setBottomBorderColor(colour(INK));
            return style;
        });
    }

    XSSFCellStyle band(Column.Band band) {
        return styles.computeIfAbsent(new HeadKey(band, Kind.BAND), k -> {
            XSSFCellStyle style = ground(band);
            style.setFont(font(QUIET, BODY - 1, Kind.USUAL));
            align(style, Form.WORD);
            return style;
        });
    }

    XSSFCellStyle part(Part part) {
        return styles.computeIfAbsent(part, k -> {
            XSSFCellStyle style = book.createCellStyle();
            style.setFont(
                    switch (part) {
                        case TITLE -> font(INK, 15, Kind.BOLD);
                        case NOTE, LABEL -> font(QUIET, BODY, Kind.USUAL);
                        case SECTION -> font(INK, 12, Kind.BOLD);
                        case STAND_OUT -> font(INK, 13, Kind.BOLD);
                    });
            style.setAlignment(HorizontalAlignment.LEFT);
            style.setIndention(INDENT);
            style.setVerticalAlignment(part == Part.SECTION ? VerticalAlignment.BOTTOM : VerticalAlignment.CENTER);
            return style;
        });
    }

    int made() {
        return book.getNumCellStyles();
    }

    private XSSFCellStyle body(Form form, Tone tone) {
        XSSFCellStyle style = form.isReading() ? ground(Column.Band.READ) : book.createCellStyle();
        style.setFont(font(colourOf(tone), BODY, tone == Tone.BAD ? Kind.BOLD : Kind.USUAL));
        style.setDataFormat(book.createDataFormat().getFormat(form.code()));
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        style.setWrapText(form.isWrapped());
        align(style, form);
        Integer shade = SHADES.get(tone);
        if (shade != null) {
            fill(style, shade);
        }
        style.setBorderBottom(BorderStyle.HAIR);
        style.setBottomBorderColor(colour(HAIR));
        if (form == Form.TAG) {
            boxed(style);
        }
        if (form.isReading()) {
            style.setBorderRight(BorderStyle.HAIR);
            style.setRightBorderColor(colour(INK));
        }
        return style;
    }

    /** Lines to cut along. */
    private static void boxed(XSSFCellStyle style) {
        style.setAlignment(HorizontalAlignment.CENTER);
        style.setIndention((short) 0);
        style.setBorderTop(BorderStyle.DASHED);
        style.setBorderBottom(BorderStyle.DASHED);
        style.setBorderLeft(BorderStyle.DASHED);
        style.setBorderRight(BorderStyle.DASHED);
        style.setTopBorderColor(colour(QUIET));
        style.setBottomBorderColor(colour(QUIET));
        style.setLeftBorderColor(colour(QUIET));
        style.setRightBorderColor(colour(QUIET));
    }

    private static void align(XSSFCellStyle style, Form form) {
        style.setAlignment(form.isNumber() ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
        style.setIndention(form.isNumber() ? 0 : INDENT);
    }

    private static int colourOf(Tone tone) {
        return switch (tone) {
            case PLAIN -> INK;
            case QUIET -> QUIET;
            case GOOD -> GOOD;
            case POOR -> POOR;
            case BAD -> BAD;
            case SHADE_1, SHADE_2, SHADE_3, SHADE_4 -> INK;
            case SHADE_5 -> WHITE;
        };
    }

    private XSSFCellStyle ground(Column.Band band) {
        XSSFCellStyle style = book.createCellStyle();
        int ground = switch (band) {
            case PLANNED, OTHER -> MIST;
            case ANSWER -> SAGE;
            case READ -> SAND;
        };
        fill(style, ground);
        return style;
    }

    private static void fill(XSSFCellStyle style, int ground) {
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setFillForegroundColor(colour(ground));
    }

    private XSSFFont font(int colour, int size, Kind kind) {
        return fonts.computeIfAbsent(new FontKey(colour, size, kind), k -> {
            XSSFFont font = book.createFont();
            font.setFontName(FONT);
            font.setFontHeightInPoints((short) size);
            font.setColor(colour(colour));
            font.setBold(kind == Kind.BOLD);
            return font;
        });
    }

    private static XSSFColor colour(int rgb) {
        byte[] parts = {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
        return new XSSFColor(parts);
    }
}
