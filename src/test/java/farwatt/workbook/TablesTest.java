package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.report.Cancel;
import farwatt.report.Notice;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables of any kind as workbooks. */
class TablesTest {
    /** Texts that a program for workbooks would run if it took them for formulas, and how hot it is there. */
    private static final Object[][] RISKY = {
        {"=cmd|'/C calc'!A0", 6.5, -20.0},
        {"+49 gate", 3.0, -5.5},
        {"@kiosk", 2.0, 0.0},
        {"-Pier end-", 4.0, 25.0},
        {"\t=1+1", 1.0, 5.0},
        {"=HYPERLINK(\"x\")", 1.5, 5.0}
    };

    @TempDir
    Path folder;

    private final Cancel cancel = new Cancel();

    private static Imprint imprint() {
        return new Imprint("Orchard packing shed", "1.0.0", Optional.empty(), Landing.DAY, Paper.A4);
    }

    private List<Notice> write(Path file, Schedule... tables) throws Refusal {
        return Workbook.write(file, List.of(tables), imprint(), Progress.SILENT, cancel);
    }

    private static Schedule risky() {
        List<List<Entry>> lines = new ArrayList<>();
        for (Object[] row : RISKY) {
            lines.add(List.of(
                    Entry.words((String) row[0]), Entry.number((double) row[1]), Entry.number((double) row[2])));
        }
        return new Schedule(
                "Risky",
                "",
                List.of(
                        Column.of("name", "name", Form.WORD),
                        Column.of("power", "power", Form.ONE).in("W").summed(),
                        Column.of("temp", "temperature", Form.ONE).in("°C")),
                Schedule.Lines.of(lines));
    }

    private static Schedule one(String name, Entry entry) {
        return new Schedule(
                name,
                "",
                List.of(Column.of("text", "text", Form.SENTENCE)),
                Schedule.Lines.of(List.of(List.of(entry))));
    }

