package farwatt.intake;

import farwatt.report.Cancel;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;

/** Reads the sheets of a workbook in the old binary form. */
final class Xls {
    private final HSSFWorkbook workbook;
    private final Cancel cancel;
    private final NumberCells numbers;

    Xls(HSSFWorkbook workbook, Cancel cancel) {
        this.workbook = workbook;
        this.cancel = cancel;
        boolean early = workbook.getInternalWorkbook().isUsing1904DateWindowing();
        numbers = new NumberCells(early ? NumberCells.Base.B1904 : NumberCells.Base.B1900);
    }

    /** All sheets in the workbook's order. */
    List<Sheet> sheets() {
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            cancel.check();
            sheets.add(sheet(workbook.getSheetAt(i), shown(workbook.getSheetVisibility(i))));
        }
        return sheets;
    }

    private static Sheet.Shown shown(SheetVisibility visibility) {
        return switch (visibility) {
            case VISIBLE -> Sheet.Shown.VISIBLE;
            case HIDDEN -> Sheet.Shown.HIDDEN;
            case VERY_HIDDEN -> Sheet.Shown.VERY_HIDDEN;
        };
    }

    private Sheet sheet(HSSFSheet sheet, Sheet.Shown shown) {
        SheetRows rows = new SheetRows();
        int width = 0;
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (((HSSFCell) cell).getCellStyle().getFont(workbook).getStrikeout()) {
                    rows.struckCell(cell.getColumnIndex(), cell((HSSFCell) cell));
                } else {
                    rows.cell(cell.getColumnIndex(), cell((HSSFCell) cell));
                }
                width = Math.max(width, cell.getColumnIndex());
            }
            rows.endRow(new RawRow(row.getRowNum() + 1, List.of(), row.getZeroHeight() ? Look.HIDDEN : Look.PLAIN));
        }
        for (int column = 0; column <= width; column++) {
            if (sheet.isColumnHidden(column)) {
                rows.hideColumns(column, column);
            }
        }
        for (CellRangeAddress area : sheet.getMergedRegions()) {
            rows.area(
                    new Sheet.Area(area.getFirstRow(), area.getLastRow(), area.getFirstColumn(), area.getLastColumn()));
        }
        return rows.sheet(sheet.getSheetName(), shown);
    }

    private RawCell cell(HSSFCell cell) {
        CellType type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
        return switch (type) {
            case NUMERIC ->
                numbers.cell(
                        Double.toString(cell.getNumericCellValue()),
                        cell.getCellStyle().getDataFormat(),
                        cell.getCellStyle().getDataFormatString());
            case STRING -> RawCell.text(cell.getStringCellValue());
            case BOOLEAN -> RawCell.text(cell.getBooleanCellValue() ? "yes" : "no");
            case ERROR ->
                RawCell.of(
                        RawCell.Form.ERROR,
                        FormulaError.forInt(cell.getErrorCellValue()).getString());
            case BLANK, FORMULA, _NONE -> RawCell.EMPTY;
        };
    }
}
