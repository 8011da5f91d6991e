package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings typed into the written file are judged by its own formulas as the engine judges them. */
class TestSheetTest {
    private static final double SAME = 1e-9;

    @TempDir
    Path folder;

    private static Plan runs(Row... runs) {
        Plan plan = Plan.EMPTY
                .and(Table.ZONES, Row.of("yard").with("ambient", "40 degC"))
                .with(Table.PLAN, farwatt.plan.Rows.of(List.of(Row.of("").with("heat_margin", "0"))))
                .and(
                        Table.SOURCES,
                        Row.of("feed").with("type", "3").with("ports", "24").with("budget", "900 W"));
        for (Row run : runs) {
            String device = "of " + run.id();
            plan = plan.and(
                            Table.RUNS,
                            run.with("from", "feed").with("to", device).with("zone", "yard"))
                    .and(Table.DEVICES, Row.of(device).with("draw", "10 W").with("zone", "yard"));
        }
        return plan;
    }

    private static Row run(String id) {
        return Row.of(id).with("length", "80 m").with("joints", "4").with("pairs", "2");
    }

    /** What the workbook says of each run once volts near and far, amps and degrees are typed into its cells. */
    private Map<String, Map<String, CellValue>> judged(Plan plan, Map<String, double[]> readings) throws Exception {
        try (XSSFWorkbook book = written(plan)) {
            XSSFSheet sheet = book.getSheet(Titles.TEST);
            Map<String, Integer> columns = columns();
            Map<String, Map<String, CellValue>> all = new HashMap<>();
            String[] cells = {"r_near", "r_far", "r_amps", "r_temp"};
            readings.forEach((run, typed) -> {
                for (int i = 0; i < typed.length; i++) {
                    sheet.getRow(row(sheet, run)).getCell(columns.get(cells[i])).setCellValue(typed[i]);
                }
            });
            var evaluator = book.getCreationHelper().createFormulaEvaluator();
            for (String run : readings.keySet()) {
                Map<String, CellValue> said = new HashMap<>();
                for (String key : List.of("taken", "seen", "expect", "ratio", "spread", "verdict")) {
                    said.put(
                            key,
                            evaluator.evaluate(sheet.getRow(row(sheet, run)).getCell(columns.get(key))));
                }
                all.put(run, said);
            }
            return all;
        }
    }

    private XSSFWorkbook written(Plan plan) throws Exception {
        Path file = folder.resolve("test.xlsx");
        Workbook.write(file, Landing.handover(plan), Progress.SILENT, new Cancel());
        return new XSSFWorkbook(Files.newInputStream(file));
    }

    private static Map<String, Integer> columns() {
        Schedule schedule = TestTable.of(Calculation.of(Plan.EMPTY));
        Map<String, Integer> columns = new HashMap<>();
        for (Column column : schedule.columns()) {
            columns.put(column.key(), columns.size());
        }
        return columns;
    }

    private static int row(XSSFSheet sheet, String run) {
        for (var row : sheet) {
            if (row.getCell(0) != null && row.getCell(0).toString().equals(run)) {
                return row.getRowNum();
            }
        }
        throw new AssertionError("no run " + run);
    }

    @Test
    void aReadingIsJudgedWithoutUs() throws Exception {
        Map<String, CellValue> said = judged(runs(run("a")), Map.of("a", new double[] {53.0, 48.0, 0.60, 40}))
                .get("a");
        assertEquals(8.333, said.get("seen").getNumberValue(), 5e-4);
        assertEquals(7.532, said.get("expect").getNumberValue(), 5e-4);
        assertEquals(1.106, said.get("ratio").getNumberValue(), 5e-4);
        assertEquals("As expected.", said.get("verdict").getStringValue());
    }

    @Test
    void theWorkbookJudgesAsTheEngineDoes() throws Exception {
        double drop = 10;
        List<Row> empty = new ArrayList<>();
        List<Row> typed = new ArrayList<>();
        Map<String, double[]> byRun = new HashMap<>();
        for (String pairs : List.of("2", "4")) {
            double loop = pairs.equals("2") ? 7.532 : 3.766;
            for (double ratio : new double[] {0.5, 0.7, 0.81, 1, 1.19, 1.3, 1.6, 2, 2.5}) {
                Row run = run("r" + empty.size()).with("pairs", pairs);
                double amps = drop / (ratio * loop);
                byRun.put(run.id(), new double[] {53, 53 - drop, amps, 40});
                empty.add(run);
                typed.add(run.with("seen_volts_near", "53 V")
                        .with("seen_volts_far", (53 - drop) + " V")
                        .with("seen_amps", amps + " A")
                        .with("seen_temp", "40 degC"));
            }
        }
        Calculation calc = Calculation.of(runs(typed.toArray(new Row[0])));
        Map<String, Map<String, CellValue>> all = judged(runs(empty.toArray(new Row[0])), byRun);
        Set<String> verdicts = new HashSet<>();
        for (int run = 0; run < calc.rows(Table.RUNS); run++) {
            Map<String, CellValue> said = all.get(calc.id(Table.RUNS, run));
            assertEquals(of(calc, run, "seen_loop"), said.get("seen").getNumberValue(), SAME);
            assertEquals(of(calc, run, "seen_ratio"), said.get("ratio").getNumberValue(), SAME);
            assertEquals(of(calc, run, "seen_spread"), said.get("spread").getNumberValue(), SAME);
            String ours = calc.value(Table.RUNS, run, "seen_verdict").words();
            String theirs = said.get("verdict").getStringValue();
            assertEquals(ours, theirs);
            verdicts.add(theirs);
        }
        assertEquals(8, verdicts.size(), () -> "every band should come up: " + verdicts);
    }

