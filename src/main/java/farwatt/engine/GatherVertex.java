package farwatt.engine;

import farwatt.language.Formula;
import farwatt.language.Frame;
import farwatt.language.GatherPlan;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A gather over a whole table, worked out once for everyone who reads it. Rows are taken in blocks of fixed order, each
 * with its own part of the answer, so that a changed row costs one block; the full answer is put together from the same
 * parts.
 */
final class GatherVertex extends Vertex {
    private static final int BLOCK = 64;

    private final Col out;
    private final GatherPlan plan;
    private final List<Dep> deps;
    private final Cells cells;
    private final double nothing;
    private final double tooLarge;
    private final int[] rows;
    private final int[] blockOf;
    private final double[] part;
    private final double[] rest;
    private final int[] counted;
    private final boolean[] due;
    private boolean fresh = true;

    /**
     * @param nothing the answer of a mean, least or greatest over no rows
     * @param tooLarge the answer where a sum is beyond what can be worked with
     * @param rowCount how many rows all tables have
     */
    GatherVertex(Col out, GatherPlan plan, Cells cells, double nothing, double tooLarge, int rowCount) {
        this.out = out;
        this.plan = plan;
        this.deps = CellReads.gatherDeps(plan);
        this.cells = cells;
        this.nothing = nothing;
        this.tooLarge = tooLarge;
        out.maker = this;
        rows = plan.set().rows();
        blockOf = new int[rowCount];
        Arrays.fill(blockOf, -1);
        for (int k = 0; k < rows.length; k++) {
            blockOf[rows[k]] = k / BLOCK;
        }
        int blocks = (rows.length + BLOCK - 1) / BLOCK;
        part = new double[blocks];
        rest = new double[blocks];
        counted = new int[blocks];
        due = new boolean[blocks];
    }

    Col out() {
        return out;
    }

    GatherPlan plan() {
        return plan;
    }

    @Override
    List<Dep> deps() {
        return deps;
    }

    @Override
    List<Col> outs() {
        return List.of(out);
    }

    @Override
    void reads(int row, CellReads.Visitor visitor) {
        CellReads.gatherCells(plan, visitor);
    }

    @Override
    void all() {
        fresh = false;
        for (int block = 0; block < part.length; block++) {
            gather(block);
        }
        out.put(0, result());
    }

    @Override
    void some() {
        if (fresh) {
            all();
            return;
        }
        Marks touched = new Marks();
        boolean every = false;
        boolean any = false;
        for (Dep dep : deps) {
            any |= !dep.col().changed.isEmpty();
            every |= RowVertex.readers(dep, touched);
        }
        if (!any) {
            return;
        }
        Arrays.fill(due, every);
        for (int k = 0; k < touched.count(); k++) {
            int block = blockOf[touched.at(k)];
            if (block >= 0) {
                due[block] = true;
            }
        }
        for (int block = 0; block < due.length; block++) {
            if (due[block]) {
                gather(block);
            }
        }
        out.put(0, result());
    }

    /** The blocks that the marks on what it reads make necessary; empty if none. */
    int[] dueBlocks() {
        Marks touched = new Marks();
        boolean every = false;
        for (Dep dep : deps) {
            every |= RowVertex.readers(dep, touched);
        }
        Arrays.fill(due, every);
        for (int k = 0; k < touched.count(); k++) {
            int block = blockOf[touched.at(k)];
            if (block >= 0) {
                due[block] = true;
            }
        }
        return IntStream.range(0, due.length).filter(block -> due[block]).toArray();
    }

    /** Works some blocks out anew, and the answer from all. */
    void again(int[] blocks) {
        for (int block : blocks) {
            gather(block);
        }
        out.v[0] = result();
    }

    /** Works out one block's part: the first fault met, unless the answer was decided before. */
    private void gather(int block) {
        Formula where = plan.where().orElse(null);
        Formula body = plan.body().orElse(null);
        part[block] = start();
        rest[block] = 0;
        counted[block] = 0;
        int end = Math.min(rows.length, (block + 1) * BLOCK);
        for (int k = block * BLOCK; k < end && !isDecided(part[block]); k++) {
            Frame frame = cells.at(rows[k]);
            double counts = where == null ? 1 : where.value(frame);
            double value = counts != 1 ? counts : body == null ? 1 : body.value(frame);
            if (Double.isNaN(value)) {
                part[block] = value;
                return;
            }
            if (counts != 0) {
                counted[block]++;
                take(block, value);
            }
        }
    }

    /** True where further rows make no difference. */
    private boolean isDecided(double sofar) {
        return switch (plan.expr().kind()) {
            case EVERY -> sofar == 0;
            case SOME -> sofar == 1;
            default -> false;
        };
    }

    private double start() {
        return switch (plan.expr().kind()) {
            case LEAST -> Double.POSITIVE_INFINITY;
            case GREATEST -> Double.NEGATIVE_INFINITY;
            case EVERY -> 1;
            default -> 0;
        };
    }

    private void take(int block, double value) {
        double sofar = part[block];
        switch (plan.expr().kind()) {
            case LEAST, EVERY -> part[block] = Math.min(sofar, value);
            case GREATEST, SOME -> part[block] = Math.max(sofar, value);
            case COUNT -> part[block] = counted[block];
            case TOTAL, MEAN -> {
                double sum = sofar + value;
                double added = sum - sofar;
                rest[block] += (sofar - (sum - added)) + (value - added);
                part[block] = sum;
            }
        }
    }

    /** The parts put together; sums keep the rounding of every addition (two-sum). */
    private double result() {
        double sum = start();
        double lost = 0;
        int count = 0;
        for (int block = 0; block < part.length && !isDecided(sum); block++) {
            double value = part[block];
            if (Double.isNaN(value)) {
                return value;
            }
            count += counted[block];
            switch (plan.expr().kind()) {
                case LEAST, EVERY -> sum = Math.min(sum, value);
                case GREATEST, SOME -> sum = Math.max(sum, value);
                default -> {
                    double next = sum + value;
                    double added = next - sum;
                    lost += (sum - (next - added)) + (value - added) + rest[block];
                    sum = next;
                }
            }
        }
        return switch (plan.expr().kind()) {
            case TOTAL, COUNT -> finite(sum + lost);
            case MEAN -> count == 0 ? nothing : finite((sum + lost) / count);
            case LEAST, GREATEST -> count == 0 ? nothing : sum;
            case EVERY, SOME -> sum;
        };
    }

    private double finite(double value) {
        return Double.isFinite(value) ? value : tooLarge;
    }
}
