package farwatt.intake;

import java.util.Locale;
import java.util.Optional;

/** What a column of a customer's list can mean to a plan. The words are those of a kept mapping. */
public enum Meaning {
    NAME(Measure.NONE),
    KIND(Measure.NONE),
    QUANTITY(Measure.NONE),
    /** A running number of the lines; not taken. */
    INDEX(Measure.NONE),
    ZONE(Measure.NONE),
    /** Most watts at the device's network input. */
    WATTS(Measure.POWER),
    WATTS_TYPICAL(Measure.POWER),
    WATTS_START(Measure.POWER),
    /** Watts behind a converter. */
    LOAD(Measure.POWER),
    EFFICIENCY(Measure.SHARE),
    CURRENT(Measure.CURRENT),
    VOLTS(Measure.VOLTS),
    /** A power class or type in words. */
    CLASS(Measure.NONE),
    /** The whole run, cords included. */
    LENGTH(Measure.LENGTH),
    CORD_LENGTH(Measure.LENGTH),
    /** The run without its cords. */
    FIXED_LENGTH(Measure.LENGTH),
    /** The switch or source that feeds the device. */
    FEEDER(Measure.NONE),
    PORT(Measure.NONE),
    GAUGE(Measure.GAUGE),
    CATEGORY(Measure.NONE),
    SHEATH(Measure.NONE),
    /** Something about the cable that its content tells apart. */
    CABLE(Measure.NONE),
    SERIAL(Measure.NONE),
    MAC(Measure.NONE),
    ASSET(Measure.NONE),
    NOTE(Measure.NONE),
    BITRATE(Measure.RATE),
    INGRESS(Measure.NONE),
    PRICE(Measure.MONEY),
    COLDEST_RATED(Measure.TEMPERATURE),
    HOTTEST_RATED(Measure.TEMPERATURE),
    PRIORITY(Measure.NONE),
    /** Whether a port takes power in or gives it out. */
    DIRECTION(Measure.NONE),
    /** Read on site, at the feeding end of a run. */
    SEEN_VOLTS_NEAR(Measure.VOLTS),
    /** Read on site, at the far end of a run. */
    SEEN_VOLTS_FAR(Measure.VOLTS),
    SEEN_AMPS(Measure.CURRENT),
    SEEN_WATTS(Measure.POWER),
    SEEN_TEMP(Measure.TEMPERATURE),
    /** Kept as a column of the person's own. */
    OWN(Measure.NONE),
    LEAVE_OUT(Measure.NONE);

    private final Measure measure;

    Meaning(Measure measure) {
        this.measure = measure;
    }

    Measure measure() {
        return measure;
    }

    /** The word in a kept mapping. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The meaning of a word of a kept mapping. */
    public static Optional<Meaning> of(String word) {
        for (Meaning meaning : values()) {
            if (meaning.word().equals(word)) {
                return Optional.of(meaning);
            }
        }
        return Optional.empty();
    }

    /** Identifiers are text byte for byte. */
    boolean isIdentifier() {
        return this == SERIAL || this == MAC || this == ASSET;
    }

    /** Readings of a run that was built. */
    boolean isReading() {
        return switch (this) {
            case SEEN_VOLTS_NEAR, SEEN_VOLTS_FAR, SEEN_AMPS, SEEN_WATTS, SEEN_TEMP -> true;
            default -> false;
        };
    }

    /** True when a column of numbers is expected. */
    boolean isMeasured() {
        return measure != Measure.NONE && this != GAUGE;
    }
}
