package farwatt.engine;

import java.util.List;

/** One connected set of trees in a {@link Course}: the rows to solve anew and the answers to write. */
final class PieceStep {
    private static final int ROW_COST = 12;

    /** An answer to be written. */
    record Answer(AnswerWriter.Group group, int which, int flat, int row, Col col) {}

    /**
     * What a step touches, in flat rows.
     *
     * @param bundles to be added up again
     * @param refreshed rows whose cells may have changed
     * @param solved these and all above them, the largest first
     * @param roots sources of the trees
     * @param grants true if power is to be handed out again
     * @param answers that may have changed and that someone reads
     * @param whole true if the set must always be solved as a whole
     */
    record Extent(
            int[] bundles,
            int[] refreshed,
            int[] solved,
            int[] roots,
            boolean grants,
            List<Answer> answers,
            boolean whole) {}

    private final Solving solving;
    private final Flattener flattener;
    private final Topology topology;
    private final AnswerWriter writer;
    private final AnswerCorner corner;
    private final int component;
    private final FlatSet set;
    private final Extent extent;
    private final Answer[] answers;
    private final List<Col> outs;

    PieceStep(Model model, int component, FlatSet set, Extent extent) {
        this.solving = model.solving;
        this.flattener = model.flattener;
        this.topology = model.topology;
        this.writer = model.writer;
        this.corner = model.corner;
        this.component = component;
        this.set = set;
        this.extent = extent;
        answers = extent.answers.toArray(new Answer[0]);
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
        for (int flat : extent.refreshed) {
            int row = set.node[flat];
            if (!flattener.refresh(set.net, flat, row, topology.at[row], corner.now())) {
                return false;
            }
        }
        if (!solving.again(set, extent.solved, extent.roots)) {
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
