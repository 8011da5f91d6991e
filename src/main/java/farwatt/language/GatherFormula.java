package farwatt.language;

import farwatt.report.Span;
import org.jspecify.annotations.Nullable;

/** Goes over rows and makes one value of theirs. */
final class GatherFormula implements Formula {
    private final GatherKind kind;
    private final RowSet set;
    private final Reach reach;
    private final Formula base;
    private final Formula body;
    private final @Nullable Formula where;
    private final Span span;

    /**
     * @param base gives the node after {@code on} or {@code under}; not asked for all rows
     * @param body what is gathered; not asked for a count
     * @param where which rows count; null for every one
     */
    GatherFormula(Expr.Gather expr, RowSet set, Formula base, Formula body, @Nullable Formula where) {
        this.kind = expr.kind();
        this.set = set;
        this.reach = expr.rows().reach();
        this.base = base;
        this.body = body;
        this.where = where;
        this.span = expr.span();
    }

    @Override
    public double value(Frame frame) {
        int[] rows;
        if (reach == Reach.ALL) {
            rows = set.rows();
        } else {
            double node = base.value(frame);
            if (Double.isNaN(node)) {
                return node;
            }
            rows = reach == Reach.ON ? set.on((int) node) : set.under((int) node);
        }
        int outer = frame.row;
        double result = over(rows, frame);
        frame.row = outer;
        return result;
    }

    private double over(int[] rows, Frame frame) {
        return switch (kind) {
            case TOTAL, MEAN -> sum(rows, frame);
            case LEAST -> extreme(rows, frame, 1);
            case GREATEST -> extreme(rows, frame, -1);
            case EVERY -> answer(rows, frame, 0);
            case SOME -> answer(rows, frame, 1);
            case COUNT -> count(rows, frame);
        };
    }

    /** Whether a row counts: 1, 0 or a fault. */
    private double counts(int row, Frame frame) {
        frame.row = row;
        return where == null ? 1 : where.value(frame);
    }

    private double count(int[] rows, Frame frame) {
        int n = 0;
        for (int row : rows) {
            double counts = counts(row, frame);
            if (Double.isNaN(counts)) {
                return counts;
            }
            n += counts != 0 ? 1 : 0;
        }
        return n;
    }

    /** A sum that carries along what rounding took from each step (Neumaier 1974). */
    private double sum(int[] rows, Frame frame) {
        double sum = 0;
        double lost = 0;
        int n = 0;
        for (int row : rows) {
            double counts = counts(row, frame);
            double v = counts == 1 ? body.value(frame) : counts;
            if (Double.isNaN(v)) {
                return v;
            }
            if (counts != 0) {
                double next = sum + v;
                lost += Math.abs(sum) >= Math.abs(v) ? sum - next + v : v - next + sum;
                sum = next;
                n++;
            }
        }
        if (kind == GatherKind.TOTAL) {
            return Nodes.checked(sum + lost, frame, span);
        }
        return n == 0 ? frame.faults.raise(FaultKind.NO_ROWS, span) : Nodes.checked((sum + lost) / n, frame, span);
    }

    private double extreme(int[] rows, Frame frame, double sign) {
        double best = Double.POSITIVE_INFINITY;
        for (int row : rows) {
            double counts = counts(row, frame);
            double v = counts == 1 ? body.value(frame) : counts;
            if (Double.isNaN(v)) {
                return v;
            }
            if (counts != 0 && v * sign < best) {
                best = v * sign;
            }
        }
        return Double.isInfinite(best) ? frame.faults.raise(FaultKind.NO_ROWS, span) : best * sign;
    }

    private double answer(int[] rows, Frame frame, double deciding) {
        for (int row : rows) {
            double counts = counts(row, frame);
            double v = counts == 1 ? body.value(frame) : counts;
            if (Double.isNaN(v) || (counts != 0 && v == deciding)) {
                return v;
            }
        }
        return 1 - deciding;
    }
}
