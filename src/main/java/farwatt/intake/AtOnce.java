package farwatt.intake;

import farwatt.report.Cancel;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Work on a long list that is shared out among the processors. Only what depends on no other row or column is done so:
 * the answers are the same as one after the other.
 */
final class AtOnce {
    /** Shorter lists are done sooner than they are shared out. */
    private static final int LONG = 4_000;

    private static final int MOST_PARTS = 8;
    private static final int BETWEEN_CHECKS = 1024;

    private AtOnce() {}

    /** The columns of a list, looked at side by side where it is long. */
    static Stream<Column> columns(List<Column> columns, int rows) {
        return rows < LONG ? columns.stream() : columns.parallelStream();
    }

    /**
     * What the rows say that stand for devices; nothing for the others.
     *
     * @param readers makes a reader for each thread
     */
    static @Nullable Draft[] drafts(List<Sorted> rows, Supplier<RowReader> readers, Cancel cancel) {
        Draft[] drafts = new Draft[rows.size()];
        int parts = rows.size() < LONG
                ? 1
                : Math.min(MOST_PARTS, Runtime.getRuntime().availableProcessors());
        IntStream each = IntStream.range(0, parts);
        (parts == 1 ? each : each.parallel()).forEach(part -> {
            RowReader reader = readers.get();
            int end = end(part, parts, rows.size());
            for (int i = end(part - 1, parts, rows.size()); i < end; i++) {
                if (i % BETWEEN_CHECKS == 0) {
                    cancel.check();
                }
                if (rows.get(i).kind() == Sorted.Kind.DEVICE) {
                    drafts[i] = reader.read(rows.get(i));
                }
            }
        });
        return drafts;
    }

    private static int end(int part, int parts, int rows) {
        return (int) ((part + 1L) * rows / parts);
    }
}
