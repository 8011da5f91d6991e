package farwatt.language;

import farwatt.quantity.Unit;

/**
 * What the place of an expression asks for.
 *
 * @param type the type; {@link Type.Plain#UNKNOWN} if any will do
 * @param unit the unit that a bare number takes on; {@link Unit#ONE} if it takes none
 */
public record Wanted(Type type, Unit unit) {
    /** Anything at all. */
    public static final Wanted ANY = new Wanted(Type.Plain.UNKNOWN, Unit.ONE);

    /** A type that has no unit of its own. */
    public static Wanted a(Type type) {
        return new Wanted(type, Unit.ONE);
    }

    /** A quantity, temperature or gauge; a bare number takes the unit. */
    public static Wanted in(Unit unit) {
        return new Wanted(Type.of(unit), unit);
    }
}
