package farwatt.circuit;

/**
 * The size of a ferry landing: one source, a trunk of 95 m beside six cables that are not in the plan, one regulated
 * switch, fourteen devices.
 */
final class Landing {

    static final int DEVICES = 14;
    static final int ROWS = DEVICES + 2;
    private static final double LAY = 1.02;

    private Landing() {}

    static FlatNetwork network() {
        FlatNetwork in = new FlatNetwork(ROWS);
        in.end[0] = ROWS;
        in.end[1] = ROWS;
        in.volts[0] = 55;
        in.budget[0] = 90;
        in.kind[1] = FlatNetwork.REGULATED;
        in.volts[1] = 55;
        in.draw[1] = 6;
        in.efficiency[1] = 0.94;
        in.budget[1] = 84;
        in.floor[1] = 41.1;
        in.portWatts[1] = 90;
        run(in, 1, 0, 95, 4);
        trunkBundle(in);
        for (int i = 2; i < ROWS; i++) {
            in.kind[i] = FlatNetwork.LOAD;
            in.draw[i] = 2.5 + 0.15 * i;
            in.portWatts[i] = 30;
            run(in, i, 1, 12 + 3 * i, 2);
        }
        return in;
    }

    private static void run(FlatNetwork in, int i, int parent, double metres, int pairs) {
        double ohms = Conductor.ohmsPerMetre(23, Conductor.COPPER_OHM_METRES, LAY) * metres * 2 / pairs;
        in.parent[i] = parent;
        in.cable[i] = ohms;
        in.cord[i] = 0.18;
        in.fixed[i] = 0.06;
        in.perMetre[i] = 1 / metres;
        in.rth[i] = BundleHeat.inAir(
                BundleHeat.diameter(0.006 * 0.006, BundleHeat.PACKING),
                1,
                BundleHeat.OPEN_FILM,
                BundleHeat.CORE_CONDUCTIVITY,
                1.25);
        in.heat[i] = in.rth[i] * ohms / metres;
    }

    private static void trunkBundle(FlatNetwork in) {
        int others = 6;
        double diameter = BundleHeat.diameter(7 * 0.006 * 0.006, BundleHeat.PACKING);
        in.rth[1] = BundleHeat.inAir(diameter, others + 1, BundleHeat.CONDUIT_FILM, BundleHeat.CORE_CONDUCTIVITY, 1.25);
        in.heat[1] = in.rth[1] * in.cable[1] * in.perMetre[1];
        double each = BundleHeat.wattsPerMetre(8, 0.2, Conductor.ohmsPerMetre(24, Conductor.COPPER_OHM_METRES, LAY));
        in.othersRise[1] = in.rth[1] * others * each;
        in.bundle[1] = 0;
    }

    /** The weather of a turn: another temperature each time. */
    static void warm(FlatNetwork in, int turn) {
        double celsius = -20 + (turn & 63);
        for (int i = 1; i < ROWS; i++) {
            in.ambient[i] = celsius;
        }
    }
}
