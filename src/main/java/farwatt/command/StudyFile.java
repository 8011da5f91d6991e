package farwatt.command;

import farwatt.report.Refusal;
import farwatt.study.Heading;
import farwatt.study.Point;
import farwatt.study.Sink;
import farwatt.workbook.CsvOut;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;

/**
 * Writes points to a list as they come: commas, CR LF, UTF-8 with its mark, numbers in the unit of the heading. The
 * file gets its name when it is whole; until then an old one stays as it is.
 */
final class StudyFile implements Sink, AutoCloseable {
    private static final String MARK = "\uFEFF";

    private final Path target;
    private final Path beside;
    private final List<Heading> columns;
    private final BufferedWriter out;
    private final StringBuilder line = new StringBuilder();
    private boolean whole;

    StudyFile(String file, List<Heading> columns) throws Refusal, IOException {
        if (!file.toLowerCase(Locale.ROOT).endsWith(".csv")) {
            throw Refusal.of(CommandCode.ONLY_CSV, file);
        }
        this.columns = columns;
        target = Path.of(file).toAbsolutePath();
        beside = target.resolveSibling(target.getFileName() + ".part");
        out = Files.newBufferedWriter(beside, StandardCharsets.UTF_8);
        out.write(MARK);
        String separator = "";
        for (Heading heading : columns) {
            String unit = heading.isNumber() ? heading.unit().symbol() : "";
            out.write(separator + field(unit.isEmpty() ? heading.name() : heading.name() + " (" + unit + ")"));
            separator = ",";
        }
        out.write("\r\n");
    }

    @Override
    public void take(Point point) throws IOException {
        line.setLength(0);
        for (int c = 0; c < columns.size(); c++) {
            if (c > 0) {
                line.append(',');
            }
            Heading heading = columns.get(c);
            double inside = point.inside(c);
            if (heading.isNumber()) {
                if (!Double.isNaN(inside)) {
                    number(heading.unit().fromInside(inside));
                }
            } else if (point.why(c).isEmpty()) {
                line.append(field(point.text(c)));
            }
        }
        line.append("\r\n");
        out.append(line);
    }

    private void number(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            line.append((long) value);
        } else {
            line.append(value);
        }
    }

    private static String field(String text) {
        String safe = CsvOut.harmless(text);
        boolean quotes = safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return quotes ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }

    /** To be called when every point has come. */
    void done() throws IOException {
        out.close();
        Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
        whole = true;
    }

    @Override
    public void close() throws IOException {
        if (!whole) {
            out.close();
            Files.deleteIfExists(beside);
        }
    }
}
