package farwatt.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a customer's list was read, kept for the next one: in the plan under a name, or in a small file of its own.
 * Immutable, safe for any thread.
 *
 * @param name what a person calls it; "" in a file of its own
 * @param columns heading → what it means
 * @param answers question → what was answered
 */
public record KeptMapping(String name, Map<String, String> columns, Map<String, String> answers) {
    private static final String PART = "mappings";
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final TypeReference<Map<String, Map<String, String>>> FORM = new TypeReference<>() {};
    private static final TypeReference<List<Map<String, Object>>> LIST = new TypeReference<>() {};

    public KeptMapping {
        columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    }

    /** Those that a plan keeps; what is none of ours in that part of the file is passed over. */
    public static List<KeptMapping> of(Plan plan) {
        try {
            List<KeptMapping> all = new ArrayList<>();
            for (Map<String, Object> one : JSON.readValue(plan.rest().getOrDefault(PART, "[]"), LIST)) {
                if (one.get("name") instanceof String name) {
                    all.add(new KeptMapping(name, texts(one.get("columns")), texts(one.get("answers"))));
                }
            }
            return all;
        } catch (JsonProcessingException e) {
            return List.of();
        }
    }

    private static Map<String, String> texts(Object part) {
        Map<String, String> texts = new LinkedHashMap<>();
        if (part instanceof Map<?, ?> map) {
            map.forEach((key, value) -> texts.put(String.valueOf(key), String.valueOf(value)));
        }
        return texts;
    }

    /** The one that a plan keeps under a name. */
    public static Optional<KeptMapping> of(Plan plan, String name) {
        return of(plan).stream().filter(kept -> kept.name().equals(name)).findFirst();
    }

    /** The change that keeps this one in a plan, in place of the one of the same name. */
    public Change in(Plan plan) {
        List<KeptMapping> kept = new ArrayList<>(of(plan));
        kept.removeIf(one -> one.name().equals(name));
        kept.add(this);
        List<Map<String, Object>> form = new ArrayList<>();
        for (KeptMapping one : kept) {
            Map<String, Object> parts = new LinkedHashMap<>();
            parts.put("name", one.name());
            parts.put("columns", one.columns());
            parts.put("answers", one.answers());
            form.add(parts);
        }
        try {
            return new Change.SetRest(PART, Optional.of(JSON.writeValueAsString(form)));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("texts can always be written", e);
        }
    }

    /**
     * Reads one from a file of its own.
     *
     * @throws Refusal if it is none that this program kept
     */
    public static KeptMapping read(Path file) throws Refusal {
        try {
            Map<String, Map<String, String>> parts = JSON.readValue(Files.readAllBytes(file), FORM);
            return new KeptMapping(
                    "", parts.getOrDefault("columns", Map.of()), parts.getOrDefault("answers", Map.of()));
        } catch (IOException | RuntimeException e) {
            throw Refusal.of(FileCode.NO_MAPPING, file);
        }
    }

    /**
     * Writes it to a file of its own.
     *
     * @throws Refusal if it cannot be written
     */
    public void write(Path file) throws Refusal {
        Map<String, Map<String, String>> parts = new LinkedHashMap<>();
        parts.put("columns", columns);
        parts.put("answers", answers);
        try {
            Files.write(file, JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(parts));
        } catch (IOException e) {
            throw Refusal.of(FileCode.MAPPING_NOT_WRITTEN, file);
        }
    }
}
