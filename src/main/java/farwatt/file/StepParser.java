package farwatt.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import farwatt.plan.Cell;
import farwatt.plan.Row;
import farwatt.plan.Step;
import farwatt.plan.Table;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads one step of a scenario from its JSON text. What is not exactly a step is kept unread. */
final class StepParser {
    private final String json;
    /** The step's values as JSON texts; what was understood is taken out, the rest is kept. */
    private final Map<String, String> values = new LinkedHashMap<>();

    private boolean twice;

    StepParser(String json) {
        this.json = json;
    }

    Step read() throws IOException {
        try (JsonParser parser = Json.parser(json)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return new Step.Unread(json);
            }
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String key = parser.currentName();
                parser.nextToken();
                twice |= values.put(key, Json.copy(parser)) != null;
            }
        }
        long verbs = List.of("set", "add", "drop").stream()
                .filter(values::containsKey)
                .count();
        return verbs == 1 && !twice ? step().orElseGet(() -> new Step.Unread(json)) : new Step.Unread(json);
    }

    private Optional<Step> step() throws IOException {
        Map<String, String> rest = Collections.unmodifiableMap(values);
        if (values.containsKey("drop")) {
            return text("drop").map(id -> new Step.Drop(id, rest));
        }
        if (values.containsKey("add")) {
            Optional<String> table = text("add");
            Optional<Row> row = table.isEmpty() ? Optional.empty() : row(table.get());
            return row.map(r -> new Step.Add(table.get(), r, rest));
        }
        Optional<String> path = text("set");
        String to = values.remove("to");
        return path.isEmpty() || to == null ? Optional.empty() : Optional.of(new Step.Set(path.get(), cell(to), rest));
    }

    private Optional<Row> row(String table) throws IOException {
        String typed = values.remove("row");
        if (typed == null) {
            return Optional.empty();
        }
        String idKey = Table.of(table).map(Table::idKey).orElse("id");
        String id = "";
        List<String> names = new ArrayList<>();
        List<Cell> cells = new ArrayList<>();
        try (JsonParser parser = Json.parser(typed)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return Optional.empty();
            }
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String key = parser.currentName();
                JsonToken token = parser.nextToken();
                boolean isId = key.equals(idKey);
                if (names.contains(key) || (isId && (!id.isEmpty() || !isText(token)))) {
                    return Optional.empty();
                }
                if (isId) {
                    id = parser.getText();
                } else {
                    names.add(key);
                    cells.add(RowParser.cell(parser));
                }
            }
        }
        return id.isEmpty() ? Optional.empty() : Optional.of(Row.of(id, names, cells));
    }

    /** The text under a key, taken out. */
    private Optional<String> text(String key) throws IOException {
        String typed = values.remove(key);
        if (typed == null) {
            return Optional.empty();
        }
        try (JsonParser parser = Json.parser(typed)) {
            return isText(parser.nextToken()) ? Optional.of(parser.getText()) : Optional.empty();
        }
    }

    private static Cell cell(String typed) throws IOException {
        try (JsonParser parser = Json.parser(typed)) {
            parser.nextToken();
            return RowParser.cell(parser);
        }
    }

    private static boolean isText(JsonToken token) {
        return token == JsonToken.VALUE_STRING || token.isNumeric();
    }
}
