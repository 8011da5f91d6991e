package farwatt.command;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import farwatt.intake.Mapping;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** A kept mapping as a small JSON file: headings to meanings, questions to answers. */
final class MappingFile {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final TypeReference<Map<String, Map<String, String>>> FORM = new TypeReference<>() {};

    private MappingFile() {}

    static Mapping read(Path file) throws Refusal {
        try {
            Map<String, Map<String, String>> parts = JSON.readValue(Files.readAllBytes(file), FORM);
            return new Mapping(parts.getOrDefault("columns", Map.of()), parts.getOrDefault("answers", Map.of()));
        } catch (IOException e) {
            throw Refusal.of(CommandCode.BAD_MAPPING, file);
        }
    }

    static void write(Path file, Mapping mapping) throws Refusal {
        Map<String, Map<String, String>> parts = new LinkedHashMap<>();
        parts.put("columns", mapping.columns());
        parts.put("answers", mapping.answers());
        try {
            Files.write(file, JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(parts));
        } catch (IOException e) {
            throw Refusal.of(CommandCode.BAD_OUTPUT, file, e.getClass().getSimpleName());
        }
    }
}
