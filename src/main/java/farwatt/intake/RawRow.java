package farwatt.intake;

import java.util.ArrayList;
import java.util.List;

/**
 * A row of a customer's list.
 *
 * @param number its number as people count it: the line in a text, the row in a workbook
 * @param cells from the first column on
 * @param look how the workbook shows it
 */
record RawRow(int number, List<RawCell> cells, Look look) {
    RawRow {
        cells = List.copyOf(cells);
    }

    /** The cell in a column, an empty one beyond the row's end. */
    RawCell cell(int column) {
        return column < cells.size() ? cells.get(column) : RawCell.EMPTY;
    }

    /** Where it stands, as people find it: {@code line 7} or {@code Sheet1!A7}. */
    String place(String sheet) {
        return sheet.isEmpty() ? "line " + number : sheet + "!A" + number;
    }

    boolean isBlank() {
        for (RawCell cell : cells) {
            if (!cell.isBlank()) {
                return false;
            }
        }
        return true;
    }

    /** Columns that hold something of their own. */
    List<Integer> filled() {
        List<Integer> columns = new ArrayList<>(cells.size());
        for (int column = 0; column < cells.size(); column++) {
            if (isFull(column)) {
                columns.add(column);
            }
        }
        return columns;
    }

    /** How many columns hold something of their own. */
    int full() {
        int full = 0;
        for (int column = 0; column < cells.size(); column++) {
            full += isFull(column) ? 1 : 0;
        }
        return full;
    }

    /** The first column that holds something of its own; there must be one. */
    int firstFull() {
        int column = 0;
        while (!isFull(column)) {
            column++;
        }
        return column;
    }

    /** True for a cell that holds something of its own; there must be such a column. */
    boolean isFull(int column) {
        return !cells.get(column).filled() && !cells.get(column).isBlank();
    }

    /** The row with another cell in one column. */
    RawRow with(int column, RawCell cell) {
        List<RawCell> changed = new ArrayList<>(cells);
        while (changed.size() <= column) {
            changed.add(RawCell.EMPTY);
        }
        changed.set(column, cell);
        return new RawRow(number, changed, look);
    }
}
