package farwatt.catalogue.edit;

import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.Table;
import java.util.List;

/** A small plan in which everything is named somewhere. */
final class Ferry {
    private Ferry() {}

    static Plan plan() {
        return Plan.EMPTY
                .and(Table.VALUES, Row.of("dark").with("is", "no"))
                .and(Table.VALUES, Row.of("night_draw").with("is", "if dark then 'cam 1'.draw else 0 W"))
                .and(Table.ZONES, Row.of("quay"))
                .and(Table.SOURCES, Row.of("feed").with("zone", "quay"))
                .and(Table.SWITCHES, Row.of("gate").with("zone", "QUAY"))
                .and(
                        Table.RUNS,
                        Row.of("trunk").with("from", "feed").with("to", "gate").with("length", "95 m"))
                .and(
                        Table.RUNS,
                        Row.of("run cam 1")
                                .with("from", "Gate")
                                .with("to", "cam 1")
                                .with("port", Cell.number("3"))
                                .with("length", "trunk.length / 5")
                                .with("note", "from gate to cam 1"))
                .and(
                        Table.DEVICES,
                        Row.of("cam 1").with("zone", "quay").with("draw", "6 W").with("spare", "trunk.loss"))
                .and(Table.COLUMNS, Row.of("share").with("table", "runs").with("is", "loss / sent"))
                .and(Table.COLUMNS, Row.of("tag").with("table", "devices").with("kind", "text"))
                .and(
                        Table.NEEDS,
                        Row.of("gate stands").with("holds", "gate.reserve_share >= 20 % and trunk.share < 5 %"))
                .withScenarios(List.of(
                        new Scenario(
                                "winter",
                                "",
                                List.of(
                                        new Step.Set("quay.ambient", Cell.text("-10 degC")),
                                        new Step.Set("dark", Cell.text("yes")),
                                        new Step.Set("'cam 1'.zone", Cell.text("quay")),
                                        new Step.Set("'cam 1'.draw", Cell.text("trunk.length * 0.1 W/m")))),
                        new Scenario(
                                "more",
                                "winter",
                                List.of(
                                        new Step.Add("devices", Row.of("cam 2").with("zone", "quay")),
                                        new Step.Add(
                                                "runs",
                                                Row.of("run cam 2")
                                                        .with("from", "gate")
                                                        .with("to", "cam 2")),
                                        new Step.Set("'cam 2'.tag", Cell.text("gate")),
                                        new Step.Drop("cam 1")))));
    }
}
