package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import farwatt.report.Cancel;
import farwatt.report.Progress;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A machine without a font, a display or much memory writes the same workbook, and says nothing while it does. */
class PlainMachineTest {
    private static final int WHOLE = 100_000;
    private static final int COLUMNS = 20;

    @TempDir
    Path folder;

    /** What runs on that machine. */
    static final class Elsewhere {
        private Elsewhere() {}

        /** Writes the landing to the file named first, with its diagram, or a large table with so many lines. */
        public static void main(String[] words) throws Exception {
            Path file = Path.of(words[0]);
            if (words.length == 1) {
                Workbook.write(file, Landing.handover(Landing.plan()), Progress.SILENT, new Cancel());
            } else if (words[1].equals("drawn")) {
                Workbook.write(file, Landing.handover(Landing.plan()).drawn(), Progress.SILENT, new Cancel());
            } else {
                Schedule large = large(Integer.parseInt(words[1]));
                Workbook.write(
                        file,
                        List.of(large),
                        Landing.handover(Landing.plan()).imprint(),
                        Progress.SILENT,
                        new Cancel());
            }
        }

        private static Schedule large(int size) {
            List<Column> columns = new ArrayList<>();
            for (int i = 0; i < COLUMNS; i++) {
                columns.add(Column.of("c" + i, "column " + i, i % 4 == 0 ? Form.WORD : Form.TWO));
            }
            return new Schedule("Large", "", columns, new Schedule.Lines() {
                @Override
                public int size() {
                    return size;
                }

                @Override
                public List<Entry> at(int line) {
                    List<Entry> entries = new ArrayList<>(COLUMNS);
                    for (int i = 0; i < COLUMNS; i++) {
                        entries.add(i % 4 == 0 ? Entry.words("cam " + line) : Entry.number(line / (i + 1.0)));
                    }
                    return entries;
                }
            });
        }
    }

    @Test
    void withoutFontsAndDisplayTheBytesAreTheSame() throws Exception {
        Path there = folder.resolve("there.xlsx");
        run("-Xmx256m", there.toString());
        Path here = folder.resolve("here.xlsx");
        Workbook.write(here, Landing.handover(Landing.plan()), Progress.SILENT, new Cancel());
        assertArrayEquals(Files.readAllBytes(here), Files.readAllBytes(there));
    }

    @Test
    void underAnotherLanguageTheBytesAreTheSame() throws Exception {
        Path there = folder.resolve("there.xlsx");
        run(List.of("-Duser.language=de", "-Duser.country=DE", "-Dfile.encoding=ISO-8859-1"), there.toString());
        Path here = folder.resolve("here.xlsx");
        Workbook.write(here, Landing.handover(Landing.plan()), Progress.SILENT, new Cancel());
        assertArrayEquals(Files.readAllBytes(here), Files.readAllBytes(there));
    }

    @Test
    void withoutFontsTheDiagramIsLeftOutOrDrawnAndTheRestStands() throws Exception {
        Path there = folder.resolve("there.xlsx");
        run("-Xmx256m", there.toString(), "drawn");
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(there))) {
            assertEquals(
                    "Ferry landing, east gate",
                    book.getSheetAt(0).getRow(0).getCell(0).getStringCellValue());
            assertTrue(book.getNumberOfSheets() > 12, book.getNumberOfSheets() + " sheets");
        }
    }

    /** The system refuses to let any file grow past a few blocks, as a full disk does. */
    @Test
    void aDiskThatFillsUpLeavesNothingBehind() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no shell to set a limit with");
        Path out = Files.createDirectories(folder.resolve("out"));
        Path scratch = Files.createDirectories(folder.resolve("scratch"));
        Path file = Files.writeString(out.resolve("old.xlsx"), "old");
        List<String> command = new ArrayList<>(List.of("/bin/sh", "-c", "ulimit -f 64; exec \"$@\"", "sh"));
        command.add(java());
        command.addAll(List.of("-XX:-UsePerfData", "-Djava.io.tmpdir=" + scratch, "-cp"));
        command.addAll(List.of(System.getProperty("java.class.path"), Elsewhere.class.getName()));
        command.addAll(List.of(file.toString(), "20000"));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.redirectOutput(ProcessBuilder.Redirect.PIPE);
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(10, TimeUnit.MINUTES), "it did not end");
        assertTrue(said.contains("old.xlsx could not be written: "), said);
        assertEquals("old", Files.readString(file));
        for (Path folder : List.of(out, scratch)) {
            try (var left = Files.list(folder)) {
                assertEquals(folder.equals(out) ? 1 : 0, left.count(), folder.toString());
            }
        }
    }

    @Test
    void aLargeTableTakesLittleMemory() throws Exception {
        boolean whole = Boolean.getBoolean("farwatt.soak");
        int lines = whole ? WHOLE : WHOLE / 20;
        Path file = folder.resolve("large.xlsx");
        run(whole ? "-Xmx512m" : "-Xmx96m", file.toString(), "" + lines);
        assertTrue(Files.size(file) > lines * 20L, Files.size(file) + " bytes");
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private void run(String heap, String... words) throws Exception {
        run(List.of(heap), words);
    }

    private void run(List<String> settings, String... words) throws Exception {
        Path fonts = Files.writeString(folder.resolve("fonts.conf"), "<fontconfig></fontconfig>");
        List<String> command = new ArrayList<>();
        command.add(java());
        command.addAll(settings);
        command.add("-Djava.awt.headless=true");
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Elsewhere.class.getName()));
        command.addAll(List.of(words));
        File said = folder.resolve("said.txt").toFile();
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said);
        builder.environment().put("FONTCONFIG_FILE", fonts.toString());
        Process process = builder.start();
        assertTrue(process.waitFor(10, TimeUnit.MINUTES), "it did not end");
        String all = Files.readString(said.toPath(), StandardCharsets.UTF_8);
        assertEquals("", all);
        assertEquals(0, process.exitValue());
    }
}
