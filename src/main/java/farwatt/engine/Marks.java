package farwatt.engine;

import java.util.Arrays;

/** A set of row numbers that is filled, read in order of filling and emptied many times. */
final class Marks {
    private int[] rows = new int[16];
    private int count;
    private long[] bits = new long[1];

    void add(int row) {
        int word = row >>> 6;
        if (word >= bits.length) {
            bits = Arrays.copyOf(bits, Math.max(word + 1, bits.length * 2));
        }
        long bit = 1L << row;
        if ((bits[word] & bit) == 0) {
            bits[word] |= bit;
            if (count == rows.length) {
                rows = Arrays.copyOf(rows, count * 2);
            }
            rows[count++] = row;
        }
    }

    boolean has(int row) {
        int word = row >> 6;
        return row >= 0 && word < bits.length && (bits[word] & (1L << row)) != 0;
    }

    int count() {
        return count;
    }

    boolean isEmpty() {
        return count == 0;
    }

    int at(int k) {
        return rows[k];
    }

    void clear() {
        for (int k = 0; k < count; k++) {
            bits[rows[k] >>> 6] = 0;
        }
        count = 0;
    }
}
