package farwatt.review;

import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import java.util.List;

/** Figures and lists as sentences have them. Immutable, safe for any thread. */
final class Say {
    private static final Units UNITS = new Units("EUR");
    static final Unit W = UNITS.need("W");
    static final Unit VA = UNITS.need("VA");
    static final Unit V = UNITS.need("V");
    static final Unit A = UNITS.need("A");
    static final Unit MA = UNITS.need("mA");
    static final Unit M = UNITS.need("m");
    static final Unit K = UNITS.need("K");
    static final Unit CELSIUS = UNITS.need("degC");
    static final Unit SHARE = UNITS.need("%");
    static final Unit RATE = UNITS.need("Mb/s");
    static final Unit OHM = UNITS.need("ohm");
    static final Unit ONE = Unit.ONE;

    private static final int FEW = 3;
    private static final int NAMED = 4;

    private Say() {}

    /** One figure; three digits are enough where nothing is compared. */
    static String of(double inside, Unit unit) {
        return sign(Show.text(inside, unit, FEW));
    }

    /** A figure as a cell holds it: whole, in the unit's plain spelling. */
    static String cell(double inside, Unit unit) {
        return Show.exact(inside, unit);
    }

    /** Two figures that are compared, with enough digits to differ when they do. */
    static String[] apart(double one, double other, Unit unit) {
        String[] both = Show.apart(one, other, unit);
        return new String[] {sign(both[0]), sign(both[1])};
    }

    static String sign(String text) {
        return text.replace(" degC", " °C").replace(" ohm", " Ω");
    }

    /** {@code a}, {@code a and b}, {@code a, b and c}; of many the first few and how many more. */
    static String list(List<String> names) {
        int count = names.size();
        if (count > NAMED) {
            String some = String.join(", ", names.subList(0, NAMED - 1));
            return Messages.text(Phrase.AND_MORE, some, count - NAMED + 1);
        }
        if (count < 2) {
            return String.join("", names);
        }
        String but = String.join(", ", names.subList(0, count - 1));
        return Messages.text(Phrase.AND, but, names.get(count - 1));
    }
}
