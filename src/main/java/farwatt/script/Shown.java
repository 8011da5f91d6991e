package farwatt.script;

import java.math.BigDecimal;
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
            return shortened(text(value));
        }
        return "an object";
    }

    private static String text(Value value) {
        if (value.isNumber() && value.fitsInDouble()) {
            return new BigDecimal(Double.toString(value.asDouble()))
                    .stripTrailingZeros()
                    .toPlainString();
        }
        return value.isString() ? value.asString() : value.toString();
    }

    /** A text that fits into a sentence. */
    static String shortened(String text) {
        return text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
    }
}
