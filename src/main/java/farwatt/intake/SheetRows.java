package farwatt.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Collects the rows of one sheet of a workbook; cells without content cost nothing. Used by one thread. */
final class SheetRows {
    /** Columns that the format knows. */
    static final int WIDEST = 16_384;

    private final List<RawRow> rows = new ArrayList<>();
    private final List<Sheet.Area> areas = new ArrayList<>();
    private final Set<Integer> hiddenColumns = new HashSet<>();
    private List<RawCell> cells = new ArrayList<>();

    private int struck;
    private int full;
    private long size;

    /** Puts a cell that is struck out into the row that is being read. */
    void struckCell(int column, RawCell cell) {
        cell(column, cell);
        struck += cell.isBlank() ? 0 : 1;
    }

    /** Puts a cell into the row that is being read. */
    void cell(int column, RawCell cell) {
        if (cell.text().isEmpty()) {
            return;
        }
        if (column >= WIDEST) {
            return;
        }
        while (cells.size() <= column) {
            cells.add(RawCell.EMPTY);
        }
        cells.set(column, cell);
        full += cell.isBlank() ? 0 : 1;
    }

    /** Ends a row; one without content is dropped. */
    void endRow(RawRow shape) {
        if (!cells.isEmpty()) {
            RawRow row = new RawRow(shape.number(), cells, look(shape));
            size += cells.size();
            if (!row.isBlank()) {
                rows.add(row);
            }
            cells = new ArrayList<>();
        }
        struck = 0;
        full = 0;
    }

    private Look look(RawRow shape) {
        boolean all = struck > 0 && struck == full && shape.look() == Look.PLAIN;
        return all ? Look.STRUCK : shape.look();
    }

    /** Puts another cell in the place of one that was read. */
    void replace(int number, int column, RawCell cell) {
        int at = placeOf(rows, number);
        if (at < rows.size() && rows.get(at).number() == number && column < WIDEST) {
            rows.set(at, rows.get(at).with(column, cell));
        }
    }

    void area(Sheet.Area area) {
        areas.add(area);
    }

    void hideColumns(int first, int last) {
        for (int column = Math.max(0, first); column <= Math.min(last, WIDEST); column++) {
            hiddenColumns.add(column);
        }
    }

    /** How many cells all rows hold. */
    long size() {
        return size;
    }

    List<RawRow> rows() {
        return rows;
    }

    /** The sheet, the first column of every merged area filled down. */
    Sheet sheet(String name, Sheet.Shown shown) {
        List<RawRow> filled = new ArrayList<>(rows);
        for (Sheet.Area area : areas) {
            if (area.bottom() > area.top()) {
                fillDown(filled, area);
            }
        }
        return new Sheet(name, shown, filled, areas, hiddenColumns);
    }

    private static void fillDown(List<RawRow> rows, Sheet.Area area) {
        int at = placeOf(rows, area.top() + 1);
        if (at >= rows.size() || rows.get(at).number() != area.top() + 1) {
            return;
        }
        RawCell top = rows.get(at).cell(area.left());
        if (top.isBlank()) {
            return;
        }
        for (int i = at + 1; i < rows.size() && rows.get(i).number() <= area.bottom() + 1; i++) {
            if (rows.get(i).cell(area.left()).isBlank()) {
                rows.set(i, rows.get(i).with(area.left(), top.filledDown()));
            }
        }
    }

    /** The first row whose number is at least the one given. */
    private static int placeOf(List<RawRow> rows, int number) {
        int low = 0;
        int high = rows.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (rows.get(middle).number() < number) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
