package farwatt.quantity;

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
}
