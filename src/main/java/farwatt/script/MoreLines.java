package farwatt.script;

/**
 * Tells whether text typed at the console is whole or goes on in the next line: open brackets, texts over several lines
 * and comments, or an operator at the end. Goes by signs alone, so that it answers at once; any thread.
 */
public final class MoreLines {
    private static final String OPERATORS = "=+-*/%&|^<>?:,.!~";

    private final String text;
    private int at;
    private int depth;
    /** The last sign that counts; a blank before the first. */
    private char last = ' ';

    private MoreLines(String text) {
        this.text = text;
    }

    /** True if the text can be run as it is, mistakes included. */
    public static boolean isComplete(String text) {
        return new MoreLines(text).isWhole();
    }

    private boolean isWhole() {
        while (at < text.length()) {
            if (!step()) {
                return false;
            }
        }
        boolean counts = text.endsWith("++") || text.endsWith("--");
        return depth <= 0 && (counts || OPERATORS.indexOf(last) < 0);
    }

    /** Goes past one sign, text or comment; false if it has no end. */
    private boolean step() {
        char c = text.charAt(at);
        if (text.startsWith("//", at)) {
            int end = text.indexOf('\n', at);
            at = end < 0 ? text.length() : end;
            return true;
        }
        if (text.startsWith("/*", at)) {
            int end = text.indexOf("*/", at + 2);
            at = end + 2;
            return end >= 0;
        }
        if (c == '\'' || c == '"') {
            last = c;
            quoted(c);
            return true;
        }
        if (c == '`') {
            last = c;
            return template();
        }
        if (c == '/' && (OPERATORS + "([{;} ").indexOf(last) >= 0) {
            last = 'x';
            quoted(c);
            return true;
        }
        if ("([{".indexOf(c) >= 0) {
            depth++;
        } else if (")]}".indexOf(c) >= 0) {
            depth--;
        }
        if (!Character.isWhitespace(c)) {
            last = c;
        }
        at++;
        return true;
    }

    /** Past a text that ends on its own line; one without an end is a mistake, not half a text. */
    private void quoted(char quote) {
        at++;
        while (at < text.length() && text.charAt(at) != quote && text.charAt(at) != '\n') {
            at += text.charAt(at) == '\\' ? 2 : 1;
        }
        at = Math.min(at + 1, text.length());
    }

    private boolean template() {
        at++;
        while (at < text.length() && text.charAt(at) != '`') {
            if (text.charAt(at) == '\\') {
                at += 2;
            } else if (text.startsWith("${", at)) {
                at += 2;
                if (!hole()) {
                    return false;
                }
            } else {
                at++;
            }
        }
        boolean closed = at < text.length();
        at++;
        return closed;
    }

    /** Past what stands in a hole of a template, up to its closing brace. */
    private boolean hole() {
        int outside = depth;
        depth++;
        while (at < text.length() && depth > outside) {
            if (!step()) {
                return false;
            }
        }
        return depth == outside;
    }
}
