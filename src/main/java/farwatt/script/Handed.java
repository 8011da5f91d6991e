package farwatt.script;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.graalvm.polyglot.Value;

/** Reads what a script hands over to a function; what does not fit is refused. */
final class Handed {
    private Handed() {}

    /** A text, not blank. */
    static String text(Value value, String what) {
        if (!value.isString() || value.asString().isBlank()) {
            throw ScriptFailure.of(ScriptCode.NO_TEXT, what, Shown.of(value));
        }
        return value.asString();
    }

    /** The names of an object's members, each a text. */
    static Set<String> keys(Value value, String what) {
        if (!value.hasMembers() || value.hasArrayElements() || value.canExecute() || value.isString()) {
            throw ScriptFailure.of(ScriptCode.NO_OBJECT, what, Shown.of(value));
        }
        return value.getMemberKeys();
    }

    /** An object with nothing but these members. */
    static void check(Value value, String what, List<String> known) {
        for (String key : keys(value, what)) {
            if (!known.contains(key)) {
                throw ScriptFailure.of(
                        ScriptCode.NO_OPTION, what, key, String.join(", ", known), Near.hint(key, known));
            }
        }
    }

    /** A member; empty if it was left out or is undefined. */
    static Optional<Value> member(Value value, String key) {
        return value.hasMember(key) ? Optional.of(value.getMember(key)).filter(v -> !v.isNull()) : Optional.empty();
    }

    static Value needed(Value value, String what, String key) {
        return member(value, key).orElseThrow(() -> ScriptFailure.of(ScriptCode.OPTION_MISSING, what, key));
    }

    /** A member that is a whole number; the usual one if it was left out. */
    static long whole(Value value, String key, long usual) {
        Optional<Value> member = member(value, key);
        if (member.isPresent() && !member.get().fitsInLong()) {
            throw ScriptFailure.of(ScriptCode.NOT_WHOLE, key, Shown.of(member.get()));
        }
        return member.map(Value::asLong).orElse(usual);
    }

    /** The elements of a list; something else counts as a list of itself. */
    static List<Value> list(Value value) {
        if (!value.hasArrayElements()) {
            return List.of(value);
        }
        List<Value> all = new ArrayList<>();
        for (long i = 0; i < value.getArraySize(); i++) {
            all.add(value.getArrayElement(i));
        }
        return all;
    }
}
