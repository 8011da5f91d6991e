package farwatt.workbook;

import farwatt.report.Cancel;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Writes a table as a plain list: commas, quotes where needed, lines ended by CR LF (RFC 4180), UTF-8 with its mark so
 * that programs for workbooks know the encoding, decimal points. A share stands as a number of per cent.
 *
 * <p>Texts that such a program would run are made harmless by a rule that can be undone: if the first character after
 * any leading apostrophes is one of {@code = + - @}, a tab or a line end, one apostrophe is put in front;
 * {@link #restored} takes it away. Numbers are never touched.
 */
public final class CsvOut {
    private static final String RISKY = "=+-@\t\r\n";
    private static final String MARK = "\uFEFF";
    private static final String ENDING = ".csv";

    private CsvOut() {}

    /**
     * Writes one table.
     *
     * @throws Refusal with one sentence if the file cannot be written; the old file is untouched then
     * @throws java.util.concurrent.CancellationException when cancelled
     */
    public static void write(Path target, Schedule table, Cancel cancel) throws Refusal {
        Beside.write(target, out -> {
            put(out, MARK + line(headings(table)));
            for (int line = 0; line < table.lines().size(); line++) {
                cancel.check();
                put(out, line(fields(table, table.lines().at(line))));
            }
        });
    }

    /**
     * Writes the tables of a hand-over, without its summary: one to the target, several beside it, each with the name
     * of its sheet in the file's.
     *
     * @return where they are
     * @throws Refusal with one sentence if a file cannot be written; those before it are there then
     * @throws java.util.concurrent.CancellationException when cancelled
     */
    public static List<Path> write(Path target, Handover content, Progress progress, Cancel cancel) throws Refusal {
        Beside.check(target);
        List<Schedule> tables = Parts.of(content, NodePower.of(content.calc(), content.review()));
        List<String> names = SheetNames.of(tables.stream().map(Schedule::name).toList());
        String whole = String.valueOf(target.getFileName());
        String stem = whole.substring(0, Math.max(0, whole.length() - ENDING.length()));
        List<Path> written = new ArrayList<>();
        for (int i = 0; i < tables.size(); i++) {
            progress.at((double) i / tables.size(), names.get(i));
            Path file = tables.size() == 1 ? target : target.resolveSibling(stem + " - " + names.get(i) + ENDING);
            write(file, tables.get(i), cancel);
            written.add(file);
        }
        return written;
    }

    /** True for the name of a list. */
    public static boolean isList(Path file) {
        return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(ENDING);
    }

    /** A text as it goes into a list. */
    public static String harmless(String text) {
        return isRisky(text) ? "'" + text : text;
    }

    /** The text that {@link #harmless} made this of. */
    public static String restored(String field) {
        return field.startsWith("'") && isRisky(field) ? field.substring(1) : field;
    }

    private static boolean isRisky(String text) {
        int at = 0;
        while (at < text.length() && text.charAt(at) == '\'') {
            at++;
        }
        return at < text.length() && RISKY.indexOf(text.charAt(at)) >= 0;
    }

    private static void put(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> headings(Schedule table) {
        List<String> titles = new ArrayList<>();
        for (Column column : table.columns()) {
            boolean share = column.form() == Form.SHARE && column.unit().isEmpty();
            titles.add(quoted(harmless(share ? column.in("%").title() : column.title())));
        }
        return titles;
    }

    private static List<String> fields(Schedule table, List<Entry> entries) {
        List<String> fields = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            fields.add(field(
                    entry.shown(), entry.form().orElse(table.columns().get(i).form())));
        }
        return fields;
    }

    private static String field(Entry.Content content, Form form) {
        if (content instanceof Entry.Amount amount) {
            return number(amount.value(), form == Form.SHARE ? 2 : 0);
        }
        if (content instanceof Entry.Words words) {
            return quoted(harmless(words.text()));
        }
        return content instanceof Entry.Day day ? day.date().toString() : "";
    }

    /** The shortest digits that read back as the same number, the point so many places to the right. */
    private static String number(double value, int places) {
        BigDecimal digits = new BigDecimal(Double.toString(value)).movePointRight(places);
        return digits.signum() == 0 ? "0" : digits.stripTrailingZeros().toPlainString();
    }

    private static String quoted(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
                && !text.startsWith(" ")
                && !text.endsWith(" ");
        return plain ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }

    private static String line(List<String> fields) {
        return String.join(",", fields) + "\r\n";
    }
}
