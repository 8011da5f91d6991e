package farwatt.window.grid;

/**
 * The chosen cells: a rectangle between the cursor and the cell where choosing began, both inside. Rows and columns are
 * counted as seen, from 0.
 *
 * @param row of the cursor
 * @param column of the cursor
 * @param fromRow where choosing began
 * @param fromColumn where choosing began
 */
record Range(int row, int column, int fromRow, int fromColumn) {
    /** One cell. */
    static Range at(int row, int column) {
        return new Range(row, column, row, column);
    }

    /** With the cursor somewhere else and the beginning as it was. */
    Range to(int otherRow, int otherColumn) {
        return new Range(otherRow, otherColumn, fromRow, fromColumn);
    }

    int top() {
        return Math.min(row, fromRow);
    }

    int bottom() {
        return Math.max(row, fromRow);
    }

    int left() {
        return Math.min(column, fromColumn);
    }

    int right() {
        return Math.max(column, fromColumn);
    }

    int height() {
        return bottom() - top() + 1;
    }

    int width() {
        return right() - left() + 1;
    }

    boolean isOne() {
        return row == fromRow && column == fromColumn;
    }

    boolean contains(int otherRow, int otherColumn) {
        return otherRow >= top() && otherRow <= bottom() && otherColumn >= left() && otherColumn <= right();
    }

    /** The same as far as there are so many rows and columns. */
    Range within(int rows, int columns) {
        return new Range(
                limited(row, rows), limited(column, columns), limited(fromRow, rows), limited(fromColumn, columns));
    }

    private static int limited(int at, int size) {
        return Math.max(0, Math.min(at, size - 1));
    }
}
