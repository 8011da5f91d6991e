package farwatt.window.studies;

import javafx.collections.ObservableListBase;

/** The numbers of rows, however many, without keeping them. */
final class RowList extends ObservableListBase<Integer> {
    private final int size;

    RowList(int size) {
        this.size = size;
    }

    @Override
    public Integer get(int index) {
        return index;
    }

    @Override
    public int size() {
        return size;
    }
}
