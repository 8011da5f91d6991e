package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.NaturalOrder;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
        List<Tree.Feed> hot = new ArrayList<>();
        for (Tree.Feed feed : scene.tree().feeds()) {
            int run = feed.run();
            double fixed = length.at(run) - cord.at(run);
            if (Near.over(fixed, reach.at(run))) {
                tooLong(findings, run, fixed, reach.at(run), cord.at(run), temp.at(run));
            }
            if (Near.over(temp.at(run), end)) {
                hot.add(feed);
            }
        }
        pastTable(findings, hot, temp, end);
    }

    /** One finding for a zone: where one wire is past the table's end, its neighbours are too. */
    private void pastTable(Findings findings, List<Tree.Feed> hot, Figures temp, double end) {
        Map<Place, List<Tree.Feed>> zones = new LinkedHashMap<>();
        for (Tree.Feed feed : hot) {
            Place place = scene.calc()
                    .reckonedIn(feed.run(), scene.corner())
                    .map(zone -> scene.place(zone, ""))
                    .orElseGet(() -> scene.place(Table.RUNS, feed.run(), "reach"));
            zones.computeIfAbsent(place, p -> new ArrayList<>()).add(feed);
        }
        zones.forEach((place, feeds) -> {
            double most =
                    feeds.stream().mapToDouble(f -> temp.at(f.run())).max().orElseThrow();
            List<String> runs = feeds.stream()
                    .map(f -> scene.id(Table.RUNS, f.run()))
                    .sorted(NaturalOrder.IDS)
                    .toList();
            findings.add(ReviewCode.REACH_TABLE, Level.NOTE, place, most, end, () -> {
                String[] both = Say.apart(most, end, Say.CELSIUS);
                return new Object[] {Say.list(runs), both[0], both[1]};
            });
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
