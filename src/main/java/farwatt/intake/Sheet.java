package farwatt.intake;

import java.util.List;
import java.util.Set;

/**
 * One sheet of a customer's list; a text is one sheet without a name. Blank rows are not in it.
 *
 * @param name as the workbook has it, "" for a text
 * @param shown whether the workbook shows it
 * @param rows in their order
 * @param areas merged areas
 * @param hiddenColumns columns the workbook hides, counted from 0
 */
record Sheet(String name, Shown shown, List<RawRow> rows, List<Area> areas, Set<Integer> hiddenColumns) {
    /** Whether a workbook shows a sheet. */
    enum Shown {
        VISIBLE,
        HIDDEN,
        /** Hidden so that a person cannot bring it up by the usual way. */
        VERY_HIDDEN
    }

    /** A merged area; all four counted from 0, rows by the workbook's count less one. */
    record Area(int top, int bottom, int left, int right) {}

    Sheet {
        rows = List.copyOf(rows);
        areas = List.copyOf(areas);
        hiddenColumns = Set.copyOf(hiddenColumns);
    }

    /** A text as the one sheet it is. */
    static Sheet ofText(List<RawRow> rows) {
        return new Sheet("", Shown.VISIBLE, rows, List.of(), Set.of());
    }

    Sheet withRows(List<RawRow> other) {
        return new Sheet(name, shown, other, areas, hiddenColumns);
    }

    /** Where a row stands, as people find it: {@code line 7} or {@code Sheet1!A7}. */
    String place(RawRow row) {
        return row.place(name);
    }

    /** One past the last column that any row reaches. */
    int width() {
        int width = 0;
        for (RawRow row : rows) {
            width = Math.max(width, row.cells().size());
        }
        return width;
    }
}
