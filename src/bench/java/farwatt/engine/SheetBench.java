package farwatt.engine;

import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * For scale: the workbook library's own evaluator on a table of 10,000 rows with twelve formulas each and twenty
 * totals, after one cell changed and after a cell that every row depends on. No circuit is solved there.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 2, time = 3)
@Fork(value = 1, jvmArgs = "-Xmx3g")
public class SheetBench {
    private static final int ROWS = 10_000;
    private static final String[] FORMULAS = {
        "A%d/B%d", "A%d/C%d", "D%d/0.1", "100-C%d", "E%d*(1+0.00393*(F$1-20))", "A%d-D%d",
        "B%d/55", "D%d/A%d", "E%d/37", "A%d*3600", "B%d/B$2", "IF(A%d>1.5,1,0)"
    };
    private static final String[] TOTALS = {"SUM", "MAX", "MIN", "AVERAGE", "COUNT"};

    private final XSSFWorkbook book = new XSSFWorkbook();
    private final XSSFSheet sheet = book.createSheet("table");
    private final FormulaEvaluator evaluator;
    private int turn;

    /** Fills the table and evaluates it once. */
    public SheetBench() {
        for (int i = 0; i < ROWS; i++) {
            Row row = sheet.createRow(i);
            for (int c = 0; c < 6; c++) {
                row.createCell(c).setCellValue(1 + (i * 7 + c) % 13);
            }
            for (int f = 0; f < FORMULAS.length; f++) {
                row.createCell(6 + f).setCellFormula(FORMULAS[f].replace("%d", String.valueOf(i + 1)));
            }
        }
        for (int t = 0; t < 20; t++) {
            char column = (char) ('A' + t % 18);
            String formula = TOTALS[t % TOTALS.length] + "(" + column + "1:" + column + ROWS + ")";
            sheet.getRow(t).createCell(20).setCellFormula(formula);
        }
        evaluator = book.getCreationHelper().createFormulaEvaluator();
        evaluator.evaluateAll();
    }

    @Benchmark
    public void oneCell() {
        change(5_000, 0);
        for (int f = 0; f < FORMULAS.length; f++) {
            evaluator.evaluateFormulaCell(sheet.getRow(5_000).getCell(6 + f));
        }
        for (int t = 0; t < 20; t++) {
            evaluator.evaluateFormulaCell(sheet.getRow(t).getCell(20));
        }
    }

    @Benchmark
    public void cellOfAll() {
        change(0, 5);
        for (int i = 0; i < ROWS; i++) {
            for (int f = 0; f < FORMULAS.length; f++) {
                evaluator.evaluateFormulaCell(sheet.getRow(i).getCell(6 + f));
            }
        }
        for (int t = 0; t < 20; t++) {
            evaluator.evaluateFormulaCell(sheet.getRow(t).getCell(20));
        }
    }

    private void change(int row, int column) {
        Cell cell = sheet.getRow(row).getCell(column);
        cell.setCellValue(1 + turn++ % 9);
        evaluator.notifyUpdateCell(cell);
    }
}
