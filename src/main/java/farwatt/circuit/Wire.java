package farwatt.circuit;

/**
 * One run between fixed surroundings: its ohms and temperature as functions of its own current.
 *
 * <p>With u = I² and x the kelvins above 20 °C, the heat balance x = base + warm·u·(1 + alpha·x) + others·x has the
 * closed form x = (base + warm·u)/(room − pull·u) with pull = warm·alpha. Every part of the loop is linear in x, so
 * ohms = (constant + linear·u)/(room − pull·u): one division for each current tried. The denominator reaching zero is
 * thermal runaway. Both ohms and drop are convex in the current, which makes every search below a monotone Newton.
 *
 * <p>A scratch object of one {@link Solver}, loaded anew for each run.
 */
final class Wire {

    /** °C at which resistances are given. */
    static final double REFERENCE = 20;

    /** °C that no wire may reach. */
    static final double HOTTEST = 200;

    private static final double SPAN = HOTTEST - REFERENCE;

    /** A few units in the last place: what rounding alone may do to a balance of watts. */
    private static final double ROUNDING = 0x1p-50;

    /** An error of this relative size no longer shows in the last bit. */
    private static final double NEGLIGIBLE = 0x1p-54;

    private static final int TOO_MANY = 100_000;
    private static final int HALVINGS = 100;

    private double base;
    private double room;
    private double warm;
    private double pull;
    private double constant;
    private double linear;

    /** Takes over run i, warmed by itself and by its bundle. */
    void load(FlatNetwork in, int i, double restRise) {
        load(in, i, restRise, in.heat[i]);
    }

    /** Takes over run i as if neither it nor the network's other runs gave off heat. */
    void loadUnheated(FlatNetwork in, int i) {
        load(in, i, 0, 0);
    }

    private void load(FlatNetwork in, int i, double restRise, double heat) {
        double alpha = in.alpha[i];
        double alphaCord = in.alphaCord[i];
        double cable = in.cable[i];
        double cord = in.cord[i];
        double fixed = in.fixed[i];
        double others = in.othersRise[i];
        base = in.ambient[i] - REFERENCE + others + restRise;
        room = 1 - others * in.alphaOthers[i];
        warm = heat;
        pull = heat * alpha;
        constant = cable * (room + alpha * base) + cord * (room + alphaCord * base) + fixed * room;
        linear = cord * (alphaCord * warm - pull) - fixed * pull;
    }

    /** Whether a temperature exists at that current at all. */
    boolean bears(double amps) {
        return room - pull * amps * amps > 0;
    }

    /** Loop ohms at that current. */
    double ohms(double amps) {
        double square = amps * amps;
        return ohms(square, feedback(square));
    }

    /** How much heat feeds on itself at that squared current: 1 for not at all; not positive without a balance. */
    double feedback(double square) {
        return 1 / (room - pull * square);
    }

    /** Loop ohms at that squared current, its feedback known. */
    double ohms(double square, double feedback) {
        return (constant + linear * square) * feedback;
    }

    /** °C at that squared current, its feedback known. */
    double celsius(double square, double feedback) {
        return REFERENCE + (base + warm * square) * feedback;
    }

    /** Change of the drop I·R(I) per ampere. */
    double dropSlope(double amps) {
        double square = amps * amps;
        double under = room - pull * square;
        double over = constant + linear * square;
        return (over + 2 * square * (linear + pull * over / under)) / under;
    }

    /** Whether the loop has no resistance at all. */
    boolean bare() {
        return constant == 0 && linear == 0;
    }

    /**
     * The smaller current at which fixed volts bring watts to the far end, or not a number when there is none.
     *
     * @param from a current known not to lie above the answer, or 0
     */
    double amps(double volts, double watts, double from) {
        if (!(room > 0)) {
            return Double.NaN;
        }
        if (watts <= 0) {
            return 0;
        }
        if (warm == 0) {
            return coldAmps(volts, watts, constant / room);
        }
        return heatedAmps(volts, watts, from > 0 ? from : firstAmps(volts, watts));
    }

