package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipFile;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets by choice: what stays is whole, what was left out leaves its figures behind. */
class ChoiceTest {
    @TempDir
    Path folder;

    static Plan withScenarios() {
        Step thicker = new Step.Set("trunk.gauge", Cell.text("22 AWG"));
        Step heater = new Step.Set("'mast radio'.draw", Cell.text("900 W"));
        return Landing.plan()
                .withScenarios(List.of(
                        new Scenario("thicker trunk", "", List.of(thicker)),
                        new Scenario("heater on the mast", "", List.of(heater))));
    }

    static Handover whole(Plan plan) throws Exception {
        return Landing.handover(plan)
                .beside(SideTables.of(plan, Optional.empty(), Progress.SILENT, new Cancel()))
                .with(HandoverPartsTest.picture())
                .with(HandoverPartsTest.studies());
    }

    private Path write(Handover content) throws Exception {
        Path file = folder.resolve("some.xlsx");
        Workbook.write(file, content, Progress.SILENT, new Cancel());
        return file;
    }

    private static List<String> names(XSSFWorkbook book) {
        List<String> names = new ArrayList<>();
        book.forEach(sheet -> names.add(sheet.getSheetName()));
        return names;
    }

    @Test
    void everySheetIsThereUnlessItIsLeftOut() throws Exception {
        Handover whole = whole(withScenarios());
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(write(whole)))) {
            assertTrue(
                    names(book)
                            .containsAll(Handover.SHEETS.stream()
                                    .filter(title -> !title.equals(Titles.WHY))
                                    .toList()),
                    names(book)::toString);
            assertTrue(names(book).containsAll(List.of("Sweep of draw", Titles.GRID, Titles.JUDGING)));
        }
        for (String title : Handover.SHEETS) {
            try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(write(whole.without(List.of(title)))))) {
                assertFalse(names(book).contains(title), title);
                var evaluator = book.getCreationHelper().createFormulaEvaluator();
                for (var cell : HandoverTest.cells(book)) {
                    if (cell.getCellType() == CellType.FORMULA) {
                        assertTrue(evaluator.evaluate(cell) != null, title + " " + cell.getCellFormula());
                        assertFalse(cell.getCellFormula().contains("'" + title + "'"), cell.getCellFormula());
                    }
                }
            }
        }
    }

    @Test
    void theSummaryAloneKeepsEveryFigure() throws Exception {
        Handover bare = whole(withScenarios()).with(List.of()).without(Handover.SHEETS);
        List<String> figures = summary(write(whole(withScenarios())));
        Path alone = write(bare);
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(alone))) {
            assertEquals(List.of(Titles.SUMMARY), names(book));
            assertTrue(HandoverTest.cells(book).stream().noneMatch(c -> c.getCellType() == CellType.FORMULA));
        }
        List<String> left = summary(alone);
        assertTrue(left.size() > 60, left::toString);
        // only the list of sheets is shorter
        assertEquals(figures.subList(0, 60), left.subList(0, 60));
    }

    private static List<String> summary(Path file) throws Exception {
        List<String> all = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            DataFormatter formatter = new DataFormatter(Locale.ROOT);
            formatter.setUseCachedValuesForFormulaCells(true);
            book.getSheetAt(0).forEach(row -> row.forEach(cell -> all.add(formatter.formatCellValue(cell))));
        }
        all.removeIf(String::isEmpty);
        return all;
    }

    @Test
    void theSummarySaysHowEachScenarioStands() throws Exception {
        String all = String.join("\n", summary(write(whole(withScenarios()))));
        assertTrue(all.contains("Verdict in each scenario"), all);
        assertTrue(all.contains("thicker trunk\n"), all);
        assertTrue(all.contains("heater on the mast\ndoes not hold"), all);
    }

    @Test
    void aTestSheetAloneComesBackWithItsReadings() throws Exception {
        Plan plan = Landing.plan();
        List<String> others = Handover.SHEETS.stream()
                .filter(title -> !title.equals(Titles.TEST))
                .toList();
        Path file = write(Landing.handover(plan).without(others));
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            assertEquals(List.of(Titles.SUMMARY, Titles.TEST, Titles.JUDGING), names(book));
            var sheet = book.getSheet(Titles.TEST);
            var headings = HandoverTest.headings(sheet, "run");
            int first = -1;
            for (var cell : headings) {
                first = cell.toString().equals("volts near, V") ? cell.getColumnIndex() : first;
            }
            sheet.getRow(headings.getRowNum() + 1).getCell(first).setCellValue(54.25);
            try (OutputStream out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
        Back back = WayBack.read(file, plan, Calculation.of(plan), new Cancel());
        assertEquals(List.of(), back.missing(), "sheets that were left out are no rows that were taken away");
        assertEquals(1, back.edited().size(), back.toString());
        assertEquals("54.25 V", back.edited().get(0).after());
    }

    @Test
    void oneSheetGoesToTheListItselfAndSeveralBesideIt() throws Exception {
        Handover whole = whole(withScenarios());
        Path list = folder.resolve("landing.csv");
        List<String> others = Handover.SHEETS.stream()
                .filter(title -> !title.equals(Titles.RUNS))
                .toList();
        Handover one = whole.with(List.of()).without(others);
        assertEquals(List.of(list), CsvOut.write(list, one, Progress.SILENT, new Cancel()));
        String text = Files.readString(list, StandardCharsets.UTF_8);
        assertTrue(text.startsWith("\uFEFFid,from,to,"), text);
        assertEquals(1 + whole.calc().rows(Table.RUNS), text.lines().count());
        List<Path> all = CsvOut.write(list, whole, Progress.SILENT, new Cancel());
        assertTrue(all.size() > 15, all::toString);
        assertTrue(all.contains(folder.resolve("landing - Take-off.csv")), all::toString);
        assertTrue(all.contains(folder.resolve("landing - Tolerances.csv")), all::toString);
        for (Path file : all) {
            assertTrue(Files.size(file) > 10, file.toString());
        }
    }

    /** Three devices that take 41.3 W together. */
    @Test
    void theFigureOnTheScreenIsTheOneInTheCell() throws Exception {
        Plan plan = Landing.plan();
        List<Row> devices = new ArrayList<>();
        for (Row row : plan.rows(Table.DEVICES)) {
            String draw = row.id().equals("mast radio") ? "14.3 W" : "9 W";
            devices.add(row.with("draw", draw));
        }
        Plan typed = plan.with(Table.DEVICES, Rows.of(devices));
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(write(Landing.handover(typed))))) {
            var sheet = book.getSheet(Titles.DEVICES);
            var headings = HandoverTest.headings(sheet, "id");
            int watts = HandoverTest.column(headings, "watts");
            var total = sheet.getRow(headings.getRowNum() + 1 + devices.size()).getCell(watts);
            assertEquals("total", sheet.getRow(total.getRowIndex()).getCell(0).getStringCellValue());
            assertEquals(CellType.FORMULA, total.getCellType());
            assertEquals(41.3, total.getNumericCellValue(), 0.0);
            DataFormatter formatter = new DataFormatter(Locale.ROOT);
            formatter.setUseCachedValuesForFormulaCells(true);
            assertEquals("41.3", formatter.formatCellValue(total));
        }
    }

    /** A viewer that calculates nothing shows what is stored: every formula has a result in the file itself. */
    @Test
    void everyFormulaHasItsResultInTheFile() throws Exception {
        Pattern formula = Pattern.compile("<c ([^>]*)><f>[^<]*</f>(<v>[^<]*</v>)?</c>");
        int found = 0;
        try (ZipFile zip = new ZipFile(write(whole(withScenarios())).toFile())) {
            for (var entry : zip.stream().toList()) {
                if (!entry.getName().startsWith("xl/worksheets/sheet")) {
                    continue;
                }
                String xml = new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
                Matcher matcher = formula.matcher(xml);
                while (matcher.find()) {
                    found++;
                    // a text without signs is stored as nothing
                    boolean text = matcher.group(1).contains("t=\"str\"");
                    assertTrue(text || matcher.group(2) != null, matcher.group());
                }
                assertEquals(
                        xml.split("<f>", -1).length,
                        formula.matcher(xml).results().count() + 1,
                        entry.getName());
            }
        }
        assertTrue(found > 100, found + " formulas");
    }

    @Test
    void labelsToCutSayWhatTheListSays() throws Exception {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(write(whole(withScenarios()))))) {
            List<String> listed = new ArrayList<>();
            var list = book.getSheet(Titles.LABELS);
            int headings = HandoverTest.headings(list, "label").getRowNum();
            for (int i = headings + 1; i <= list.getLastRowNum(); i++) {
                listed.add(list.getRow(i).getCell(0).getStringCellValue());
            }
            List<String> cut = new ArrayList<>();
            book.getSheet(Titles.GRID).forEach(row -> row.forEach(cell -> cut.add(cell.getStringCellValue())));
            assertEquals(listed, cut);
            assertEquals(10, cut.size(), "two a run");
        }
    }

    @Test
    void workedOutColumnsSayHowTheyCameAbout() throws Exception {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(write(whole(withScenarios()))))) {
            var sheet = book.getSheet(Titles.RUNS);
            var headings = HandoverTest.headings(sheet, "id");
            int loss = HandoverTest.column(headings, "loss");
            String note = headings.getCell(loss).getCellComment().getString().getString();
            assertTrue(note.contains("Formula in names: amps^2 * loop"), note);
            int length = HandoverTest.column(headings, "length");
            assertTrue(headings.getCell(length).getCellComment() == null, "it was typed");
        }
    }
}
