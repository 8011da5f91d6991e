package farwatt.picture;

import farwatt.engine.Fault;
import farwatt.engine.Still;
import farwatt.engine.Value;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.review.Finding;
import farwatt.review.Review;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What is said of each node at a glance: by its findings, and those of the run that feeds it. */
final class Marks {
    /** As in findings: what differs by less is the same. */
    private static final double TOLERANCE = 1e-9;

    private final Still still;
    private final boolean judged;
    private final Map<String, Level> worst = new HashMap<>();

    Marks(Still still, Optional<Review> review) {
        this.still = still;
        judged = review.isPresent();
        review.ifPresent(r -> r.findings().forEach(this::take));
    }

    private void take(Finding finding) {
        String key = key(finding.place().table(), finding.place().row());
        worst.merge(key, finding.level(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
    }

    private static String key(String table, String row) {
        return table + "/" + Rows.fold(row);
    }

    Mark of(Branch branch) {
        String name = branch.table == Table.DEVICES ? "volts" : branch.table == Table.SOURCES ? "sent" : "received";
        Value figure = still.need(branch.table, branch.place, name);
        if (figure.fault().isPresent()) {
            Fault.Kind kind = figure.fault().get().kind();
            boolean broken = kind == Fault.Kind.NO_OPERATING_POINT || kind == Fault.Kind.RUNAWAY;
            return broken ? Mark.FAILS : Mark.UNKNOWN;
        }
        boolean dark = branch.table != Table.SOURCES
                && still.need(branch.table, branch.place, "powered").inside() == 0;
        if (dark) {
            return Mark.DARK;
        }
        String spare = branch.table == Table.DEVICES ? "headroom" : "reserve";
        if (still.need(branch.table, branch.place, spare).inside() < -TOLERANCE * Math.abs(figure.inside())) {
            // the review may name the cause elsewhere; a node that is short never holds
            return Mark.FAILS;
        }
        if (!judged) {
            return Mark.ON;
        }
        Level own = level(branch.table.key(), branch.id);
        Level run =
                branch.run == Branch.NO_RUN ? Level.NOTE : level(Table.RUNS.key(), still.id(Table.RUNS, branch.run));
        return switch (own.compareTo(run) <= 0 ? own : run) {
            case FAIL -> Mark.FAILS;
            case WARN -> Mark.LOOK;
            case NOTE -> Mark.HOLDS;
        };
    }

    private Level level(String table, String row) {
        return worst.getOrDefault(key(table, row), Level.NOTE);
    }
}