    /** 2·P/(V + √(V² − 4·R·P)): the upper root of the far volts. */
    private static double coldAmps(double volts, double watts, double ohms) {
        double square = volts * volts;
        double quarters = 4 * ohms;
        double product = quarters * watts;
        // the rounding of the product, given back: near the cliff the difference is all that counts
        double left = Math.fma(volts, volts, -product) - Math.fma(quarters, watts, -product);
        if (left < 0) {
            return left >= -ROUNDING * square ? 2 * watts / volts : Double.NaN;
        }
        return 2 * watts / (volts + Math.sqrt(left));
    }

    /**
     * A current below the answer: the series of the closed form, cut off, at ohms that are too small. All its terms are
     * positive, so it cannot overshoot. The ohms are the tangent's at no current (they are convex in the square), taken
     * at a current that is too small as well.
     */
    private double firstAmps(double volts, double watts) {
        double perRoom = 1 / room;
        double perVolt = 1 / volts;
        double least = constant * perRoom;
        double slope = (linear + pull * least) * perRoom;
        double amps = watts * perVolt;
        double without = amps * (1 + least * amps * perVolt);
        double share = (least + slope * without * without) * amps * perVolt;
        if (!(share <= 0.25)) {
            return Double.NaN;
        }
        return amps * (1 + share * (1 + share * (2 + share * 5)));
    }

    /**
     * Newton on V·I − I²·R(I) − P, which is concave: from the left it climbs to the smaller root, and a slope that is
     * no longer positive, or a current without a temperature, proves that there is none. All is multiplied by the
     * denominator of R, which leaves one division a step.
     */
    private double heatedAmps(double volts, double watts, double from) {
        double amps = from;
        for (int turn = 0; turn < TOO_MANY; turn++) {
            double square = amps * amps;
            double under = room - pull * square;
            double over = constant + linear * square;
            double missing = (watts - volts * amps) * under + square * over;
            double slope = volts * under * under - 2 * amps * ((over + linear * square) * under + pull * square * over);
            if (!(under > 0)) {
                return Double.NaN;
            }
            if (missing <= ROUNDING / 2 * volts * amps * under) {
                return amps;
            }
            if (!(slope > 0)) {
                return Double.NaN;
            }
            double step = missing * under / slope;
            amps += step;
            // what the next step would be, by the curvature
            if (4 * over * step * step <= NEGLIGIBLE * amps * slope * under) {
                return amps;
            }
        }
        throw new IllegalStateException("a run of " + constant + " ohm did not settle at " + watts + " W");
    }

    /** The current that heats the wire to the hottest temperature allowed; infinite when none does. */
    double hottestAmps() {
        double spare = SPAN * room - base;
        return spare <= 0 ? 0 : Math.sqrt(spare / (warm + SPAN * pull));
    }

    /**
     * The current whose drop is so many volts: Newton from above on a convex, rising function.
     *
     * @param drop volts
     * @param from a current with at least that drop; infinite only when the run does not warm itself
     */
    double ampsForDrop(double drop, double from) {
        if (drop <= 0) {
            return 0;
        }
        if (warm == 0) {
            return drop * room / constant;
        }
        double amps = from;
        for (int turn = 0; turn < TOO_MANY; turn++) {
            double step = (amps * ohms(amps) - drop) / dropSlope(amps);
            if (!(step > ROUNDING * amps)) {
                return amps;
            }
            amps -= step;
        }
        throw new IllegalStateException("a run of " + constant + " ohm did not settle at " + drop + " V");
    }

    /** The most watts that fixed volts can bring to the far end with the wire below the hottest temperature. */
    double mostWatts(double volts) {
        if (!(room > 0)) {
            return 0;
        }
        if (bare()) {
            return Double.POSITIVE_INFINITY;
        }
        double low = 0;
        double high = Math.min(hottestAmps(), volts * room / constant);
        if (gain(volts, high) < 0) {
            for (int halving = 0; halving < HALVINGS; halving++) {
                double middle = (low + high) / 2;
                if (gain(volts, middle) < 0) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
        }
        return high * (volts - high * ohms(high));
    }

    /** Change of the watts at the far end per ampere. */
    private double gain(double volts, double amps) {
        return volts - amps * ohms(amps) - amps * dropSlope(amps);
    }
}
