package farwatt.window.studies;

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
