package farwatt.review;

import farwatt.engine.Fault;
import farwatt.engine.Figures;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The plan's own needs: conditions that must hold. */
final class NeedChecks implements Check {
    private final Scene scene;
    private final Set<Place> said = new HashSet<>();

    NeedChecks(Scene scene, List<Notice> notices) {
        this.scene = scene;
        notices.forEach(notice -> said.add(notice.place()));
    }

    @Override
    public void look(Findings findings) {
        Figures holds = scene.of(Table.NEEDS, "holds");
        for (int place = 0; place < scene.rows(Table.NEEDS); place++) {
            double met = holds.at(place);
            Row need = scene.calc().plan().rows(Table.NEEDS).at(place);
            // an expression that cannot be read was said where it stands
            Place where = new Place(Table.NEEDS.key(), "", need.id());
            Level level = need.text("level").strip().equals(Level.WARN.word()) ? Level.WARN : Level.FAIL;
            if (Double.isNaN(met)) {
                Fault fault = scene.fault(met);
                if (!said.contains(fault.origin())) {
                    findings.add(ReviewCode.NEED_UNKNOWN, level, where, () -> new Object[] {need.id(), fault.text()});
                }
            } else if (met == 0) {
                findings.add(ReviewCode.NEED, level, where, () ->
                        new Object[] {need.id(), need.text("holds").strip()});
            }
        }
    }
}
