package farwatt.window.studies;

import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Points;
import farwatt.study.Sweep;
import farwatt.study.Vary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every combination of values. */
final class SweepStudy {
    private final StudyRun run;
    private final Ground ground;
    private final Effort effort;

    SweepStudy(StudyRun run, Ground ground, Effort effort) {
        this.run = run;
        this.ground = ground;
        this.effort = effort;
    }

    StudyResult result() throws Refusal {
        List<Vary> over = run.varies(ground, StudyField.VARY);
        Sweep sweep = sweep(over);
        run.blame(StudyField.VARY, 0);
        Points points = sweep.points(effort);
        List<String> said = new ArrayList<>(List.of(Messages.text(StudiesCode.POINTS, points.size())));
        without(points, over.size()).ifPresent(said::add);
        return run.result(
                said,
                new PointsTable(points, over.size()),
                new SweepDrawing(run.basis().plan(), points, over.size()),
                run.sheets().sweep(points, over.size()));
    }

    private Sweep sweep(List<Vary> over) throws Refusal {
        // what is wrong with the cells is found with an expression that always can be read
        Sweep.of(ground, over, List.of("1"));
        List<String> reads = run.lines(StudyField.READ);
        try {
            return Sweep.of(ground, over, reads);
        } catch (Refusal e) {
            if (!reads.isEmpty()) {
                run.blameRead(one -> Sweep.of(ground, over, one));
            }
            throw e;
        }
    }

    /** How many points have no value, and why the first has none. */
    static Optional<String> without(Points points, int varied) {
        int without = 0;
        Optional<String> why = Optional.empty();
        for (int i = 0; i < points.size(); i++) {
            boolean missing = false;
            for (int c = varied; c < points.columns().size(); c++) {
                boolean none =
                        Double.isNaN(points.inside(i, c)) && points.why(i, c).isPresent();
                missing |= none;
                if (none && why.isEmpty()) {
                    why = points.why(i, c);
                }
            }
            without += missing ? 1 : 0;
        }
        int count = without;
        return why.map(text -> Messages.text(StudiesCode.WITHOUT_VALUE, count, text));
    }
}