    @Test
    void textsThatLookLikeFormulasStayTexts() throws Exception {
        Path file = folder.resolve("risky.xlsx");
        write(file, risky());
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            double total = 0;
            for (int i = 0; i < RISKY.length; i++) {
                Row row = book.getSheetAt(0).getRow(3 + i);
                assertEquals(CellType.STRING, row.getCell(0).getCellType());
                assertEquals(RISKY[i][0], row.getCell(0).getStringCellValue());
                assertTrue(row.getCell(0).getCellStyle().getQuotePrefixed(), "stays a text when edited");
                assertEquals(CellType.NUMERIC, row.getCell(2).getCellType());
                assertEquals((double) RISKY[i][2], row.getCell(2).getNumericCellValue());
                total += row.getCell(1).getNumericCellValue();
            }
            assertEquals(18.0, total);
            Cell sum = book.getSheetAt(0).getRow(3 + RISKY.length).getCell(1);
            assertEquals(18.0, sum.getNumericCellValue());
            assertEquals(CellType.FORMULA, sum.getCellType());
        }
    }

    @Test
    void everySiteGetsASheetAndKeepsItsFullNameInTheContents() throws Exception {
        Path file = folder.resolve("sites.xlsx");
        List<Schedule> tables = new ArrayList<>();
        for (String site : SheetNamesTest.SITES) {
            tables.add(one(site, Entry.words("cameras")));
        }
        Schedule total = new Schedule(
                "Of all",
                "",
                List.of(Column.of("n", "sites", Form.WHOLE)),
                Schedule.Lines.of(List.of(List.of(
                        Entry.live("COUNTA({Hall [north]!text:all})+COUNTA({Müseum “Courtyard”!text:all})", 2)))));
        tables.add(total);
        List<Notice> notices = write(file, tables.toArray(new Schedule[0]));
        assertEquals(10, notices.size(), notices::toString);
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            assertEquals(13, book.getNumberOfSheets());
            for (int i = 0; i < SheetNamesTest.SITES.size(); i++) {
                Row row = book.getSheetAt(0).getRow(3 + i);
                assertEquals(book.getSheetName(i + 1), row.getCell(0).getStringCellValue());
                assertEquals(SheetNamesTest.SITES.get(i), row.getCell(1).getStringCellValue());
            }
            Cell cell = book.getSheetAt(12).getRow(3).getCell(0);
            var evaluator = book.getCreationHelper().createFormulaEvaluator();
            assertEquals(2, evaluator.evaluate(cell).getNumberValue());
        }
    }

    @Test
    void aDayIsTheSameDayInBothDateSystems() throws Exception {
        for (boolean from1904 : new boolean[] {false, true}) {
            XSSFWorkbook plain = new XSSFWorkbook();
            plain.getCTWorkbook().getWorkbookPr().setDate1904(from1904);
            Path file = folder.resolve(from1904 + ".xlsx");
            try (Book book = new Book(plain, imprint(), cancel);
                    var out = Files.newOutputStream(file)) {
                Schedule days = new Schedule(
                        "Days",
                        "",
                        List.of(Column.of("day", "day", Form.DAY)),
                        Schedule.Lines.of(List.of(List.of(Entry.day(java.time.LocalDate.of(2018, 1, 2))))));
                new Press(book, book.places.put(days, "Days")).run(lines -> {});
                book.into(out);
            }
            try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
                assertEquals(from1904, book.isDate1904());
                Cell cell = book.getSheetAt(0).getRow(3).getCell(0);
                assertEquals(
                        java.time.LocalDate.of(2018, 1, 2),
                        cell.getLocalDateTimeCellValue().toLocalDate());
            }
        }
    }

    @Test
    void noCharacterIsLost() throws Exception {
        List<String> texts = List.of(
                "a\tb",
                "line\nline",
                "a\rb",
                "\u0001bell\u0007",
                "_x0041_ is no A",
                "_x005F_",
                "half \uD83D pair",
                " space around ",
                "😀 & <tag> \"q\"",
                "'quoted",
                "\uFFFE",
                "_x00g1_");
        for (String text : texts) {
            Path file = folder.resolve("text.xlsx");
            assertEquals(List.of(), write(file, one("Texts", Entry.words(text))));
            try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
                assertEquals(text, book.getSheetAt(0).getRow(3).getCell(0).getStringCellValue());
            }
        }
    }

    @Test
    void aTextThatIsTooLongIsCutAndSaid() throws Exception {
        Path file = folder.resolve("long.xlsx");
        List<Notice> notices = write(file, one("Long", Entry.words("x".repeat(40_000))));
        assertEquals(
                List.of("workbook.text_cut"), notices.stream().map(Notice::code).toList());
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            String text = book.getSheetAt(0).getRow(3).getCell(0).getStringCellValue();
            assertEquals(32_767, text.length());
            assertTrue(text.endsWith("(cut here: too long for a cell)"), text.substring(32_700));
        }
        assertEquals(List.of(), write(file, one("Fits", Entry.words("x".repeat(32_767)))));
    }

    @Test
    void cancelHalfwayLeavesNothingBehindAndTheOldFileAsItWas() throws Exception {
        Path file = Files.writeString(folder.resolve("old.xlsx"), "old");
        List<Path> before = scratch();
        Schedule.Lines lines = new Schedule.Lines() {
            @Override
            public int size() {
                return 1000;
            }

            @Override
            public List<Entry> at(int line) {
                if (line == 500) {
                    cancel.ask();
                }
                return List.of(Entry.number(line));
            }
        };
        Schedule half = new Schedule("Half", "", List.of(Column.of("n", "n", Form.WHOLE)), lines);
        assertThrows(CancellationException.class, () -> write(file, half));
        assertEquals("old", Files.readString(file));
        assertEquals(List.of(file), files(folder));
        assertEquals(before, scratch());
    }

    @Test
    void aFullDiskIsOneSentenceAndTheOldFileStays() throws Exception {
        Path file = Files.writeString(folder.resolve("old.xlsx"), "old");
        List<Path> before = scratch();
        Schedule.Lines lines = new Schedule.Lines() {
            @Override
            public int size() {
                return 3;
            }

            @Override
            public List<Entry> at(int line) {
                throw new UncheckedIOException(new IOException("No space left on device"));
            }
        };
        Schedule full = new Schedule("Full", "", List.of(Column.of("n", "n", Form.WHOLE)), lines);
        Refusal refusal = assertThrows(Refusal.class, () -> write(file, full));
        assertTrue(refusal.getMessage().contains("No space left on device"), refusal.getMessage());
        assertEquals("old", Files.readString(file));
        assertEquals(List.of(file), files(folder));
        assertEquals(before, scratch());
    }

    @Test
    void whatIsNoPlaceForAFileIsRefusedBeforeAnyWork() throws Exception {
        assertEquals("workbook.is_folder", refused(folder));
        assertEquals("workbook.no_folder", refused(folder.resolve("nowhere/landing.xlsx")));
        Path device = Path.of("/dev/full");
        if (Files.exists(device)) {
            assertEquals("workbook.not_written", refused(device));
        }
        assertEquals(List.of(), files(folder));
    }

    private String refused(Path file) {
        return assertThrows(Refusal.class, () -> write(file, risky())).notice().code();
    }

    @Test
    void aTableLargerThanASheetIsRefused() {
        Schedule.Lines many = new Schedule.Lines() {
            @Override
            public int size() {
                return 1_048_576;
            }

            @Override
            public List<Entry> at(int line) {
                throw new AssertionError("asked for a line");
            }
        };
        Schedule large = new Schedule("Large", "", List.of(Column.of("n", "n", Form.WHOLE)), many);
        Refusal refusal = assertThrows(Refusal.class, () -> write(folder.resolve("large.xlsx"), large));
        assertEquals("workbook.too_many_rows", refusal.notice().code());
    }

    @Test
    void stylesStayFewHoweverManyLines() throws Exception {
        Random random = new Random(7);
        // shaded grounds are only for figures of one form
        List<Tone> tones = List.copyOf(EnumSet.range(Tone.PLAIN, Tone.BAD));
        List<Column> columns = new ArrayList<>();
        for (Form form : Form.values()) {
            columns.add(Column.of(form.name(), form.name(), form));
        }
        Schedule.Lines lines = new Schedule.Lines() {
            @Override
            public int size() {
                return 2000;
            }

            @Override
            public List<Entry> at(int line) {
                Tone tone = tones.get(line % tones.size());
                return columns.stream()
                        .map(c -> (c.form().isNumber() ? Entry.number(random.nextInt(9)) : Entry.words("=" + line))
                                .in(tone))
                        .toList();
            }
        };
        Path file = folder.resolve("styles.xlsx");
        write(file, new Schedule("Styles", "", columns, lines));
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            assertTrue(book.getNumCellStyles() < 90, book.getNumCellStyles() + " styles");
            assertTrue(book.getNumberOfFonts() < 20, book.getNumberOfFonts() + " fonts");
        }
    }

    @Test
    void progressGoesUpToTheEnd() throws Exception {
        List<Double> shares = new ArrayList<>();
        Workbook.write(
                folder.resolve("p.xlsx"),
                List.of(risky(), one("Two", Entry.NONE)),
                imprint(),
                (s, what) -> shares.add(s),
                cancel);
        for (int i = 1; i < shares.size(); i++) {
            assertTrue(shares.get(i) >= shares.get(i - 1), shares::toString);
        }
        assertEquals(1.0, shares.get(shares.size() - 1));
        assertFalse(shares.get(0) > 0.5, shares::toString);
    }

    /** What the workbook library laid aside in the folder for such things. */
    private static List<Path> scratch() throws IOException {
        try (Stream<Path> all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return all.filter(path -> path.getFileName().toString().startsWith(Scratch.prefix()))
                    .sorted()
                    .toList();
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }
}
