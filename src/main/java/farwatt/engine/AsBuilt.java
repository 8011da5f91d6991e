package farwatt.engine;

import static farwatt.plan.Table.RUNS;

import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import java.util.ArrayList;
import java.util.List;

/**
 * What readings at hand-over say of a run: the loop they make, over the loop its record makes one expect at that
 * temperature, and what a difference may be. Errors of the readings and the bands are constants of practice.
 */
final class AsBuilt {
    private static final double REFERENCE = 20;
    private static final Units UNITS = new Units("EUR");

    private final Layout layout;
    private final Columns columns;
    private final Topology topology;
    private final Inside inside;
    private final Faults faults;
    private final Texts texts;
    private final Practice practice;
    private final Col near;
    private final Col far;
    private final Col amps;
    private final Col watts;
    private final Col temp;
    private final Col wireTemp;
    private final Col pairs;
    private final Col loop;
    private final Col ratio;
    private final Col spread;

    AsBuilt(Model model) {
        layout = model.layout;
        columns = model.columns;
        topology = model.topology;
        inside = model.inside;
        faults = model.faults;
        texts = model.texts;
        practice = model.practice;
        near = columns.need(RUNS, "seen_volts_near");
        far = columns.need(RUNS, "seen_volts_far");
        amps = columns.need(RUNS, "seen_amps");
        watts = columns.need(RUNS, "seen_watts");
        temp = columns.need(RUNS, "seen_temp");
        wireTemp = columns.need(RUNS, "wire_temp");
        pairs = columns.need(RUNS, "pairs");
        loop = columns.need(RUNS, "seen_loop");
        ratio = columns.need(RUNS, "seen_ratio");
        spread = columns.need(RUNS, "seen_spread");
    }

    List<Vertex> vertices() {
        Dep constants = Dep.all(practice.column());
        List<Dep> expected = new ArrayList<>(List.of(Dep.here(loop), Dep.here(temp), Dep.here(wireTemp), constants));
        for (Col col : List.of(inside.cable, inside.cord, inside.fixed, inside.alpha)) {
            expected.add(Dep.here(col));
        }
        List<Dep> read = List.of(Dep.here(near), Dep.here(far), Dep.here(amps), Dep.here(watts));
        List<Dep> judged =
                List.of(Dep.here(near), Dep.here(far), Dep.here(ratio), Dep.here(spread), Dep.here(pairs), constants);
        return List.of(
                new RuleVertex(loop, this::loop, read),
                new RuleVertex(ratio, this::ratio, expected),
                new RuleVertex(spread, this::spread, List.of(Dep.here(near), Dep.here(far), constants)),
                new RuleVertex(columns.need(RUNS, "seen_verdict"), this::verdict, judged));
    }

    /** Ohms by the volts lost and the current; watts read at the port give the current as well. */
    private double loop(int place) {
        double drop = drop(place);
        double current = amps.v[place];
        boolean byWatts = faults.isBlank(amps, place) && !faults.isBlank(watts, place);
        if (byWatts) {
            current = near.v[place] > 0 ? watts.v[place] / near.v[place] : 0;
        }
        if (Double.isNaN(drop) || Double.isNaN(current)) {
            return Double.isNaN(drop) ? drop : current;
        }
        return current > 0 ? drop / current : no(EngineCode.SEEN_NO_CURRENT, place);
    }

    private double drop(int place) {
        double from = near.v[place];
        double to = far.v[place];
        return Double.isNaN(from) ? from : Double.isNaN(to) ? to : from - to;
    }

    private double ratio(int place) {
        double seen = loop.v[place];
        if (Double.isNaN(seen)) {
            return seen;
        }
        double ohms = expected(place, faults.isBlank(temp, place) ? wireTemp.v[place] : temp.v[place]);
        return Double.isNaN(ohms) ? ohms : ohms > 0 ? seen / ohms : no(EngineCode.SEEN_NOTHING_EXPECTED, place);
    }

    /** Loop ohms of the record at a temperature; only cable and cords warm. */
    private double expected(int place, double celsius) {
        double[] parts = {
            celsius, inside.cable.v[place], inside.cord.v[place], inside.fixed.v[place], inside.alpha.v[place]
        };
        for (double part : parts) {
            if (Double.isNaN(part)) {
                return part;
            }
        }
        double over = celsius - REFERENCE;
        return parts[1] * (1 + parts[4] * over) + parts[2] * (1 + practice.value("copper_alpha") * over) + parts[3];
    }

    /** Standard uncertainty of the ratio: two voltages, one current, and how cables scatter around their nominal. */
    private double spread(int place) {
        double drop = drop(place);
        if (Double.isNaN(drop) || drop == 0) {
            return drop == 0 ? no(EngineCode.SEEN_NO_DROP, place) : drop;
        }
        double volts = practice.value("seen_volts_error") / drop;
        double current = practice.value("seen_amps_error");
        double cable = practice.value("seen_model_error");
        return Math.sqrt(2 * volts * volts + current * current + cable * cable);
    }

    private double verdict(int place) {
        double drop = drop(place);
        if (Double.isNaN(drop)) {
            return drop;
        }
        double least = practice.value("seen_drop_least");
        if (drop < least) {
            return say(EngineCode.SEEN_DROP, volts(drop), volts(least));
        }
        double off = ratio.v[place];
        double sigma = spread.v[place];
        if (Double.isNaN(off) || Double.isNaN(sigma)) {
            return Double.isNaN(off) ? off : sigma;
        }
        double most = practice.value("seen_spread_most");
        if (sigma > most) {
            Unit share = UNITS.need("%");
            return say(EngineCode.SEEN_SPREAD, Show.text(sigma, share), Show.text(most, share));
        }
        return say(Math.abs(off - 1) <= 2 * sigma ? EngineCode.SEEN_EXPECTED : band(off, pairs.v[place] == 1));
    }

    private EngineCode band(double off, boolean fourPairs) {
        if (off < practice.value("seen_far_less")) {
            return EngineCode.SEEN_FAR_LESS;
        }
        if (off < practice.value("seen_less")) {
            return EngineCode.SEEN_LESS;
        }
        if (off <= practice.value("seen_more")) {
            return EngineCode.SEEN_OFF;
        }
        if (off <= practice.value("seen_much_more")) {
            return EngineCode.SEEN_MORE;
        }
        if (off <= practice.value("seen_most")) {
            return EngineCode.SEEN_MUCH_MORE;
        }
        boolean twice = off >= practice.value("seen_half_low") && off <= practice.value("seen_half_high");
        return fourPairs && twice ? EngineCode.SEEN_HALF : EngineCode.SEEN_MOST;
    }

    private double say(EngineCode code, Object... parts) {
        return texts.number(Messages.text(code, parts));
    }

    private static String volts(double inside) {
        return Show.text(inside, UNITS.need("V"));
    }

    private double no(EngineCode code, int place) {
        int row = loop.base + place;
        return faults.raise(Fault.Kind.ARITHMETIC, topology.place(row), code, layout.id(row));
    }
}
