package farwatt.quantity;

/**
 * A quantity as typed: one number with a unit, or feet and inches as one length.
 *
 * @param number the number's digits with a decimal point, as typed (for feet and inches the feet); a minus in front
 *     if it is below zero
 * @param inches digits of the inches, "" where there are none
 * @param unit the unit typed; {@link Unit#ONE} if none
 */
public record Typed(String number, String inches, Unit unit) {
    /** The inside value (SI, °C, AWG). */
    public double inside() {
        double first = Double.parseDouble(number);
        if (inches.isEmpty()) {
            return unit.toInside(first);
        }
        double whole = Math.abs(first) * 12 + Double.parseDouble(inches);
        return Math.copySign(whole * 254 / 10000, first);
    }

    /** The same with another unit, the number kept. */
    public Typed in(Unit other) {
        return new Typed(number, inches, other);
    }

    /** The same on the other side of zero. */
    public Typed negated() {
        return new Typed(number.startsWith("-") ? number.substring(1) : "-" + number, inches, unit);
    }

    /** Canonical text: decimal point, plain spelling of the unit, one space. */
    public String text() {
        if (!inches.isEmpty()) {
            return number + " ft " + inches + " in";
        }
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }
}
