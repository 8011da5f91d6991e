package farwatt.quantity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The units a person may type, in their plain spelling and in signs (ohm or Ω, degC or °C). Money is the plan's
 * currency code; a code that is also a unit's spelling stays the unit. Immutable, safe for any thread.
 */
public final class Units {
    private static final Map<String, Unit> PLAIN = new HashMap<>();
    private static final Map<String, String> OTHER_SPELLINGS = Map.ofEntries(
            Map.entry("\u03a9", "ohm"),
            Map.entry("\u2126", "ohm"),
            Map.entry("m\u03a9", "mohm"),
            Map.entry("m\u2126", "mohm"),
            Map.entry("°C", "degC"),
            Map.entry("℃", "degC"),
            Map.entry("°F", "degF"),
            Map.entry("℉", "degF"),
            Map.entry("mm²", "mm2"),
            Map.entry("awg", "AWG"));
    /** In this order for {@link #plain}: the first that fits is shown. */
    private static final List<String> USUAL =
            List.of("", "W", "V", "A", "ohm", "m", "K", "s", "b/s", "Wh", "ohm/m", "W/m", "W/K");
    /** What people write instead of a unit's spelling, in small letters and without a plural s. */
    private static final Map<String, String> WORDS = words();

    static {
        Dimension watt = Dimension.WATT;
        Dimension energy = watt.times(Dimension.SECOND);
        add("W", watt, 1, 1);
        add("mW", watt, 1, 1000);
        add("kW", watt, 1000, 1);
        add("VA", watt, 1, 1);
        add("V", Dimension.VOLT, 1, 1);
        add("mV", Dimension.VOLT, 1, 1000);
        add("A", Dimension.AMPERE, 1, 1);
        add("mA", Dimension.AMPERE, 1, 1000);
        add("ohm", Dimension.OHM, 1, 1);
        add("mohm", Dimension.OHM, 1, 1000);
        add("mm", Dimension.METRE, 1, 1000);
        add("cm", Dimension.METRE, 1, 100);
        add("m", Dimension.METRE, 1, 1);
        add("km", Dimension.METRE, 1000, 1);
        add("in", Dimension.METRE, 254, 10000);
        add("ft", Dimension.METRE, 3048, 10000);
        add("K", Dimension.KELVIN, 1, 1);
        add("%", Dimension.NONE, 1, 100);
        Dimension rate = Dimension.BIT.over(Dimension.SECOND);
        add("b/s", rate, 1, 1);
        add("kb/s", rate, 1e3, 1);
        add("Mb/s", rate, 1e6, 1);
        add("Gb/s", rate, 1e9, 1);
        add("s", Dimension.SECOND, 1, 1);
        add("min", Dimension.SECOND, 60, 1);
        add("h", Dimension.SECOND, 3600, 1);
        add("Wh", energy, 3600, 1);
        add("kWh", energy, 3.6e6, 1);
        add("W/mK", watt.over(Dimension.METRE).over(Dimension.KELVIN), 1, 1);
        add("W/m2K", watt.over(Dimension.METRE.power(2)).over(Dimension.KELVIN), 1, 1);
        // international table BTU: 1055.05585262 J
        add("BTU/h", watt, 1055.05585262, 3600);
        PLAIN.put("degC", new Unit("degC", Dimension.KELVIN, 1, 1, Unit.Form.CELSIUS));
        PLAIN.put("degF", new Unit("degF", Dimension.KELVIN, 5, 9, Unit.Form.FAHRENHEIT));
        PLAIN.put("AWG", new Unit("AWG", Dimension.NONE, 1, 1, Unit.Form.AWG));
        PLAIN.put("mm2", new Unit("mm2", Dimension.NONE, 1, 1, Unit.Form.AREA));
    }

    private final String currency;

    /**
     * The units of a plan.
     *
     * @param currency the plan's currency code, such as EUR
     */
    public Units(String currency) {
        this.currency = currency;
    }

