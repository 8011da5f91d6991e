package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.engine.Value;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;

/**
 * The loop of every run at 20 °C and what each kelvin adds to it, asked of the engine itself: the same wires without
 * load and without self-heating, all in one zone, at two temperatures. A loop is straight in temperature.
 */
final class Loops {
    private static final double REFERENCE = 20;

    private final double[] cool;
    private final double[] reference;

    private Loops(double[] cool, double[] reference) {
        this.cool = cool;
        this.reference = reference;
    }

    static Loops of(Calculation calc) {
        return new Loops(at(calc, "0 degC"), at(calc, "20 degC"));
    }

    /** Ohms at 20 °C, NaN where the run's record does not give them. */
    double at20(int run) {
        return reference[run];
    }

    /** Ohms that each kelvin adds. */
    double perKelvin(int run) {
        return (reference[run] - cool[run]) / REFERENCE;
    }

    private static double[] at(Calculation calc, String air) {
        Calculation wires = Calculation.of(bare(calc, air));
        double[] loops = new double[wires.rows(Table.RUNS)];
        for (int run = 0; run < loops.length; run++) {
            Value loop = wires.value(Table.RUNS, run, "loop");
            loops[run] = loop.isPresent() ? loop.inside() : Double.NaN;
        }
        return loops;
    }

    private static Plan bare(Calculation calc, String air) {
        Plan plan = calc.plan();
        String zone = "air";
        while (plan.find(zone).isPresent()) {
            zone += " ";
        }
        Plan bare = plan.with(
                        Table.PLAN,
                        Rows.of(List.of(plan.settings().with("heat_margin", "0").with("corner", "most"))))
                .and(Table.ZONES, Row.of(zone).with("ambient", air));
        return bare.with(Table.RUNS, runs(calc, zone))
                .with(Table.DEVICES, without(plan.rows(Table.DEVICES), "draw", "load", "draw_typical", "draw_start"))
                .with(Table.SWITCHES, without(plan.rows(Table.SWITCHES), "own_draw"));
    }

    /** How many pairs a run has may hang on what it feeds, so it is written down before loads go. */
    private static Rows runs(Calculation calc, String zone) {
        List<Row> runs = new ArrayList<>();
        for (int run = 0; run < calc.rows(Table.RUNS); run++) {
            Row row = calc.plan().rows(Table.RUNS).at(run).with("zone", zone);
            Value pairs = calc.value(Table.RUNS, run, "pairs");
            runs.add(pairs.isPresent() ? row.with("pairs", pairs.words()) : row);
        }
        return Rows.of(runs);
    }

    /** The first of these cells without watts, the others empty. */
    private static Rows without(Rows rows, String draw, String... others) {
        List<Row> all = new ArrayList<>();
        for (Row row : rows) {
            Row idle = row.with(draw, "0 W");
            for (String other : others) {
                idle = idle.without(other);
            }
            all.add(idle);
        }
        return Rows.of(all);
    }
}
