package farwatt.picture;

import java.util.List;

/** How a run's line is broken up: the more of the volts stay in the run, the more gaps the line has. */
public enum Pattern {
    SOLID("under 2 %", List.of()),
    LONG_DASH("2 to 5 %", List.of(16.0, 4.0)),
    DASH("5 to 10 %", List.of(8.0, 4.0)),
    DOT("10 % or more", List.of(2.5, 4.0)),
    /** The share is not known. */
    UNKNOWN("not known", List.of(1.5, 7.0));

    private final String words;

    @SuppressWarnings("ImmutableEnumChecker") // made once, never changed
    private final List<Double> dashes;

    Pattern(String words, List<Double> dashes) {
        this.words = words;
        this.dashes = dashes;
    }

    /**
     * The pattern for a share of volts lost; our own steps.
     *
     * @param share 0 to 1, NaN where it is not known
     */
    public static Pattern of(double share) {
        if (Double.isNaN(share)) {
            return UNKNOWN;
        }
        if (share < 0.02) {
            return SOLID;
        }
        return share < 0.05 ? LONG_DASH : share < 0.1 ? DASH : DOT;
    }

    /** The share it stands for. */
    public String words() {
        return words;
    }

    /** Lengths drawn and left out in turn; empty for a whole line. Ends are cut straight. */
    public List<Double> dashes() {
        return dashes;
    }
}
