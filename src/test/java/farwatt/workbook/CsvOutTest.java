package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plain lists as a reader that is not ours reads them back. */
class CsvOutTest {
    private static final List<String> NAMES = List.of(
            "=cmd|'/C calc'!A0",
            "+49 gate",
            "@kiosk",
            "-Pier end-",
            "\t=1+1",
            "=HYPERLINK(\"x\")",
            "'=quoted",
            "''-twice",
            "'Depot'",
            "'",
            "",
            "a,b",
            "two\nlines",
            " edges ",
            "\rback",
            "\n=down",
            "00123",
            "é“”");

    @TempDir
    Path folder;

    private static Schedule table() {
        List<List<Entry>> lines = new ArrayList<>();
        for (String name : NAMES) {
            lines.add(List.of(Entry.words(name), Entry.number(-5.5), Entry.number(0.07)));
        }
        return new Schedule(
                "List",
                "",
                List.of(
                        Column.of("name", "name", Form.WORD),
                        Column.of("temp", "temperature", Form.ONE).in("°C"),
                        Column.of("share", "share left", Form.SHARE)),
                Schedule.Lines.of(lines));
    }

    private List<List<String>> read(Path file) throws Exception {
        try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            assertEquals('\uFEFF', text.read(), "the mark of the encoding");
            try (CsvReader<CsvRecord> csv =
                    CsvReader.builder().skipEmptyLines(false).ofCsvRecord(text)) {
                return csv.stream().map(CsvRecord::getFields).toList();
            }
        }
    }

    @Test
    void textsComeBackAndNumbersAreNeverTouched() throws Exception {
        Path file = folder.resolve("list.csv");
        CsvOut.write(file, table(), new Cancel());
        List<List<String>> rows = read(file);
        assertEquals(List.of("name", "temperature, °C", "share left, %"), rows.get(0));
        for (int i = 0; i < NAMES.size(); i++) {
            List<String> row = rows.get(i + 1);
            assertEquals(NAMES.get(i), CsvOut.restored(row.get(0)));
            assertEquals("-5.5", row.get(1));
            assertEquals("7", row.get(2));
        }
    }

    @Test
    void noFieldWithATextBeginsLikeAFormula() throws Exception {
        Path file = folder.resolve("list.csv");
        CsvOut.write(file, table(), new Cancel());
        for (List<String> row : read(file)) {
            String name = row.get(0);
            assertTrue(name.isEmpty() || "=+-@\t\r\n".indexOf(name.charAt(0)) < 0, name);
        }
    }

    @Test
    void theRuleIsUndoneForEveryText() {
        long seed = 41;
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(5); n > 0; n--) {
                text.append("''=+-@\t\r\na1 ".charAt(random.nextInt(12)));
            }
            String once = text.toString();
            assertEquals(once, CsvOut.restored(CsvOut.harmless(once)), "seed " + seed);
        }
    }

    @Test
    void numbersAreShortAndExact() throws Exception {
        double[] values = {0.1 + 0.2, 1e21, 1e-7, 180, -0.0, 123456.789, Math.PI};
        List<List<Entry>> lines = new ArrayList<>();
        for (double value : values) {
            lines.add(List.of(Entry.number(value)));
        }
        Path file = folder.resolve("numbers.csv");
        Column column = Column.of("n", "n", Form.FREE);
        CsvOut.write(file, new Schedule("Numbers", "", List.of(column), Schedule.Lines.of(lines)), new Cancel());
        List<List<String>> rows = read(file);
        for (int i = 0; i < values.length; i++) {
            assertEquals(values[i] + 0.0, Double.parseDouble(rows.get(i + 1).get(0)));
        }
        assertEquals("180", rows.get(4).get(0));
        assertEquals("0", rows.get(5).get(0));
    }

    @Test
    void aCancelOrAMissingFolderLeavesNothing() throws Exception {
        Cancel cancel = new Cancel();
        cancel.ask();
        assertThrows(CancellationException.class, () -> CsvOut.write(folder.resolve("c.csv"), table(), cancel));
        Refusal refusal =
                assertThrows(Refusal.class, () -> CsvOut.write(folder.resolve("no/c.csv"), table(), new Cancel()));
        assertEquals("workbook.no_folder", refusal.notice().code());
        try (var all = Files.list(folder)) {
            assertEquals(0, all.count());
        }
    }
}
