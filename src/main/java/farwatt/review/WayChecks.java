package farwatt.review;

import farwatt.engine.Corner;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where runs lead through: zones that the sheath must stand, buildings that they join. */
final class WayChecks implements Check {
    private static final double INDOOR = 0;

    private final Scene scene;

    WayChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        for (Tree.Feed feed : scene.tree().feeds()) {
            Optional<Spot> near = zone(feed.from());
            Optional<Spot> far = zone(feed.to());
            Optional<Spot> own = scene.calc().related(Table.RUNS, feed.run(), "zone");
            List<Spot> touched = new ArrayList<>();
            near.ifPresent(touched::add);
            far.ifPresent(touched::add);
            own.ifPresent(touched::add);
            sheath(findings, feed, touched);
            if (own.isEmpty() && near.isPresent() && far.isPresent() && !near.equals(far)) {
                crosses(findings, feed, near.get(), far.get());
            }
            building(findings, feed, near, far);
        }
    }

    private Optional<Spot> zone(Spot node) {
        return scene.calc().related(node.table(), node.place(), "zone");
    }

    private void sheath(Findings findings, Tree.Feed feed, List<Spot> touched) {
        boolean indoor = scene.of(Table.RUNS, "sheath").at(feed.run()) == INDOOR;
        Optional<Spot> outside = touched.stream().filter(this::isOutdoor).findFirst();
        String id = scene.id(Table.RUNS, feed.run());
        if (indoor && outside.isPresent()) {
            boolean typed = scene.typed(Table.RUNS, feed.run(), "sheath");
            String zone = scene.tree().id(outside.get());
            findings.add(
                    typed ? ReviewCode.SHEATH : ReviewCode.SHEATH_UNSAID,
                    typed ? Level.FAIL : Level.WARN,
                    scene.place(Table.RUNS, feed.run(), "sheath"),
                    () -> new Object[] {id, zone});
        } else if (!indoor && outside.isEmpty() && !touched.isEmpty()) {
            String word = scene.words(Table.RUNS, feed.run(), "sheath");
            findings.add(ReviewCode.SHEATH_INSIDE, Level.NOTE, scene.place(Table.RUNS, feed.run(), "sheath"), () ->
                    new Object[] {id, word});
        }
    }

    private boolean isOutdoor(Spot zone) {
        return scene.of(Table.ZONES, "outdoor").at(zone.place()) == 1;
    }

    private void crosses(Findings findings, Tree.Feed feed, Spot near, Spot far) {
        String id = scene.id(Table.RUNS, feed.run());
        Place place = scene.place(Table.RUNS, feed.run(), "zone");
        findings.add(ReviewCode.CROSSES, Level.NOTE, place, () ->
                new Object[] {id, scene.tree().id(near), scene.tree().id(far), reckonedIn(feed.run())});
    }

    /** Which zone counts; where that changes with the corner, which in which. */
    private String reckonedIn(int run) {
        List<String> zones = new ArrayList<>();
        for (Corner corner : List.of(Corner.MOST, Corner.HOT, Corner.COLD)) {
            scene.calc()
                    .reckonedIn(run, corner)
                    .ifPresent(zone -> zones.add(scene.tree().id(zone)));
        }
        boolean same = zones.stream().distinct().count() == 1;
        return same ? zones.get(0) : Phrase.ZONES_BY_CORNER.text(zones.toArray());
    }

    private void building(Findings findings, Tree.Feed feed, Optional<Spot> near, Optional<Spot> far) {
        String one = near.map(this::buildingOf).orElse("");
        String other = far.map(this::buildingOf).orElse("");
        boolean between = !one.isEmpty() && !other.isEmpty() && !one.equals(other);
        boolean leaves = scene.of(Table.RUNS, "leaves_building").at(feed.run()) == 1;
        String id = scene.id(Table.RUNS, feed.run());
        if (between) {
            findings.add(ReviewCode.BETWEEN, Level.WARN, scene.place(Table.RUNS, feed.run(), "to"), () ->
                    new Object[] {id, one, other});
        }
        if (leaves || between) {
            boolean surge = scene.of(Table.RUNS, "surge").at(feed.run()) == 1;
            findings.add(
                    surge ? ReviewCode.BONDING : ReviewCode.SURGE,
                    surge ? Level.NOTE : Level.WARN,
                    scene.place(Table.RUNS, feed.run(), "surge"),
                    () -> new Object[] {id});
        }
    }

    private String buildingOf(Spot zone) {
        return scene.text(Table.ZONES, zone.place(), "building");
    }
}
