package farwatt.language;

import java.util.List;

/**
 * What a part of an expression comes to.
 *
 * @param type of its value
 * @param formula gives the value; of no use where the type is unknown
 * @param ways by which a row is reached, all that are possible; none for other types
 */
record Meaning(Type type, Formula formula, List<Way> ways) {
    /** Something is wrong, and was said. */
    static final Meaning WRONG = of(Type.Plain.UNKNOWN, new Nodes.Constant(0));

    static Meaning of(Type type, Formula formula) {
        return new Meaning(type, formula, List.of());
    }

    static Meaning constant(Type type, double value) {
        return of(type, new Nodes.Constant(value));
    }

    boolean isWrong() {
        return type == Type.Plain.UNKNOWN;
    }

    boolean isAmount() {
        return type instanceof Type.Amount;
    }

    boolean isTemperature() {
        return type == Type.Plain.TEMPERATURE;
    }
}
