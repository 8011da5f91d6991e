package farwatt.engine;

import java.util.Arrays;

/** A growing list of ints. */
final class IntList {
    private int[] items;
    private int size;

    IntList(int room) {
        items = new int[Math.max(room, 4)];
    }

    void add(int item) {
        if (size == items.length) {
            items = Arrays.copyOf(items, size * 2);
        }
        items[size++] = item;
    }

    int get(int k) {
        return items[k];
    }

    int size() {
        return size;
    }

    int[] toArray() {
        return Arrays.copyOf(items, size);
    }
}
