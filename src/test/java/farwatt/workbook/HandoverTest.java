package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.catalogue.Name;
import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Value;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Notice;
import farwatt.report.Progress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The hand-over record as a program that knows nothing of us reads it back. */
class HandoverTest {
    /** What a workbook works out again may differ from ours in the last digits only. */
    private static final double SAME = 1e-12;

    @TempDir
    Path folder;

    @Test
    void holdsEveryFigureToTheLastBit() throws Exception {
        Handover content = Landing.handover(Landing.plan());
        try (XSSFWorkbook book = read(write(content, "landing.xlsx"))) {
            int figures = 0;
            for (Map.Entry<String, Table> one : Map.of(
                            Titles.DEVICES, Table.DEVICES,
                            Titles.RUNS, Table.RUNS,
                            Titles.SOURCES, Table.SOURCES,
                            Titles.SWITCHES, Table.SWITCHES)
                    .entrySet()) {
                figures += compare(book.getSheet(one.getKey()), content.calc(), one.getValue());
            }
            assertTrue(figures > 100, "only " + figures + " figures were compared");
        }
    }

    private static int compare(Sheet sheet, Calculation calc, Table table) {
        Row headings = headings(sheet, "id");
        int figures = 0;
        for (Name name : calc.names(table)) {
            int column = column(headings, name.key().replace('_', ' '));
            if (column < 0) {
                continue;
            }
            for (int place = 0; place < calc.rows(table); place++) {
                Value value = calc.value(table, place, name.key());
                Cell cell = sheet.getRow(headings.getRowNum() + 1 + place).getCell(column);
                if (value.isPresent() && value.isNumber()) {
                    boolean share = value.unit().symbol().equals("%");
                    double expected = share ? value.inside() : value.unit().fromInside(value.inside());
                    assertEquals(expected, cell.getNumericCellValue(), 0.0, table + " " + place + " " + name.key());
                    figures++;
                }
            }
        }
        return figures;
    }

    @Test
    void everyFormulaWorkedOutAgainGivesWhatStands() throws Exception {
        assertTrue(workOutAgain(Landing.plan()) > 60);
    }

    @Test
    void rowsLeftOutOfUseAreLeftOutOfTotalsToo() throws Exception {
        assertTrue(workOutAgain(Landing.partlyUsed()) > 60);
        assertTrue(workOutAgain(Landing.overloaded()) > 30);
    }

    private int workOutAgain(Plan plan) throws Exception {
        int formulas = 0;
        try (XSSFWorkbook book = read(write(Landing.handover(plan), "again.xlsx"))) {
            FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
            for (Cell cell : cells(book)) {
                if (cell.getCellType() != CellType.FORMULA) {
                    continue;
                }
                formulas++;
                String where = cell.getSheet().getSheetName() + "!" + cell.getAddress() + " " + cell.getCellFormula();
                if (cell.getCachedFormulaResultType() == CellType.NUMERIC) {
                    double stored = cell.getNumericCellValue();
                    double again = evaluator.evaluate(cell).getNumberValue();
                    assertEquals(stored, again, SAME * Math.max(1, Math.abs(stored)), where);
                } else {
                    String stored = cell.getStringCellValue();
                    assertEquals(stored, evaluator.evaluate(cell).getStringValue(), where);
                }
            }
        }
        return formulas;
    }

    @Test
    void noCellHoldsWhatIsNoNumber() throws Exception {
        try (XSSFWorkbook book = read(write(Landing.handover(Landing.overloaded()), "overloaded.xlsx"))) {
            for (Cell cell : cells(book)) {
                assertTrue(cell.getCellType() != CellType.ERROR, cell::toString);
                if (cell.getCellType() == CellType.NUMERIC) {
                    double value = cell.getNumericCellValue();
                    assertTrue(Double.isFinite(value), cell::toString);
                    assertFalse(value == 0 && 1 / value < 0, "minus zero at " + cell.getAddress());
                }
            }
        }
    }

    @Test
    void aMissingFigureIsAnEmptyCellWithItsReasonInTheRow() throws Exception {
        try (XSSFWorkbook book = read(write(Landing.handover(Landing.overloaded()), "overloaded.xlsx"))) {
            Sheet runs = book.getSheet(Titles.RUNS);
            Row headings = headings(runs, "id");
            Row trunk = runs.getRow(headings.getRowNum() + 1);
            assertEquals(CellType.BLANK, trunk.getCell(column(headings, "amps")).getCellType());
            String why =
                    trunk.getCell(column(headings, "why a figure is missing")).getStringCellValue();
            assertTrue(why.contains("run mast radio is asked for 900 W"), why);
        }
    }

    @Test
    void theSummarySaysVerdictCornersAndWhatBinds() throws Exception {
        try (XSSFWorkbook book = read(write(Landing.handover(Landing.plan()), "landing.xlsx"))) {
            String all = text(book.getSheetAt(0));
            for (String said : List.of(
                    "Ferry landing, east gate",
                    "does not hold",
                    Landing.review().verdict().text(),
                    "when all start in the heat",
                    "hotstart",
                    "bound by",
                    "budget",
                    "3f0a 91c2 77de 5b10",
                    "Farwatt 1.0.0",
                    "2025-03-14",
                    "A planning aid: not a substitute")) {
                assertTrue(all.contains(said), () -> said + " is missing in\n" + all);
            }
        }
    }

