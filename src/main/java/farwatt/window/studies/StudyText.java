package farwatt.window.studies;

import farwatt.quantity.Decimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What is filled in for one study. Immutable. */
final class StudyText {
    private final Map<StudyField, List<String>> lines;

    private StudyText(Map<StudyField, List<String>> lines) {
        this.lines = lines;
    }

    /** The examples of a kind. */
    static StudyText of(StudyKind kind, Examples examples) {
        Map<StudyField, List<String>> lines = new EnumMap<>(StudyField.class);
        kind.fields().forEach(field -> lines.put(field, List.copyOf(examples.lines(field))));
        return new StudyText(lines);
    }

    /** All lines of a field, blank ones among them. */
    List<String> lines(StudyField field) {
        return lines.getOrDefault(field, List.of());
    }

    /** The first line of a field. */
    String line(StudyField field) {
        return lines(field).isEmpty() ? "" : lines(field).get(0).strip();
    }

    /**
     * The same with decimal points. Where the person's decimal sign is the comma, one between two digits is a decimal
     * sign, and one with a space after it parts two values.
     */
    StudyText pointed(Decimal decimal) {
        if (decimal == Decimal.POINT) {
            return this;
        }
        Map<StudyField, List<String>> other = new EnumMap<>(StudyField.class);
        lines.forEach((field, all) ->
                other.put(field, all.stream().map(StudyText::pointed).toList()));
        return new StudyText(other);
    }

    private static String pointed(String line) {
        StringBuilder text = new StringBuilder(line);
        boolean quoted = false;
        for (int i = 0; i + 1 < text.length(); i++) {
            quoted ^= text.charAt(i) == '\'';
            boolean between = i > 0 && Character.isDigit(text.charAt(i - 1)) && Character.isDigit(text.charAt(i + 1));
            if (!quoted && text.charAt(i) == ',' && between) {
                text.setCharAt(i, '.');
            }
        }
        return text.toString();
    }

    StudyText with(StudyField field, int line, String text) {
        List<String> all = new ArrayList<>(lines(field));
        while (all.size() <= line) {
            all.add("");
        }
        all.set(line, text);
        Map<StudyField, List<String>> other = new EnumMap<>(lines);
        other.put(field, List.copyOf(all));
        return new StudyText(other);
    }
}
