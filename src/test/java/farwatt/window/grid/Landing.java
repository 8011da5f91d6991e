package farwatt.window.grid;

import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import java.util.Optional;

/** A small landing: one source, one switch, three cameras. */
final class Landing {
    private Landing() {}

    static Plan plan() {
        Plan plan = Plan.EMPTY
                .and(Table.VALUES, Row.of("dark").with("is", "no"))
                .and(Table.ZONES, Row.of("quay").with("ambient", "24 degC"))
                .and(Table.SOURCES, Row.of("feed").with("zone", "quay").with("volts", "55 V"))
                .and(Table.SWITCHES, Row.of("gate").with("zone", "quay"))
                .and(Table.RUNS, run("trunk", "feed", "gate", "95 m"));
        for (int i = 1; i <= 3; i++) {
            plan = plan.and(Table.RUNS, run("run cam " + i, "gate", "cam " + i, 18 + i + " m"))
                    .and(Table.DEVICES, Row.of("cam " + i).with("zone", "quay").with("draw", 7 - i + " W"));
        }
        return plan;
    }

    private static Row run(String id, String from, String to, String length) {
        return Row.of(id).with("from", from).with("to", to).with("length", length);
    }

    static PlainSheet sheet() {
        return new PlainSheet(plan(), Decimal.POINT);
    }

    /** A clipboard of its own. */
    static final class Pocket implements Board {
        private String text = "";

        @Override
        public Optional<String> text() {
            return Optional.of(text);
        }

        @Override
        public void put(String now) {
            text = now;
        }
    }
}
