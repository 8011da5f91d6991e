package farwatt.engine;

import java.util.List;

/** One connected set of trees in a {@link Course}: the rows to solve anew and the answers to write. */
final class PieceStep {
    private static final int ROW_COST = 12;

    /** An answer to be written. */
    record Answer(AnswerWriter.Group group, int which, int flat, int row, Col col) {}

    /** What a step touches, in flat rows. */
    static final class Extent {
        /** Bundles to be added up again. */
        private final int[] bundles;
        /** Rows whose node's cells may have changed. */
        private final int[] nodes;
        /** Rows whose run's cells may have changed. */
        private final int[] runs;
        /** These and all above them, the largest first. */
        private final int[] solved;
        /** By place in solved: whether something that hangs on the row is solved as well. */
        private final boolean[] below;
        /** Sources of the trees. */
        private final int[] roots;
        /** True if power is to be handed out again. */
        private final boolean grants;
        /** True if the set must always be solved as a whole. */
        private final boolean whole;

        Extent(
                int[] bundles,
                int[] nodes,
                int[] runs,
                int[] solved,
                boolean[] below,
                int[] roots,
                boolean grants,
                boolean whole) {
            this.bundles = bundles;
            this.nodes = nodes;
            this.runs = runs;
            this.solved = solved;
            this.below = below;
            this.roots = roots;
            this.grants = grants;
            this.whole = whole;
        }
    }

    private final Solving solving;
    private final Flattener flattener;
    private final AnswerWriter writer;
    private final AnswerCorner corner;
    private final int component;
    private final FlatSet set;
    private final Extent extent;
    private final Answer[] answers;
    private final List<Col> outs;

    /** @param answers that may have changed and that someone reads */
    PieceStep(Model model, int component, FlatSet set, Extent extent, List<Answer> answers) {
        this.solving = model.solving;
        this.flattener = model.flattener;
        this.writer = model.writer;
        this.corner = model.corner;
        this.component = component;
        this.set = set;
        this.extent = extent;
        this.answers = answers.toArray(new Answer[0]);
        outs = solving.outs();
    }

    /** Brings the answers up to date; true if only those named may be others than before. */
    boolean run() {
        if (set.plain && !extent.whole && again()) {
            return true;
        }
        solving.solve(component, set);
        outs.forEach(col -> col.changed.clear());
        return false;
    }

    private boolean again() {
        for (int bundle : extent.bundles) {
            flattener.measure(bundle);
        }
        for (int flat : extent.nodes) {
            if (!flattener.refreshNode(set.net, flat, set.node[flat], corner.now())) {
                return false;
            }
        }
        for (int flat : extent.runs) {
            if (!flattener.refreshRun(set.net, flat, set.node[flat], corner.now())) {
                return false;
            }
        }
        if (!solving.again(set, extent.solved, extent.below, extent.roots)) {
            return false;
        }
        if (extent.grants) {
            solving.grant(set);
        }
        double worstShare = flattener.worstShare();
        for (Answer answer : answers) {
            answer.col.v[answer.row - answer.col.base] =
                    writer.figure(answer.group, answer.which, set, answer.flat, answer.row, worstShare);
        }
        return true;
    }

    int cost() {
        return extent.solved.length * ROW_COST + answers.length;
    }
}
