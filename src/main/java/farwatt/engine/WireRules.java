package farwatt.engine;

import farwatt.circuit.Conductor;
import farwatt.plan.Table;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * What a run's cells say of its resistance, as the circuit wants it: loop ohms at 20 °C of cable and cord as the total
 * current sees them, ohms that do not warm, and the cable's length for its heat. With two pairs a loop is one
 * conductor's path, with four half of it.
 */
final class WireRules {
    private static final int LIMIT = 1;
    private static final int DATASHEET = 2;
    private static final int MEASURED = 3;
    private static final int PAIR = 4;

    private final Faults faults;
    private final Layout layout;
    private final Practice practice;
    private final Col length;
    private final Col cordLength;
    private final Col gauge;
    private final Col cordGauge;
    private final Col metal;
    private final Col pairs;
    private final Col joints;
    private final Col basis;
    private final Col conductorOhms;
    private final Col measuredLoop;
    private final Col pairLoop;
    private final Col measuredAt;
    private final int limitOhms;
    private final int laySolid;
    private final int cladRatio;
    private final int limitCordOhms;
    private final int layStranded;
    private final int jointOhms;
    private final int cladAlpha;
    private final int copperAlpha;

    WireRules(Faults faults, Layout layout, Columns columns, Practice practice) {
        this.faults = faults;
        this.layout = layout;
        this.practice = practice;
        length = columns.need(Table.RUNS, "length");
        cordLength = columns.need(Table.RUNS, "cord_length");
        gauge = columns.need(Table.RUNS, "gauge");
        cordGauge = columns.need(Table.RUNS, "cord_gauge");
        metal = columns.need(Table.RUNS, "metal");
        pairs = columns.need(Table.RUNS, "pairs");
        joints = columns.need(Table.RUNS, "joints");
        basis = columns.need(Table.RUNS, "basis");
        conductorOhms = columns.need(Table.RUNS, "conductor_ohms");
        measuredLoop = columns.need(Table.RUNS, "measured_loop");
        pairLoop = columns.need(Table.RUNS, "pair_loop");
        measuredAt = columns.need(Table.RUNS, "measured_at");
        limitOhms = practice.place("limit_ohms");
        laySolid = practice.place("lay_solid");
        cladRatio = practice.place("clad_ratio");
        limitCordOhms = practice.place("limit_cord_ohms");
        layStranded = practice.place("lay_stranded");
        jointOhms = practice.place("joint_ohms");
        cladAlpha = practice.place("clad_alpha");
        copperAlpha = practice.place("copper_alpha");
    }

    /** What {@link #cable} reads. */
    List<Dep> cableDeps() {
        return deps(basis, length, cordLength, gauge, metal, pairs, conductorOhms, measuredLoop, pairLoop, measuredAt);
    }

    /** What {@link #cord} reads. */
    List<Dep> cordDeps() {
        return deps(basis, cordLength, cordGauge, pairs);
    }

    /** What {@link #fixed} reads. */
    List<Dep> fixedDeps() {
        return deps(basis, joints, pairs);
    }

    /** What {@link #perMetre} reads. */
    List<Dep> perMetreDeps() {
        return deps(basis, length, cordLength);
    }

    /** What {@link #alpha} reads. */
    List<Dep> alphaDeps() {
        return deps(metal);
    }

    private List<Dep> deps(Col... read) {
        List<Dep> all = new ArrayList<>();
        for (Col col : read) {
            all.add(Dep.here(col));
        }
        all.add(Dep.all(practice.column()));
        return all;
    }

    /** Loop ohms of the cable part at 20 °C. */
    double cable(int place) {
        double how = basis.v[place];
        if (Double.isNaN(how)) {
            return how;
        }
        if (how == MEASURED || how == PAIR) {
            return read(place, how == PAIR);
        }
        return product(bare(place), ohmsPerMetre(place, (int) how), share(place));
    }

    /** A tester's reading over one pair sees two conductors in a row; the current sees all pairs at once. */
    private double read(int place, boolean onePair) {
        double loop = onePair ? product(pairLoop.v[place], share(place), 0.5) : measuredLoop.v[place];
        double warmed = 1 + product(alpha(place), measuredAt.v[place] - 20, 1);
        if (warmed <= 0) {
            int run = length.base + place;
            return faults.raise(
                    Fault.Kind.UNREADABLE, layout.place(run, measuredAt.key()), EngineCode.TOO_COLD, layout.id(run));
        }
        return product(loop, 1 / warmed, 1);
    }

    private double ohmsPerMetre(int place, int how) {
        if (how == DATASHEET) {
            return conductorOhms.v[place];
        }
        if (how == LIMIT) {
            return practice.at(limitOhms);
        }
        double copper = Conductor.ohmsPerMetre(gauge.v[place], Conductor.COPPER_OHM_METRES, practice.at(laySolid));
        return metal.v[place] == 1 ? product(copper, practice.at(cladRatio), 1) : copper;
    }

    /** Loop ohms of the cords at 20 °C. */
    double cord(int place) {
        double how = basis.v[place];
        if (how == MEASURED || how == PAIR || cordLength.v[place] == 0) {
            return 0;
        }
        double perMetre = how == LIMIT
                ? practice.at(limitCordOhms)
                : Conductor.ohmsPerMetre(cordGauge.v[place], Conductor.COPPER_OHM_METRES, practice.at(layStranded));
        return product(cordLength.v[place], perMetre, share(place));
    }

    /** Loop ohms of the mated connections, which do not warm. */
    double fixed(int place) {
        double how = basis.v[place];
        return how == MEASURED || how == PAIR ? 0 : product(joints.v[place], practice.at(jointOhms), share(place));
    }

    /** One over the metres of cable; 0 where there is none or a measured run does not say. */
    double perMetre(int place) {
        double how = basis.v[place];
        boolean unsaid = faults.isBlank(length, place);
        if (unsaid && (how == MEASURED || how == PAIR)) {
            return 0;
        }
        double cable = bare(place);
        return Double.isNaN(cable) ? cable : cable > 0 ? 1 / cable : 0;
    }

    /** Rise of the cable part's resistance a kelvin, from 20 °C. */
    double alpha(int place) {
        double word = metal.v[place];
        return Double.isNaN(word) ? word : practice.at(word == 1 ? cladAlpha : copperAlpha);
    }

    /** A product in which the first fault wins, whichever way the machine would carry it. */
    private static double product(double a, double b, double c) {
        if (Double.isNaN(a)) {
            return a;
        }
        return Double.isNaN(b) ? b : Double.isNaN(c) ? c : a * b * c;
    }

    private double bare(int place) {
        double metres = length.v[place];
        double cord = cordLength.v[place];
        if (!Double.isNaN(metres) && cord > metres) {
            String id = layout.id(length.base + place);
            return faults.raise(
                    Fault.Kind.UNREADABLE, new Place(Table.RUNS.key(), id, "cord_length"), EngineCode.CORD_LONGER, id);
        }
        return Double.isNaN(metres) ? metres : metres - cord;
    }

    private double share(int place) {
        double word = pairs.v[place];
        return Double.isNaN(word) ? word : word == 1 ? 0.5 : 1;
    }
}
