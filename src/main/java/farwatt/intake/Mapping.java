package farwatt.intake;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How a customer's list is to be read: what each column means and how open questions were answered. Plain texts, so
 * that it can be kept in a file and used for the customer's next list.
 *
 * @param columns heading as shown → word of its {@link Meaning}
 * @param answers key of a {@link Question} → the choice
 */
public record Mapping(Map<String, String> columns, Map<String, String> answers) {
    /** Nothing laid down: everything is found out from the list. */
    public static final Mapping NONE = new Mapping(Map.of(), Map.of());

    public Mapping {
        columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    }

    /** The same with another meaning for one column. */
    public Mapping withColumn(String heading, Meaning meaning) {
        Map<String, String> changed = new LinkedHashMap<>(columns);
        changed.put(heading, meaning.word());
        return new Mapping(changed, answers);
    }

    /** The same with an answer to one question. */
    public Mapping withAnswer(String key, String choice) {
        Map<String, String> changed = new LinkedHashMap<>(answers);
        changed.put(key, choice);
        return new Mapping(columns, changed);
    }

    /** What is laid down for a heading; spelling is compared without regard to case, marks and blanks. */
    Optional<Meaning> meaning(String heading) {
        String wanted = Spelling.fold(heading);
        for (Map.Entry<String, String> entry : columns.entrySet()) {
            if (Spelling.fold(entry.getKey()).equals(wanted)) {
                return Meaning.of(entry.getValue());
            }
        }
        return Optional.empty();
    }

    /** The answer to a question, or what is usual. */
    String answer(String key, String usual) {
        return answers.getOrDefault(key, usual);
    }
}
