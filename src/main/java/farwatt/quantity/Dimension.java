package farwatt.quantity;

import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The dimension of a quantity as whole powers of seven bases. A watt is a volt times an ampere; a percentage and a
 * count have no dimension.
 */
public record Dimension(int volt, int ampere, int metre, int kelvin, int second, int bit, int money) {
    public static final Dimension NONE = new Dimension(0, 0, 0, 0, 0, 0, 0);
    public static final Dimension VOLT = new Dimension(1, 0, 0, 0, 0, 0, 0);
    public static final Dimension AMPERE = new Dimension(0, 1, 0, 0, 0, 0, 0);
    public static final Dimension METRE = new Dimension(0, 0, 1, 0, 0, 0, 0);
    public static final Dimension KELVIN = new Dimension(0, 0, 0, 1, 0, 0, 0);
    public static final Dimension SECOND = new Dimension(0, 0, 0, 0, 1, 0, 0);
    public static final Dimension BIT = new Dimension(0, 0, 0, 0, 0, 1, 0);
    public static final Dimension MONEY = new Dimension(0, 0, 0, 0, 0, 0, 1);
    public static final Dimension WATT = VOLT.times(AMPERE);
    public static final Dimension OHM = VOLT.over(AMPERE);

    public Dimension times(Dimension o) {
        return new Dimension(
                volt + o.volt,
                ampere + o.ampere,
                metre + o.metre,
                kelvin + o.kelvin,
                second + o.second,
                bit + o.bit,
                money + o.money);
    }

    public Dimension over(Dimension o) {
        return times(o.power(-1));
    }

    /** Every base's power times a whole number. */
    public Dimension power(int n) {
        return new Dimension(volt * n, ampere * n, metre * n, kelvin * n, second * n, bit * n, money * n);
    }

    public boolean isNone() {
        return equals(NONE);
    }

    /** The dimension whose square this is, if there is one. */
    public Optional<Dimension> root() {
        int odd = (volt | ampere | metre | kelvin | second | bit | money) & 1;
        return odd != 0
                ? Optional.empty()
                : Optional.of(
                        new Dimension(volt / 2, ampere / 2, metre / 2, kelvin / 2, second / 2, bit / 2, money / 2));
    }

    /** The largest power of a base, without its sign. */
    public int highest() {
        return IntStream.of(volt, ampere, metre, kelvin, second, bit, money)
                .map(Math::abs)
                .max()
                .orElse(0);
    }

    /** The coherent unit as people read it, watts and ohms where they go in: {@code W/m^2}; "" for none. */
    String symbol(String currency) {
        int watt = Integer.signum(volt) == Integer.signum(ampere) ? least(volt, ampere) : 0;
        int ohm = Integer.signum(volt) == -Integer.signum(ampere) ? least(volt, ampere) : 0;
        String[] names = {"W", "ohm", "V", "A", "m", "K", "s", "b", currency};
        int[] powers = {watt, ohm, volt - watt - ohm, ampere - watt + ohm, metre, kelvin, second, bit, money};
        StringBuilder over = new StringBuilder();
        StringBuilder under = new StringBuilder();
        for (int i = 0; i < powers.length; i++) {
            if (powers[i] > 0) {
                over.append(' ').append(factor(names[i], powers[i]));
            } else if (powers[i] < 0) {
                under.append('/').append(factor(names[i], -powers[i]));
            }
        }
        if (over.isEmpty() && !under.isEmpty()) {
            over.append(" 1");
        }
        return over.toString().strip() + under;
    }

    private static String factor(String name, int power) {
        return power == 1 ? name : name + "^" + power;
    }

    /** The one nearer to zero, with the sign of the first. */
    private static int least(int first, int other) {
        return Integer.signum(first) * Math.min(Math.abs(first), Math.abs(other));
    }
}
