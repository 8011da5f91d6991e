package farwatt.study;

import farwatt.engine.Trials;
import java.util.Arrays;
import java.util.List;

/** Every combination of the values of some cells, the last cell changing first. */
final class Grid implements Plot {
    private static final int LEAST_BLOCK = 256;
    private static final int MOST_BLOCK = 16_384;
    private static final int BLOCKS = 16;

    private final List<Vary> over;
    private final Setting[][] settings;
    private final double[][] values;
    private final long[] inner;
    private final long size;

    /** @param over each with values one by one */
    Grid(List<Vary> over) {
        this.over = over;
        int n = over.size();
        settings = new Setting[n][];
        values = new double[n][];
        inner = new long[n];
        for (int i = 0; i < n; i++) {
            fill(i, over.get(i).values());
        }
        long product = 1;
        for (int i = n - 1; i >= 0; i--) {
            inner[i] = product;
            product = Math.multiplyExact(product, values[i].length);
        }
        size = product;
    }

    private void fill(int i, Values from) {
        if (from instanceof Values.Listed listed) {
            settings[i] = listed.settings().toArray(new Setting[0]);
            values[i] = listed.settings().stream().mapToDouble(Setting::inside).toArray();
        } else {
            settings[i] = new Setting[0];
            values[i] = ((Values.Span) from).steps().orElseThrow();
        }
    }

    @Override
    public long size() {
        return size;
    }

    /** As many whole steps of one cell, with all below them, as make a block of a good size. */
    @Override
    public long blockEnd(long from) {
        long wanted = Math.max(LEAST_BLOCK, Math.min(MOST_BLOCK, size / BLOCKS));
        int axis = splitting(wanted);
        long steps = Math.max(1, wanted / inner[axis]);
        long at = from / inner[axis] % values[axis].length;
        return from + Math.min(steps, values[axis].length - at) * inner[axis];
    }

    private int splitting(long wanted) {
        int axis = 0;
        while (inner[axis] > wanted) {
            axis++;
        }
        return axis;
    }

    @Override
    public void walk(long from, int count, Trials trials, Visit visit) {
        int n = values.length;
        int[] low = new int[n];
        int[] at = new int[n];
        int[] length = new int[n];
        for (int i = 0; i < n; i++) {
            at[i] = (int) (from / inner[i] % values[i].length);
            low[i] = at[i];
            long last = (from + count - 1) / inner[i] % values[i].length;
            length[i] = inner[i] >= count ? 1 : (int) last - low[i] + 1;
            put(trials, i, at[i]);
        }
        int[] order = dearestFirst(trials);
        int[] way = new int[n];
        Arrays.fill(way, 1);
        int offset = 0;
        visit.at(offset);
        for (int done = 1; done < count; done++) {
            // one cell moves at a time, to and fro, the cheapest one most often
            int k = n - 1;
            int axis = order[k];
            while (at[axis] + way[axis] < low[axis] || at[axis] + way[axis] >= low[axis] + length[axis]) {
                way[axis] = -way[axis];
                axis = order[--k];
            }
            at[axis] += way[axis];
            offset += way[axis] * (int) inner[axis];
            put(trials, axis, at[axis]);
            visit.at(offset);
        }
    }

    private int[] dearestFirst(Trials trials) {
        Integer[] order = new Integer[values.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Integer.compare(trials.cost(b), trials.cost(a)));
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    }

    private void put(Trials trials, int axis, int at) {
        double inside = values[axis][at];
        if (Double.isNaN(inside)) {
            trials.put(axis, settings[axis][at].cell());
        } else {
            trials.put(axis, inside);
        }
    }

    private int place(long point, int knob) {
        return (int) (point / inner[knob] % values[knob].length);
    }

    @Override
    public double inside(long point, int knob) {
        return values[knob][place(point, knob)];
    }

    @Override
    public String text(long point, int knob) {
        double inside = inside(point, knob);
        return Double.isNaN(inside)
                ? settings[knob][place(point, knob)].cell().text()
                : over.get(knob).heading().text(inside);
    }
}
