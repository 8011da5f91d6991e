package farwatt.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import farwatt.plan.Cell;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Level;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads rows: an id and cells as they stand. */
final class RowParser {
    private final JsonParser parser;
    private final PlanParts parts;

    private String id = "";
    private List<String> names = new ArrayList<>();
    private List<Cell> cells = new ArrayList<>();

    RowParser(JsonParser parser, PlanParts parts) {
        this.parser = parser;
        this.parts = parts;
    }

    /** The list at whose start the parser stands. */
    void table(Table table) throws IOException {
        Row last = Row.of("");
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (parser.currentToken() == JsonToken.START_OBJECT) {
                start();
                object(table.key(), Optional.of(table.idKey()), parts.next(table));
                last = Row.of(id, names, cells, last);
                parts.add(table, last);
            } else {
                String json = Json.copy(parser);
                parts.setAside(table.key(), json);
                parts.say(Level.FAIL, FileCode.ROW_NO_OBJECT, table.key(), -1, "", json, table.key());
            }
        }
    }

    /** The settings at whose start the parser stands; a second lot joins the first. */
    void settings() throws IOException {
        start();
        parts.settings().forEach((name, cell) -> {
            names.add(name);
            cells.add(cell);
        });
        object(Table.PLAN.key(), Optional.empty(), -1);
        parts.settings(Row.of("", names, cells));
    }

    private void start() {
        id = "";
        names = new ArrayList<>();
        cells = new ArrayList<>();
    }

    private void object(String part, Optional<String> idKey, int at) throws IOException {
        boolean idSeen = false;
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            JsonToken token = parser.nextToken();
            boolean isId = idKey.isPresent() && key.equals(idKey.get());
            if (isId && !idSeen && (token == JsonToken.VALUE_STRING || token.isNumeric())) {
                id = parser.getText();
                idSeen = !id.isEmpty();
                if (token != JsonToken.VALUE_STRING) {
                    parts.say(Level.WARN, FileCode.ID_NUMBER, part, at, "", key, id);
                }
            } else if (isId && !idSeen) {
                String name = keep(key, isId);
                parts.say(
                        Level.FAIL,
                        FileCode.NOT_READ,
                        part,
                        at,
                        "",
                        key,
                        cells.get(cells.size() - 1).text(),
                        name);
            } else {
                String name = keep(key, isId);
                if (!name.equals(key)) {
                    parts.say(Level.FAIL, FileCode.KEY_TWICE, part, at, key, key, name);
                }
            }
        }
    }

    /** Keeps a cell under its key, or another where that is taken. */
    private String keep(String key, boolean isId) throws IOException {
        boolean free = !isId && !names.contains(key);
        String name = free ? key : Kept.name(key, taken -> taken.equals(key) || names.contains(taken));
        names.add(name);
        cells.add(cell(parser));
        return name;
    }

    /** The value at which the parser stands as a cell. */
    static Cell cell(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case VALUE_STRING -> Cell.text(parser.getText());
            case VALUE_TRUE -> Cell.YES;
            case VALUE_FALSE -> Cell.NO;
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Cell.number(parser.getText());
            default -> new Cell(Cell.Form.OTHER, Json.copy(parser));
        };
    }
}
