package farwatt.script;

import java.util.ArrayList;
import java.util.List;

/**
 * One message between the program and the process that runs scripts: a line of text, its parts apart by tabs.
 *
 * @param kind what it is
 * @param parts what it says; any texts
 */
record Line(String kind, List<String> parts) {
    Line {
        parts = List.copyOf(parts);
    }

    static Line of(String kind, String... parts) {
        return new Line(kind, List.of(parts));
    }

    String part(int at) {
        return parts.get(at);
    }

    /** As it goes over, without the line's end. */
    String text() {
        StringBuilder out = new StringBuilder(kind);
        for (String part : parts) {
            out.append('\t');
            escape(out, part);
        }
        return out.toString();
    }

    /** Takes a line apart that {@link #text} made. */
    static Line read(String text) {
        List<String> fields = new ArrayList<>();
        int from = 0;
        for (int at = text.indexOf('\t'); at >= 0; at = text.indexOf('\t', from)) {
            fields.add(unescaped(text.substring(from, at)));
            from = at + 1;
        }
        fields.add(unescaped(text.substring(from)));
        return new Line(fields.get(0), fields.subList(1, fields.size()));
    }

    private static void escape(StringBuilder out, String part) {
        for (int i = 0; i < part.length(); i++) {
            char c = part.charAt(i);
            switch (c) {
                case '\\' -> out.append("\\\\");
                case '\t' -> out.append("\\t");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                default -> out.append(c);
            }
        }
    }

    private static String unescaped(String part) {
        if (part.indexOf('\\') < 0) {
            return part;
        }
        StringBuilder out = new StringBuilder(part.length());
        for (int i = 0; i < part.length(); i++) {
            char c = part.charAt(i);
            if (c == '\\' && i + 1 < part.length()) {
                i++;
                c = switch (part.charAt(i)) {
                    case 't' -> '\t';
                    case 'n' -> '\n';
                    case 'r' -> '\r';
                    default -> '\\';
                };
            }
            out.append(c);
        }
        return out.toString();
    }
}
