package farwatt.engine;

import static farwatt.plan.Table.SOURCES;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Around a source: watts from the mains, heat in its room, runtime on a battery. */
final class SourceSide {
    private static final double HOUR = 3600;
    private static final double[] LEAD_HOURS = {0.25, 1, 5, 20};
    private static final String[] LEAD_RATES = {"lead_15min", "lead_1h", "lead_5h", "lead_20h"};
    private static final double[] COLD = {-9, -1, 4, 10, 18, 25};
    private static final String[] COLD_SHARES = {
        "lead_cold_minus_9", "lead_cold_minus_1", "lead_cold_4", "lead_cold_10", "lead_cold_18"
    };
    private static final int LITHIUM = 1;
    private static final int HALVINGS = 200;

    private final Columns columns;
    private final Faults faults;
    private final Practice practice;
    private final Air air;
    private final AnswerCorner corner;
    /** Places of constants, which halving asks for many times. */
    private final int[] leadRates;

    private final int[] coldShares;

    SourceSide(Columns columns, Faults faults, Practice practice, Air air, AnswerCorner corner) {
        this.columns = columns;
        this.faults = faults;
        this.practice = practice;
        this.air = air;
        this.corner = corner;
        leadRates = Arrays.stream(LEAD_RATES).mapToInt(practice::place).toArray();
        coldShares = Arrays.stream(COLD_SHARES).mapToInt(practice::place).toArray();
    }

    List<Vertex> vertices(Relations relations) {
        Col sent = columns.need(SOURCES, "sent");
        Col idle = columns.need(SOURCES, "idle");
        Col efficiency = columns.need(SOURCES, "efficiency_ac");
        Col mains = columns.need(SOURCES, "mains");
        Col heat = columns.need(SOURCES, "room_heat");
        Col runtime = columns.need(SOURCES, "runtime");
        Col battery = columns.need(SOURCES, "battery");
        Col kind = columns.need(SOURCES, "battery_kind");
        List<Dep> run = new ArrayList<>(List.of(Dep.here(mains), Dep.here(battery), Dep.here(kind)));
        run.add(Dep.all(practice.column()));
        for (String zone : List.of("ambient", "hottest", "coldest", "sun")) {
            run.add(Dep.over(columns.need(farwatt.plan.Table.ZONES, zone), relations.zone));
        }
        return List.of(
                new RuleVertex(
                        mains,
                        p -> Double.isNaN(sent.v[p])
                                ? sent.v[p]
                                : Double.isNaN(idle.v[p]) ? idle.v[p] : (sent.v[p] + idle.v[p]) / efficiency.v[p],
                        List.of(Dep.here(sent), Dep.here(idle), Dep.here(efficiency))),
                new RuleVertex(
                        heat,
                        p -> Double.isNaN(mains.v[p]) ? mains.v[p] : mains.v[p] - sent.v[p],
                        List.of(Dep.here(mains), Dep.here(sent))),
                new RuleVertex(
                        runtime,
                        p -> {
                            double watts = mains.v[p];
                            double energy = battery.v[p];
                            double celsius = air.ofNode(runtime.base + p, corner.now());
                            for (double value : new double[] {energy, kind.v[p], watts, celsius}) {
                                if (Double.isNaN(value)) {
                                    return value;
                                }
                            }
                            if (watts == 0) {
                                return faults.lack(Lack.NOTHING_CARRIED, runtime.base + p);
                            }
                            return seconds(energy / HOUR, watts, kind.v[p] == LITHIUM, celsius);
                        },
                        run));
    }

    /**
     * How long a battery carries the mains load: t = Wh · rate(t) · cold · age · inverter / mains, solved for t. The
     * right side grows more slowly than t, so halving finds the one answer.
     *
     * @param wattHours of the battery when new
     * @param celsius around it
     * @return seconds
     */
    double seconds(double wattHours, double watts, boolean lithium, double celsius) {
        double usable = wattHours
                * practice.value("battery_age")
                * practice.value("battery_inverter")
                * (lithium ? practice.value("lithium_rate") : cold(celsius));
        double most = usable / watts;
        if (lithium || !(most > 0)) {
            return most * HOUR;
        }
        for (int each : leadRates) {
            if (Double.isNaN(practice.at(each))) {
                return practice.at(each);
            }
        }
        double low = 0;
        double high = most;
        for (int i = 0; i < HALVINGS && low < high; i++) {
            double middle = (low + high) / 2;
            if (middle <= most * rate(middle)) {
                if (low == middle) {
                    break;
                }
                low = middle;
            } else {
                high = middle;
            }
        }
        return low * HOUR;
    }

    /** Share of its energy that lead-acid gives over so many hours: straight between the points in log time. */
    private double rate(double hours) {
        if (hours <= LEAD_HOURS[0]) {
            return practice.at(leadRates[0]);
        }
        for (int i = 1; i < LEAD_HOURS.length; i++) {
            if (hours <= LEAD_HOURS[i]) {
                double share = Math.log(hours / LEAD_HOURS[i - 1]) / Math.log(LEAD_HOURS[i] / LEAD_HOURS[i - 1]);
                double from = practice.at(leadRates[i - 1]);
                return from + share * (practice.at(leadRates[i]) - from);
            }
        }
        return practice.at(leadRates[leadRates.length - 1]);
    }

    /** Share of its energy that lead-acid gives in the cold: straight between the points. */
    private double cold(double celsius) {
        if (celsius <= COLD[0]) {
            return practice.at(coldShares[0]);
        }
        for (int i = 1; i < COLD.length; i++) {
            if (celsius <= COLD[i]) {
                double share = (celsius - COLD[i - 1]) / (COLD[i] - COLD[i - 1]);
                double from = practice.at(coldShares[i - 1]);
                double to = i < coldShares.length ? practice.at(coldShares[i]) : 1;
                return from + share * (to - from);
            }
        }
        return 1;
    }
}
