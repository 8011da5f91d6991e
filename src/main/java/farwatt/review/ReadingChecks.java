package farwatt.review;

import farwatt.engine.Fault;
import farwatt.engine.Figures;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;

/** Readings at hand-over that do not match the record, in the corner that was looked at. */
final class ReadingChecks implements Check {
    private final Scene scene;

    ReadingChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        Figures near = scene.of(Table.RUNS, "seen_volts_near");
        Figures far = scene.of(Table.RUNS, "seen_volts_far");
        Figures ratio = scene.of(Table.RUNS, "seen_ratio");
        Figures spread = scene.of(Table.RUNS, "seen_spread");
        for (Tree.Feed feed : scene.tree().feeds()) {
            int run = feed.run();
            double drop = near.at(run) - far.at(run);
            if (Double.isNaN(drop)) {
                continue;
            }
            Place place = scene.place(Table.RUNS, run, "seen_verdict");
            String says = scene.words(Table.RUNS, run, "seen_verdict");
            String id = scene.id(Table.RUNS, run);
            boolean unsure = Near.under(drop, scene.limit("seen_drop_least"))
                    || Near.over(spread.at(run), scene.limit("seen_spread_most"));
            if (unsure) {
                findings.add(ReviewCode.READING_UNSURE, Level.NOTE, place, () -> new Object[] {id, says});
            } else if (Double.isNaN(ratio.at(run))) {
                Fault fault = scene.fault(ratio.at(run));
                findings.add(ReviewCode.READING_UNSURE, Level.NOTE, place, () -> new Object[] {id, fault.text()});
            } else if (Near.over(Math.abs(ratio.at(run) - 1), 2 * spread.at(run))) {
                off(findings, run, says, place);
            }
        }
    }

    private void off(Findings findings, int run, String says, Place place) {
        double ratio = scene.of(Table.RUNS, "seen_ratio").at(run);
        double spread = scene.of(Table.RUNS, "seen_spread").at(run);
        double loop = scene.of(Table.RUNS, "seen_loop").at(run);
        String id = scene.id(Table.RUNS, run);
        double limit = ratio > 1 ? 1 + 2 * spread : 1 - 2 * spread;
        findings.add(ReviewCode.READING_OFF, Level.WARN, place, ratio, limit, () ->
                new Object[] {id, Say.of(loop, Say.OHM), Say.of(loop / ratio, Say.OHM), Say.of(ratio, Say.ONE), says});
    }
}
