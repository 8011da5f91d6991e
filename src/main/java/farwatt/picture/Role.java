package farwatt.picture;

import farwatt.plan.Table;

/** What a node is in the circuit; the band at a card's left edge tells them apart. */
public enum Role {
    SOURCE("source", 12),
    SWITCH("edge switch", 7),
    DEVICE("device", 2);

    private final String word;
    private final double band;

    Role(String word, double band) {
        this.word = word;
        this.band = band;
    }

    static Role of(Table table) {
        return switch (table) {
            case SOURCES -> SOURCE;
            case SWITCHES -> SWITCH;
            default -> DEVICE;
        };
    }

    public String word() {
        return word;
    }

    /** Width of the band in units of the drawing. */
    public double band() {
        return band;
    }
}
