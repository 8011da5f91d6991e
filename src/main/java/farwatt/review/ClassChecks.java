package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.standard.PowerClass;

/** Whether each device's watts fit the class that its port grants (IEEE 802.3 clauses 33 and 145). */
final class ClassChecks implements Check {
    private static final int LARGEST = 8;

    private final Scene scene;

    ClassChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        Figures watts = scene.of(Table.DEVICES, "watts");
        Figures granted = scene.of(Table.DEVICES, "class_granted");
        Figures asked = scene.of(Table.DEVICES, "class");
        for (int place = 0; place < scene.rows(Table.DEVICES); place++) {
            double may = Scene.deviceWatts(granted.at(place));
            if (Near.over(watts.at(place), may)) {
                over(findings, place, watts.at(place), (int) asked.at(place), (int) granted.at(place));
            }
        }
    }

    private void over(Findings findings, int place, double watts, int asked, int granted) {
        Spot device = new Spot(Table.DEVICES, place);
        String id = scene.tree().id(device);
        double may = PowerClass.of(granted).deviceWatts();
        boolean less =
                PowerClass.of(granted).deviceWatts() < PowerClass.of(asked).deviceWatts();
        ReviewCode code = less
                ? ReviewCode.DEMOTED_SHORT
                : granted == LARGEST ? ReviewCode.OVER_ALL_CLASSES : ReviewCode.OVER_CLASS;
        String from =
                scene.tree().feedOf(device).map(f -> scene.tree().id(f.from())).orElse("");
        String port = scene.tree()
                .feedOf(device)
                .map(f -> scene.calc().value(Table.RUNS, f.run(), "port").text())
                .orElse("");
        findings.add(code, Level.FAIL, scene.place(device, "watts"), watts, may, () -> {
            String[] both = Say.apart(watts, may, Say.W);
            String where = port.equals("–") ? from : Phrase.PORT_OF.text(port, from);
            return new Object[] {id, both[0], granted, both[1], Say.of(watts - may, Say.W), asked, where};
        });
    }
}
