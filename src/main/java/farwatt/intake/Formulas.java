package farwatt.intake;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Works out formulas that were stored without a result, as programs that only write workbooks leave them. */
final class Formulas {
    /** Workbooks with more cells are not held in memory as a whole. */
    static final long MOST_CELLS = 300_000;

    private static final int MOST = 20_000;

    private Formulas() {}

    /**
     * Puts results into the cells that have none.
     *
     * @param open where they stand, a map a sheet; without any nothing is done
     */
    static void workOut(
            OPCPackage files,
            List<Map<XlsxSheet.Open, String>> open,
            List<SheetRows> rows,
            List<String> names,
            NumberCells numbers)
            throws IOException {
        int all = open.stream().mapToInt(Map::size).sum();
        if (all == 0 || all > MOST) {
            return;
        }
        // closing the workbook would close the package, which belongs to the caller
        @SuppressWarnings("resource")
        XSSFWorkbook workbook = new XSSFWorkbook(files);
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        for (int i = 0; i < open.size(); i++) {
            Sheet sheet = workbook.getSheet(names.get(i));
            if (sheet != null) {
                for (XlsxSheet.Open place : open.get(i).keySet()) {
                    rows.get(i).replace(place.row(), place.column(), result(sheet, place, evaluator, numbers));
                }
            }
        }
    }

    private static RawCell result(Sheet sheet, XlsxSheet.Open place, FormulaEvaluator evaluator, NumberCells numbers) {
        Row row = sheet.getRow(place.row() - 1);
        Cell cell = row == null ? null : row.getCell(place.column());
        if (cell == null) {
            return RawCell.of(RawCell.Form.MISSING, "=");
        }
        String formula = "=";
        try {
            formula = "=" + cell.getCellFormula();
            if (dependsOnTheDay(formula)) {
                return RawCell.of(RawCell.Form.MISSING, formula);
            }
            return cell(evaluator.evaluate(cell), cell, numbers);
        } catch (RuntimeException | StackOverflowError cannot) {
            // unknown functions, other workbooks, circles: each comes as another exception of the library
            return RawCell.of(RawCell.Form.MISSING, formula);
        }
    }

    private static boolean dependsOnTheDay(String formula) {
        String upper = formula.toUpperCase(Locale.ROOT);
        return upper.contains("NOW(") || upper.contains("TODAY(") || upper.contains("RAND");
    }

    private static RawCell cell(CellValue value, Cell cell, NumberCells numbers) {
        return switch (value.getCellType()) {
            case NUMERIC ->
                numbers.workedOut(
                        value.getNumberValue(),
                        cell.getCellStyle().getDataFormat(),
                        cell.getCellStyle().getDataFormatString());
            case STRING -> RawCell.text(value.getStringValue());
            case BOOLEAN -> RawCell.text(value.getBooleanValue() ? "yes" : "no");
            case ERROR ->
                RawCell.of(
                        RawCell.Form.ERROR,
                        FormulaError.forInt(value.getErrorValue()).getString());
            case BLANK, FORMULA, _NONE -> RawCell.EMPTY;
        };
    }
}
