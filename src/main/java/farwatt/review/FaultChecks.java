package farwatt.review;

import farwatt.engine.Fault;
import farwatt.engine.Figures;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What has no values: trees without an operating point or in runaway, rows cut off by a cell. */
final class FaultChecks implements Check {
    private final Scene scene;
    private final Set<Place> said = new HashSet<>();

    /** A cause and how many sources, switches and devices have no values because of it. */
    private static final class Cause {
        private final Fault fault;
        private int rows;

        Cause(Fault fault) {
            this.fault = fault;
        }
    }

    FaultChecks(Scene scene, List<Notice> notices) {
        this.scene = scene;
        notices.forEach(notice -> said.add(notice.place()));
    }

    @Override
    public void look(Findings findings) {
        Map<Place, Cause> causes = new LinkedHashMap<>();
        gather(Table.SOURCES, "sent", causes);
        gather(Table.SWITCHES, "sent", causes);
        gather(Table.DEVICES, "volts", causes);
        causes.values().forEach(cause -> add(findings, cause));
    }

    private void gather(Table table, String name, Map<Place, Cause> causes) {
        Figures values = scene.of(table, name);
        for (int place = 0; place < scene.rows(table); place++) {
            if (Double.isNaN(values.at(place))) {
                Fault fault = scene.fault(values.at(place));
                if (fault.kind() != Fault.Kind.OUT_OF_USE) {
                    // the head of what is cut off comes before what hangs on it in some tables and after in others
                    Cause cause = causes.get(fault.origin());
                    if (cause == null
                            || (cause.fault.kind() == Fault.Kind.NOT_FED && fault.kind() != Fault.Kind.NOT_FED)) {
                        Cause head = new Cause(fault);
                        head.rows = cause == null ? 0 : cause.rows;
                        causes.put(fault.origin(), head);
                        cause = head;
                    }
                    cause.rows++;
                }
            }
        }
    }

    private void add(Findings findings, Cause cause) {
        Fault fault = cause.fault;
        switch (fault.kind()) {
            case NO_OPERATING_POINT -> noPoint(findings, fault);
            case RUNAWAY ->
                findings.add(ReviewCode.RUNAWAY, Level.FAIL, fault.origin(), () ->
                        new Object[] {fault.origin().row()});
            case OUT_OF_USE, NOT_APPLICABLE, NOT_FED, LOOP -> {
                // said by the engine where it is a mistake
            }
            default -> {
                if (!said.contains(fault.origin())) {
                    int rows = cause.rows;
                    // a cell is what it is in every corner
                    findings.in(Optional.empty());
                    findings.add(ReviewCode.NO_VALUE, Level.FAIL, fault.origin(), () -> new Object[] {
                        fault.text(), Phrase.rows(rows), fault.text().replaceFirst("\\..*$", "")
                    });
                    findings.in(Optional.of(scene.corner()));
                }
            }
        }
    }

    private void noPoint(Findings findings, Fault fault) {
        String run = fault.origin().row();
        if (Double.isNaN(fault.asked())) {
            findings.add(ReviewCode.NO_OPERATING_POINT_TREE, Level.FAIL, fault.origin(), () -> new Object[] {run});
            return;
        }
        double asked = fault.asked();
        double possible = fault.possible();
        findings.add(ReviewCode.NO_OPERATING_POINT, Level.FAIL, fault.origin(), asked, possible, () -> {
            String[] watts = Say.apart(asked, possible, Say.W);
            return new Object[] {run, watts[0], watts[1], Say.of(asked - possible, Say.W)};
        });
    }
}
