package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;

/** Whether each run's conductors stay as cool, and carry as little, as they must. */
final class WireChecks implements Check {
    private final Scene scene;

    WireChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        Figures temp = scene.of(Table.RUNS, "wire_temp");
        Figures rated = scene.of(Table.RUNS, "heat_rated");
        Figures rise = scene.of(Table.RUNS, "rise");
        Figures amps = scene.of(Table.RUNS, "amps_per_wire");
        Figures ampsLimit = scene.of(Table.RUNS, "amps_limit");
        for (Tree.Feed feed : scene.tree().feeds()) {
            int run = feed.run();
            if (Near.over(temp.at(run), rated.at(run))) {
                hot(findings, run, temp.at(run), rated.at(run), rise.at(run));
            }
            if (Near.over(amps.at(run), ampsLimit.at(run))) {
                amps(findings, run, amps.at(run), ampsLimit.at(run));
            }
            rise(findings, run, rise.at(run));
            if (Double.isNaN(ampsLimit.at(run))) {
                table(findings, run, amps.at(run));
            }
        }
    }

    private void rise(Findings findings, int run, double rise) {
        double warning = scene.limit("rise_warning");
        double caution = scene.limit("rise_caution");
        boolean warns = Near.over(rise, warning);
        if (warns || Near.over(rise, caution)) {
            double limit = warns ? warning : caution;
            String id = scene.id(Table.RUNS, run);
            Place place = scene.place(Table.RUNS, run, "rise");
            findings.add(ReviewCode.RISE, warns ? Level.WARN : Level.NOTE, place, rise, limit, () -> {
                String[] both = Say.apart(rise, limit, Say.K);
                return new Object[] {id, both[0], both[1]};
            });
        }
    }

    /** Where codes begin to ask for a table of currents, and none was typed from one. */
    private void table(Findings findings, int run, double amps) {
        double watts = scene.of(Table.RUNS, "sent").at(run);
        double from = scene.limit("code_amps");
        if (Near.over(amps, from) && Near.over(watts, scene.limit("code_watts"))) {
            String id = scene.id(Table.RUNS, run);
            Place place = scene.place(Table.RUNS, run, "amps_limit");
            findings.add(ReviewCode.CODE_TABLE, Level.NOTE, place, amps, from, () ->
                    new Object[] {id, Say.of(amps, Say.A), Say.of(watts, Say.W)});
        }
    }

    private void hot(Findings findings, int run, double temp, double rated, double rise) {
        String id = scene.id(Table.RUNS, run);
        findings.add(ReviewCode.HOT_WIRE, Level.FAIL, scene.place(Table.RUNS, run, "wire_temp"), temp, rated, () -> {
            String[] both = Say.apart(temp, rated, Say.CELSIUS);
            return new Object[] {id, both[0], both[1], Say.of(rise, Say.K)};
        });
    }

    private void amps(Findings findings, int run, double amps, double limit) {
        String id = scene.id(Table.RUNS, run);
        findings.add(
                ReviewCode.WIRE_AMPS, Level.FAIL, scene.place(Table.RUNS, run, "amps_per_wire"), amps, limit, () -> {
                    String[] both = Say.apart(amps, limit, Say.A);
                    return new Object[] {id, both[0], both[1]};
                });
    }
}