    private static Map<String, String> words() {
        Map<String, String> words = new HashMap<>();
        String[] pairs = {
            "watt=W volt=V ampere=A amp=A metre=m meter=m millimetre=mm millimeter=mm centimetre=cm centimeter=cm",
            "kilometre=km kilometer=km inch=in inche=in foot=ft feet=ft kelvin=K celsius=degC fahrenheit=degF c=degC",
            "f=degF °=degC deg=degC second=s sec=s minute=min mins=min hour=h hr=h percent=% pct=% bps=b/s bit/s=b/s",
            "kbps=kb/s kbit/s=kb/s mbps=Mb/s mbit/s=Mb/s gbps=Gb/s gbit/s=Gb/s b=b/s mb=Mb/s gb=Gb/s kb=kb/s",
            "sqmm=mm2 qmm=mm2 ga=AWG gauge=AWG btu=BTU/h r=ohm milliamp=mA milliampere=mA millivolt=mV milliohm=mohm",
            "kilowatt=kW ohm/kilometre=ohm/km"
        };
        for (String pair : String.join(" ", pairs).split(" ", -1)) {
            int is = pair.indexOf('=');
            words.put(pair.substring(0, is), pair.substring(is + 1));
        }
        return words;
    }

    private static void add(String symbol, Dimension dimension, double factor, double divisor) {
        PLAIN.put(symbol, new Unit(symbol, dimension, factor, divisor, Unit.Form.PLAIN));
    }

    public String currency() {
        return currency;
    }

    /** The unit of exactly this spelling; "" is the bare number. */
    public Optional<Unit> of(String spelling) {
        if (spelling.isEmpty()) {
            return Optional.of(Unit.ONE);
        }
        Optional<Unit> whole = single(spelling);
        // units such as Mb/s have a slash of their own, so each slash may be the one that divides
        for (int slash = spelling.indexOf('/');
                whole.isEmpty() && slash > 0;
                slash = spelling.indexOf('/', slash + 1)) {
            Optional<Unit> upper = single(spelling.substring(0, slash)).filter(Units::divides);
            Optional<Unit> lower = single(spelling.substring(slash + 1)).filter(Units::divides);
            if (upper.isPresent() && lower.isPresent()) {
                whole = Optional.of(upper.get().over(lower.get()));
            }
        }
        return whole;
    }

    /** The unit a strange spelling may stand for: other capitals, a full word, a plural, a sign. */
    public Optional<String> near(String spelling) {
        boolean sign = spelling.length() == 1 && Character.getType(spelling.charAt(0)) == Character.CURRENCY_SYMBOL;
        Optional<String> near = sign ? Optional.of(currency) : asSpelled(spelling);
        boolean plural = spelling.length() > 1 && spelling.endsWith("s");
        return near.isEmpty() && plural ? asSpelled(spelling.substring(0, spelling.length() - 1)) : near;
    }

    private Optional<String> asSpelled(String spelling) {
        return spellings().stream()
                .filter(spelling::equalsIgnoreCase)
                .findFirst()
                .or(() -> Optional.ofNullable(WORDS.get(spelling.toLowerCase(Locale.ROOT))));
    }

    /**
     * The unit in which a value of a dimension is shown when nothing else says one: W, V, A, ohm and so on, else a
     * product of these that can be read but not typed.
     */
    public Unit plain(Dimension dimension) {
        for (String usual : USUAL) {
            Unit unit = need(usual);
            if (unit.dimension().equals(dimension)) {
                return unit;
            }
        }
        return new Unit(dimension.symbol(currency), dimension, 1, 1, Unit.Form.PLAIN);
    }

    /** A unit that the program itself names; an unknown one is a bug. */
    public Unit need(String spelling) {
        return of(spelling).orElseThrow(() -> new IllegalArgumentException("no unit " + spelling));
    }

    private Optional<Unit> single(String spelling) {
        String plain = OTHER_SPELLINGS.getOrDefault(spelling, spelling);
        Unit known = PLAIN.get(plain);
        if (known == null && plain.equals(currency) && !currency.isEmpty()) {
            known = new Unit(currency, Dimension.MONEY, 1, 1, Unit.Form.PLAIN);
        }
        return Optional.ofNullable(known);
    }

    private static boolean divides(Unit unit) {
        return unit.form() == Unit.Form.PLAIN;
    }

    /** Every single unit's plain spelling, for completion and near names. */
    public List<String> spellings() {
        List<String> all = new ArrayList<>(PLAIN.keySet());
        all.add(currency);
        all.sort(null);
        return all;
    }

    /** Units of the same measure as the one given, for choosing how to show a value. */
    public List<Unit> alike(Unit unit) {
        List<Unit> all = new ArrayList<>();
        for (String spelling : spellings()) {
            single(spelling).filter(unit::sameMeasure).ifPresent(all::add);
        }
        return all;
    }
}
