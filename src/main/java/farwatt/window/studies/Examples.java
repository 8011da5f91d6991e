package farwatt.window.studies;

import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.study.Grow;
import farwatt.study.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What each kind of study is filled in with until a person writes something else: sensible for the open plan. */
final class Examples {
    private static final String RESERVE = "plan.least_reserve_share";
    private static final String KEPT = "plan.least_reserve_share >= reserve_target";
    private static final String LOST = "plan.least_reserve_share < reserve_target";

    private final Plan plan;

    Examples(Plan plan) {
        this.plan = plan;
    }

    List<String> lines(StudyField field) {
        return switch (field) {
            case VARY -> varied();
            case SPAN ->
                trunk().map(run -> path(run, "length") + " = 1 m .. 300 m").stream()
                        .toList();
            case TOLERANCE -> uncertain();
            case READ -> List.of(RESERVE);
            case COPY -> copied();
            case UNTIL -> List.of(LOST);
            case HOLDS -> List.of(KEPT);
            case MOST -> List.of(String.valueOf(Grow.USUAL_MOST));
            case RUNS -> List.of(String.valueOf(Spread.USUAL_RUNS));
            case SEED -> List.of("1");
            case STEP -> List.of("5 %");
        };
    }

    private List<String> varied() {
        List<String> lines = new ArrayList<>();
        zone().ifPresent(zone -> lines.add(path(zone, "ambient") + " = -20 degC .. 60 degC by 5 K"));
        trunk().ifPresent(run -> lines.add(path(run, "gauge") + " = 22 AWG, 23 AWG, 24 AWG, 26 AWG"));
        return lines;
    }

    private List<String> uncertain() {
        List<String> lines = new ArrayList<>();
        trunk().filter(run -> isPlain(run.text("length")))
                .ifPresent(run -> lines.add(path(run, "length") + " = " + run.text("length") + " ± 5 %"));
        zone().filter(zone -> isPlain(zone.text("ambient")))
                .ifPresent(zone -> lines.add(path(zone, "ambient") + " = " + zone.text("ambient") + " ± 5 K"));
        return lines;
    }

    /** True for a number with a unit, to which a tolerance can be written. */
    private static boolean isPlain(String text) {
        return text.matches("-?[0-9.]+ \\S+");
    }

    private List<String> copied() {
        Rows devices = plan.rows(Table.DEVICES);
        for (Row device : devices) {
            if (feeds(device.id())) {
                return List.of(device.id());
            }
        }
        return List.of();
    }

    private boolean feeds(String id) {
        for (Row run : plan.rows(Table.RUNS)) {
            if (Rows.fold(run.text("to")).equals(Rows.fold(id))) {
                return true;
            }
        }
        return false;
    }

    /** The first run that leads to a switch, else the first of all. */
    private Optional<Row> trunk() {
        Rows runs = plan.rows(Table.RUNS);
        for (Row run : runs) {
            if (plan.rows(Table.SWITCHES).place(run.text("to")) >= 0) {
                return Optional.of(run);
            }
        }
        return runs.size() == 0 ? Optional.empty() : Optional.of(runs.at(0));
    }

    /** The zone in which the trunk lies, else the first. */
    private Optional<Row> zone() {
        Rows zones = plan.rows(Table.ZONES);
        Optional<Row> itsOwn = trunk().flatMap(run -> zones.row(run.text("zone")));
        return itsOwn.isPresent() || zones.size() == 0 ? itsOwn : Optional.of(zones.at(0));
    }

    private static String path(Row row, String name) {
        return StepPath.quoted(row.id()) + "." + name;
    }
}