    @Test
    void theCalculationLooksWhereItDidBefore() throws Exception {
        Handover content = Landing.handover(Landing.plan());
        content.calc().look(Corner.COLD);
        write(content, "landing.xlsx");
        assertEquals(Corner.COLD, content.calc().corner());
    }

    @Test
    void everySheetIsReadyForPaper() throws Exception {
        for (Paper paper : Paper.values()) {
            try (XSSFWorkbook book = read(write(Landing.on(paper), paper + ".xlsx"))) {
                for (int i = 0; i < book.getNumberOfSheets(); i++) {
                    XSSFSheet sheet = book.getSheetAt(i);
                    String name = sheet.getSheetName();
                    assertTrue(sheet.getPrintSetup().getLandscape(), name);
                    assertEquals(paper.code(), sheet.getPrintSetup().getPaperSize(), name);
                    assertFalse(book.getPrintArea(i).isEmpty(), name);
                    assertTrue(sheet.getHeader().getLeft().contains("Ferry landing"), name);
                    assertTrue(sheet.getFooter().getRight().contains("&P"), name);
                    if (i > 0 && !name.equals(Titles.GRID)) {
                        assertEquals(1, sheet.getPaneInformation().getVerticalSplitPosition(), name);
                        assertTrue(sheet.getRepeatingRows() != null, name);
                    }
                }
            }
        }
    }

    @Test
    void theSameContentGivesTheSameBytesInEveryPlaceAndYear() throws Exception {
        byte[] first = Files.readAllBytes(write(Landing.handover(Landing.plan()), "one.xlsx"));
        Locale before = Locale.getDefault();
        java.util.TimeZone zone = java.util.TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            java.util.TimeZone.setDefault(java.util.TimeZone.getTimeZone("Pacific/Auckland"));
            assertArrayEquals(first, Files.readAllBytes(write(Landing.handover(Landing.plan()), "two.xlsx")));
        } finally {
            Locale.setDefault(before);
            java.util.TimeZone.setDefault(zone);
        }
    }

    @Test
    void aLargePlanHasNoMoreStylesThanASmallOne() throws Exception {
        int devices = Boolean.getBoolean("farwatt.soak") ? 20_001 : 1_001;
        Path file = write(Landing.handover(Landing.halls(devices)), "halls.xlsx");
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry entry = zip.getEntry("xl/styles.xml");
            String styles = new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
            String cells = styles.substring(styles.indexOf("<cellXfs"), styles.indexOf("</cellXfs>"));
            int count = cells.split("<xf ", -1).length - 1;
            assertTrue(count > 10 && count < 60, count + " styles");
        }
    }

    @Test
    void theDateIsACalendarDay() throws Exception {
        try (XSSFWorkbook book = read(write(Landing.handover(Landing.plan()), "landing.xlsx"))) {
            List<LocalDate> days = new ArrayList<>();
            for (Row row : book.getSheetAt(0)) {
                if (row.getCell(0) != null && row.getCell(0).toString().equals("date")) {
                    days.add(row.getCell(1).getLocalDateTimeCellValue().toLocalDate());
                }
            }
            assertEquals(List.of(Landing.DAY), days);
        }
    }

    private Path write(Handover content, String name) throws Exception {
        Path file = folder.resolve(name);
        List<Notice> notices = Workbook.write(file, content, Progress.SILENT, new Cancel());
        assertEquals(List.of(), notices);
        return file;
    }

    private static XSSFWorkbook read(Path file) throws Exception {
        return new XSSFWorkbook(Files.newInputStream(file));
    }

    static List<Cell> cells(XSSFWorkbook book) {
        List<Cell> all = new ArrayList<>();
        book.forEach(sheet -> sheet.forEach(row -> row.forEach(all::add)));
        return all;
    }

    static Row headings(Sheet sheet, String first) {
        for (Row row : sheet) {
            Cell cell = row.getCell(0);
            if (cell != null && cell.toString().equals(first)) {
                return row;
            }
        }
        throw new AssertionError("no headings on " + sheet.getSheetName());
    }

    /** The column with this heading, with or without its unit; −1 if there is none. */
    static int column(Row headings, String name) {
        for (Cell cell : headings) {
            String text = cell.toString();
            if (text.equals(name) || text.startsWith(name + ", ")) {
                return cell.getColumnIndex();
            }
        }
        return -1;
    }

    private static String text(Sheet sheet) {
        StringBuilder all = new StringBuilder();
        var formatter = new org.apache.poi.ss.usermodel.DataFormatter(Locale.ROOT);
        sheet.forEach(row -> {
            row.forEach(cell -> all.append(formatter.formatCellValue(cell)).append('\t'));
            all.append('\n');
        });
        return all.toString();
    }
}
