package farwatt.workbook;

import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.io.IOException;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * One workbook while it is being written; keeps a few lines in memory at a time. For one thread.
 */
final class Book implements AutoCloseable {
    private static final int WINDOW = 64;
    /** The most characters that a cell of a workbook may hold. */
    private static final int MOST_TEXT = 32_767;

    private static final String CUT = " … (cut here: too long for a cell)";

    final Look look;
    final Places places = new Places();
    final Imprint imprint;
    final Cancel cancel;
    private final Scratch scratch;
    private final SXSSFWorkbook book;
    private final List<Notice> notices = new ArrayList<>();

    /**
     * Starts a workbook.
     *
     * @param plain an empty workbook to write into
     */
    Book(XSSFWorkbook plain, Imprint imprint, Cancel cancel) throws IOException {
        scratch = Scratch.open();
        book = new SXSSFWorkbook(plain, WINDOW);
        look = new Look(plain);
        this.imprint = imprint;
        this.cancel = cancel;
        describe(plain.getProperties());
    }

    private void describe(POIXMLProperties properties) {
        POIXMLProperties.CoreProperties core = properties.getCoreProperties();
        core.setTitle(legal(imprint.title()));
        core.setCreator("Farwatt");
        Optional<Date> noon = Optional.of(Date.from(imprint.date().atTime(12, 0).toInstant(ZoneOffset.UTC)));
        core.setCreated(noon);
        core.setModified(noon);
        core.setLastModifiedByUser("Farwatt");
        properties.getExtendedProperties().setApplication("Farwatt");
    }

    /** Marks the workbook as a hand-over, so that it is known again when it comes back. */
    void mark(Origin origin) {
        POIXMLProperties.CustomProperties properties =
                book.getXSSFWorkbook().getProperties().getCustomProperties();
        origin.words().forEach((key, word) -> properties.addProperty(key, legal(word)));
    }

    SXSSFWorkbook poi() {
        return book;
    }

    SXSSFSheet sheet(String name) {
        return book.createSheet(name);
    }

    /** A text as a cell can hold it; a cut is noticed. */
    String text(String text, Place place) {
        String legal = legal(text);
        if (legal.length() <= MOST_TEXT) {
            return legal;
        }
        notices.add(Notice.of(Level.WARN, WorkbookCode.TEXT_CUT, place, text.length(), MOST_TEXT));
        int end = MOST_TEXT - CUT.length();
        if (Character.isHighSurrogate(legal.charAt(end - 1))) {
            end--;
        }
        return legal.substring(0, end) + CUT;
    }

    /**
     * Characters that the file's form cannot hold as they are, and what would be read as one of these, are written by
     * their number: {@code _x0001_} (ISO/IEC 29500-1, 22.9.2.19).
     */
    static String legal(String text) {
        int strange = 0;
        while (strange < text.length() && !isStrange(text, strange)) {
            strange++;
        }
        if (strange == text.length()) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length() + 16).append(text, 0, strange);
        for (int i = strange; i < text.length(); i++) {
            char c = text.charAt(i);
            if (isStrange(text, i)) {
                out.append("_x")
                        .append(String.format(java.util.Locale.ROOT, "%04X", (int) c))
                        .append('_');
            } else {
                out.append(c);
            }
        }
        return out.toString();
    }

    private static boolean isStrange(String text, int at) {
        char c = text.charAt(at);
        if (c == '_') {
            return text.regionMatches(at + 1, "x", 0, 1)
                    && at + 6 < text.length()
                    && text.charAt(at + 6) == '_'
                    && text.substring(at + 2, at + 6).chars().allMatch(d -> Character.digit(d, 16) >= 0);
        }
        if (Character.isSurrogate(c)) {
            boolean pair = Character.isHighSurrogate(c)
                    ? at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1))
                    : at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
            return !pair;
        }
        return (c < ' ' && c != '\n' && c != '\t') || c == 0xFFFE || c == 0xFFFF;
    }

    void say(Notice notice) {
        notices.add(notice);
    }

    List<Notice> notices() {
        return List.copyOf(notices);
    }

    void into(OutputStream out) throws IOException {
        book.write(out);
    }

    @Override
    public void close() throws IOException {
        try {
            book.close();
        } finally {
            scratch.close();
        }
    }
}
