package farwatt.intake;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A unit as customers write it.
 *
 * @param symbol the plan's spelling
 * @param measure what it measures
 * @param factor to the measure's base (W, A, V; lengths stay in their unit: 1)
 */
record ListUnit(String symbol, Measure measure, BigDecimal factor) {
    static final ListUnit WATT = new ListUnit("W", Measure.POWER, BigDecimal.ONE);
    static final ListUnit METRE = new ListUnit("m", Measure.LENGTH, BigDecimal.ONE);
    static final ListUnit AMPERE = new ListUnit("A", Measure.CURRENT, BigDecimal.ONE);
    static final ListUnit VOLT = new ListUnit("V", Measure.VOLTS, BigDecimal.ONE);

    private static final Map<String, ListUnit> KNOWN = new HashMap<>();

    static {
        put("W", Measure.POWER, "1", "w watt watts wat watów vatios vatio va w_el");
        put("W", Measure.POWER, "0.001", "mw milliwatt milliwatts");
        put("W", Measure.POWER, "1000", "kw kilowatt kilowatts kva");
        put("A", Measure.CURRENT, "1", "a amp amps ampere amperes ampère ampères amperio amperios");
        put("A", Measure.CURRENT, "0.001", "ma milliamp milliamps");
        put("V", Measure.VOLTS, "1", "v volt volts vdc vac vcc voltios dcv");
        put(
                "m",
                Measure.LENGTH,
                "1",
                "m mtr mtrs meter meters metre metres mètre mètres metri metro metros lfm lm rm mb");
        put("ft", Measure.LENGTH, "1", "ft feet foot fuss fuß pies pieds piedi voet stopy ' ′");
        put("in", Measure.LENGTH, "1", "in inch inches zoll \" ″");
        put("km", Measure.LENGTH, "1", "km");
        put("cm", Measure.LENGTH, "1", "cm");
        put("mm", Measure.LENGTH, "1", "mm");
        put("degC", Measure.TEMPERATURE, "1", "°c ℃ degc c celsius");
        put("degF", Measure.TEMPERATURE, "1", "°f ℉ degf f fahrenheit");
        put("%", Measure.SHARE, "1", "% percent prozent");
        put("Mb/s", Measure.RATE, "1", "mb/s mbps mbit/s mbit");
        put("Gb/s", Measure.RATE, "1", "gb/s gbps gbit/s gbit");
        put("kb/s", Measure.RATE, "1", "kb/s kbps kbit/s kbit");
        put("AWG", Measure.GAUGE, "1", "awg ga");
        put("mm2", Measure.GAUGE, "1", "mm² mm2 qmm");
        put("money", Measure.MONEY, "1", "€ eur euro euros $ usd £ gbp chf pln zł");
    }

    private static void put(String symbol, Measure measure, String factor, String spellings) {
        for (String spelling : spellings.split(" ", -1)) {
            KNOWN.put(spelling, new ListUnit(symbol, measure, new BigDecimal(factor)));
        }
    }

    /** The unit of a word as a customer wrote it. */
    static Optional<ListUnit> of(String word) {
        return Optional.ofNullable(KNOWN.get(Spelling.lower(word)));
    }

    /** A value in the measure's base unit. */
    BigDecimal base(BigDecimal value) {
        return value.multiply(factor);
    }
}
