package farwatt.workbook;

import java.util.List;

/**
 * Sums of columns while their lines go by, compensated so that the order of lines does not show (Neumaier's
 * summation).
 */
final class Sums {
    private final double[] sum;
    private final double[] lost;
    private final boolean[] wanted;

    Sums(List<Column> columns) {
        sum = new double[columns.size()];
        lost = new double[columns.size()];
        wanted = new boolean[columns.size()];
        for (int i = 0; i < wanted.length; i++) {
            wanted[i] = columns.get(i).total() == Column.Total.SUM;
        }
    }

    void see(int column, Entry entry) {
        if (!wanted[column] || !(entry.shown() instanceof Entry.Amount number)) {
            return;
        }
        double value = number.value();
        double next = sum[column] + value;
        lost[column] +=
                Math.abs(sum[column]) >= Math.abs(value) ? (sum[column] - next) + value : (value - next) + sum[column];
        sum[column] = next;
    }

    double of(int column) {
        return sum[column] + lost[column];
    }
}
