package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Table;
import farwatt.report.Level;

/** What each run's cable is, whatever flows in it. */
final class CableChecks implements Check {
    private static final double CLAD = 1;

    private final Scene scene;

    CableChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        Figures metal = scene.of(Table.RUNS, "metal");
        for (Tree.Feed feed : scene.tree().feeds()) {
            if (metal.at(feed.run()) == CLAD) {
                String id = scene.id(Table.RUNS, feed.run());
                findings.add(ReviewCode.CLAD, Level.FAIL, scene.place(Table.RUNS, feed.run(), "metal"), () ->
                        new Object[] {id});
            }
        }
    }
}