    private static double of(Calculation calc, int run, String name) {
        return calc.value(Table.RUNS, run, name).inside();
    }

    @Test
    void readingsInThePlanStandInTheirCellsAndAreJudgedAlready() throws Exception {
        Row read = run("a").with("seen_volts_near", "53 V")
                .with("seen_volts_far", "48 V")
                .with("seen_watts", "31.8 W");
        try (XSSFWorkbook book = written(runs(read))) {
            XSSFSheet sheet = book.getSheet(Titles.TEST);
            var cells = sheet.getRow(row(sheet, "a"));
            Map<String, Integer> columns = columns();
            assertEquals(53, cells.getCell(columns.get("r_near")).getNumericCellValue());
            assertEquals(CellType.BLANK, cells.getCell(columns.get("r_amps")).getCellType());
            assertEquals(0.6, cells.getCell(columns.get("taken")).getNumericCellValue(), SAME);
            assertEquals(8.333, cells.getCell(columns.get("seen")).getNumericCellValue(), 5e-4);
            var evaluator = book.getCreationHelper().createFormulaEvaluator();
            for (String key : List.of("taken", "seen", "expect", "ratio", "spread")) {
                Cell cell = cells.getCell(columns.get(key));
                assertEquals(
                        cell.getNumericCellValue(), evaluator.evaluate(cell).getNumberValue(), 1e-12, key);
            }
        }
    }

    @Test
    void withoutReadingsNothingIsSaidAndWithUselessOnesNoJudgement() throws Exception {
        Map<String, Map<String, CellValue>> all = judged(
                runs(run("none"), run("swapped"), run("same"), run("idle")),
                Map.of(
                        "none",
                        new double[] {},
                        "swapped",
                        new double[] {48, 53, 0.6, 40},
                        "same",
                        new double[] {50, 50, 0.6, 40},
                        "idle",
                        new double[] {53, 48, 0, 40}));
        for (String key : List.of("taken", "seen", "ratio", "spread", "verdict")) {
            assertEquals("", all.get("none").get(key).getStringValue(), key);
        }
        assertTrue(all.get("swapped").get("verdict").getStringValue().startsWith("No judgement"));
        assertTrue(all.get("same").get("verdict").getStringValue().startsWith("No judgement"));
        assertEquals("", all.get("idle").get("verdict").getStringValue());
    }

    @Test
    void loopsAreRightAtEveryTemperatureHoweverTheyAreKnown() {
        Plan plan = runs(
                run("wire").with("gauge", "23 AWG").with("cord_length", "10 m").with("cord_gauge", "26 AWG"),
                run("clad").with("metal", "clad").with("cord_length", "10 m"),
                run("limit").with("basis", "limit").with("cord_length", "5 m"),
                run("sheet").with("basis", "datasheet").with("conductor_ohms", "85 ohm/km"),
                run("read")
                        .with("basis", "measured")
                        .with("measured_loop", "9 ohm")
                        .with("measured_at", "31 degC"),
                run("pair").with("basis", "pair").with("pair_loop", "17 ohm").with("pairs", "4"));
        Calculation calc = Calculation.of(plan);
        Loops loops = Loops.of(calc);
        for (int run = 0; run < calc.rows(Table.RUNS); run++) {
            double warm = loops.at20(run) + loops.perKelvin(run) * 20;
            double ours = calc.value(Table.RUNS, run, "loop").inside();
            assertEquals(40, calc.value(Table.RUNS, run, "wire_temp").inside(), 1e-9);
            assertEquals(ours, warm, 1e-12 * ours, calc.id(Table.RUNS, run));
            assertTrue(loops.perKelvin(run) > 0.003 * loops.at20(run), calc.id(Table.RUNS, run));
        }
    }

    @Test
    void loopsAreKnownWhereNoPowerCanFlow() {
        Calculation calc = Calculation.of(Landing.overloaded());
        Loops loops = Loops.of(calc);
        for (int run = 0; run < calc.rows(Table.RUNS); run++) {
            assertTrue(loops.at20(run) > 0.5, calc.id(Table.RUNS, run));
        }
    }

    @Test
    void cellsForReadingsAskForSensibleNumbers() throws Exception {
        try (XSSFWorkbook book = written(runs(run("a"), run("b")))) {
            List<? extends DataValidation> checks = book.getSheet(Titles.TEST).getDataValidations();
            assertEquals(5, checks.size());
            for (DataValidation check : checks) {
                assertEquals("", problem(check));
            }
        }
    }

    private static String problem(DataValidation check) {
        var rule = check.getValidationConstraint();
        boolean numbers = Double.parseDouble(rule.getFormula1()) < Double.parseDouble(rule.getFormula2());
        return numbers && check.getShowErrorBox() && check.getErrorBoxText().startsWith("Type a number from ")
                ? ""
                : rule.getFormula1() + " " + rule.getFormula2() + " " + check.getErrorBoxText();
    }
}
