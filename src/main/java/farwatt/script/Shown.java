package farwatt.script;

import org.graalvm.polyglot.Value;

/** What a sentence calls a thing that a script handed over. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    static String of(Value value) {
        if (value.isNull()) {
            return value.toString();
        }
        if (value.canExecute()) {
            return "a function";
        }
        if (value.hasArrayElements()) {
            return "a list";
        }
        if (value.isNumber() && value.fitsInDouble() && !Double.isFinite(value.asDouble())) {
            return Double.isNaN(value.asDouble()) ? "what is no number" : "an endless number";
        }
        if (value.isString() || value.isNumber() || value.isBoolean()) {
            String text = value.isString() ? value.asString() : value.toString();
            return text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
        }
        return "an object";
    }
}
