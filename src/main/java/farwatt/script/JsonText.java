package farwatt.script;

import farwatt.engine.Value;
import farwatt.language.Type;

/** Writes JSON for results that become plain data of a script; there is no reader. */
final class JsonText {
    private final StringBuilder out = new StringBuilder();
    private boolean first = true;

    JsonText open(char bracket) {
        comma();
        out.append(bracket);
        first = true;
        return this;
    }

    JsonText close(char bracket) {
        out.append(bracket);
        first = false;
        return this;
    }

    /** The key of what comes next. */
    JsonText key(String key) {
        comma();
        quoted(key);
        out.append(':');
        first = true;
        return this;
    }

    JsonText text(String text) {
        comma();
        quoted(text);
        return this;
    }

    JsonText text(String key, String text) {
        return key(key).text(text);
    }

    /** A number; none where it is not finite. */
    JsonText number(double number) {
        comma();
        if (Double.isFinite(number)) {
            out.append(number);
        } else {
            out.append("null");
        }
        return this;
    }

    JsonText number(String key, double number) {
        return key(key).number(number);
    }

    JsonText bool(boolean yes) {
        comma();
        out.append(yes);
        return this;
    }

    /** A value as scripts see it: SI numbers, texts, true or false, null where there is none. */
    JsonText value(Value value) {
        if (!value.isPresent()) {
            return number(Double.NaN);
        }
        if (value.type() == Type.Plain.YES_NO) {
            return bool(value.inside() != 0);
        }
        return value.isNumber() ? number(value.inside()) : text(value.words());
    }

    /** Text that is JSON already. */
    JsonText raw(String json) {
        comma();
        out.append(json);
        return this;
    }

    private void comma() {
        if (!first) {
            out.append(',');
        }
        first = false;
    }

    private void quoted(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                out.append(String.format(java.util.Locale.ROOT, "\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
