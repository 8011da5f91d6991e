package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Table;
import farwatt.report.Level;

/** Whether data reach over each run at its wire's temperature (ISO/IEC 11801, TIA-568). */
final class ReachChecks implements Check {
    private final Scene scene;

    ReachChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        Figures length = scene.of(Table.RUNS, "length");
        Figures cord = scene.of(Table.RUNS, "cord_length");
        Figures reach = scene.of(Table.RUNS, "reach");
        Figures temp = scene.of(Table.RUNS, "wire_temp");
        double end = scene.limit("growth_end");
        for (Tree.Feed feed : scene.tree().feeds()) {
            int run = feed.run();
            double fixed = length.at(run) - cord.at(run);
            if (Near.over(fixed, reach.at(run))) {
                tooLong(findings, run, fixed, reach.at(run), cord.at(run), temp.at(run));
            }
            if (Near.over(temp.at(run), end)) {
                pastTable(findings, run, temp.at(run), end);
            }
        }
    }

    private void pastTable(Findings findings, int run, double temp, double end) {
        String id = scene.id(Table.RUNS, run);
        findings.add(ReviewCode.REACH_TABLE, Level.NOTE, scene.place(Table.RUNS, run, "reach"), temp, end, () -> {
            String[] both = Say.apart(temp, end, Say.CELSIUS);
            return new Object[] {id, both[0], both[1]};
        });
    }

    private void tooLong(Findings findings, int run, double fixed, double reach, double cord, double temp) {
        String id = scene.id(Table.RUNS, run);
        findings.add(ReviewCode.REACH, Level.FAIL, scene.place(Table.RUNS, run, "length"), fixed, reach, () -> {
            String[] both = Say.apart(fixed, reach, Say.M);
            return new Object[] {
                id, both[0], Say.of(cord, Say.M), both[1], Say.of(temp, Say.CELSIUS), Say.of(fixed - reach, Say.M)
            };
        });
    }
}
