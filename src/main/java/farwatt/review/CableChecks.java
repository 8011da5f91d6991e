package farwatt.review;

import farwatt.engine.Fault;
import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.HashMap;
import java.util.Map;

/** What each run's cable is and how many lie together, whatever flows in them. */
final class CableChecks implements Check {
    private static final double CLAD = 1;
    /** Between 26 and 28 AWG: thinner than this is the standard's thinnest cord. */
    private static final double THINNEST = 27;

    private final Scene scene;

    CableChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        Figures metal = scene.of(Table.RUNS, "metal");
        for (Tree.Feed feed : scene.tree().feeds()) {
            int run = feed.run();
            String id = scene.id(Table.RUNS, run);
            if (metal.at(run) == CLAD) {
                findings.add(
                        ReviewCode.CLAD, Level.FAIL, scene.place(Table.RUNS, run, "metal"), () -> new Object[] {id});
            }
            thin(findings, run, id);
            double length = scene.of(Table.RUNS, "length").at(run);
            if (Double.isNaN(length) && scene.fault(length).kind() == Fault.Kind.EMPTY && isMeasured(run)) {
                findings.add(ReviewCode.LENGTH_UNSAID, Level.NOTE, scene.place(Table.RUNS, run, "length"), () ->
                        new Object[] {id});
            }
        }
        bundles(findings);
    }

    private boolean isMeasured(int run) {
        String basis = scene.words(Table.RUNS, run, "basis");
        return basis.equals("measured") || basis.equals("pair");
    }

    /** 28 AWG is for cords only, and short ones (ISO/IEC 11801, TIA-568; practice, editable). */
    private void thin(Findings findings, int run, String id) {
        double cord = scene.of(Table.RUNS, "cord_length").at(run);
        double most = scene.limit("cord_28_most");
        boolean thinCord = scene.of(Table.RUNS, "cord_gauge").at(run) > THINNEST;
        if (thinCord && Near.over(cord, most)) {
            Place place = scene.place(Table.RUNS, run, "cord_length");
            findings.add(ReviewCode.CORD, Level.FAIL, place, cord, most, () -> {
                String[] both = Say.apart(cord, most, Say.M);
                return new Object[] {id, both[0], both[1]};
            });
        }
        double fixed = scene.of(Table.RUNS, "length").at(run) - cord;
        if (scene.of(Table.RUNS, "gauge").at(run) > THINNEST && fixed > 0) {
            findings.add(ReviewCode.THIN_CABLE, Level.FAIL, scene.place(Table.RUNS, run, "gauge"), () ->
                    new Object[] {id, Say.of(fixed, Say.M)});
        }
    }

    private void bundles(Findings findings) {
        Map<Spot, Integer> members = new HashMap<>();
        for (Tree.Feed feed : scene.tree().feeds()) {
            scene.calc().related(Table.RUNS, feed.run(), "bundle").ifPresent(b -> members.merge(b, 1, Integer::sum));
        }
        double most = scene.limit("bundle_most");
        Figures others = scene.of(Table.BUNDLES, "others");
        for (int place = 0; place < scene.rows(Table.BUNDLES); place++) {
            double count = members.getOrDefault(new Spot(Table.BUNDLES, place), 0) + others.at(place);
            if (Near.over(count, most)) {
                Object[] parts = {scene.id(Table.BUNDLES, place), (int) count, (int) most};
                Place where = Place.row(Table.BUNDLES.key(), scene.id(Table.BUNDLES, place));
                findings.add(ReviewCode.BUNDLE, Level.NOTE, where, count, most, () -> parts);
            }
        }
    }
}
