package farwatt.file;

import com.fasterxml.jackson.databind.JsonNode;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Row;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads the changes that {@link ChangeText} wrote. Anything else is an {@link IllegalArgumentException}. */
final class ChangeParser {
    private ChangeParser() {}

    static Change change(JsonNode node) {
        if (node.has("set")) {
            Optional<Cell> cell = Optional.of(need(node, "cell"))
                    .filter(typed -> !typed.isNull())
                    .map(ChangeParser::cell);
            return new Change.SetCell(table(node, "set"), text(node, "id"), text(node, "name"), cell);
        }
        if (node.has("add")) {
            return new Change.AddRow(table(node, "add"), place(node), row(need(node, "row")));
        }
        if (node.has("drop")) {
            return new Change.DropRow(table(node, "drop"), place(node), text(node, "id"));
        }
        if (node.has("replace")) {
            return new Change.ReplaceRow(table(node, "replace"), place(node), row(need(node, "row")));
        }
        if (node.has("scenarios")) {
            return new Change.SetScenarios(list(node, "scenarios", ChangeParser::scenario));
        }
        if (node.has("rest")) {
            Optional<String> json = need(node, "json").isNull() ? Optional.empty() : Optional.of(text(node, "json"));
            return new Change.SetRest(text(node, "rest"), json);
        }
        return new Change.Batch(text(node, "batch"), list(node, "changes", ChangeParser::change));
    }

    private static Row row(JsonNode node) {
        List<String> names = new ArrayList<>();
        List<Cell> cells = new ArrayList<>();
        for (JsonNode pair : need(node, "cells")) {
            names.add(string(pair.path(0)));
            cells.add(cell(pair.path(1)));
        }
        return Row.of(text(node, "id"), names, cells);
    }

    private static Cell cell(JsonNode node) {
        if (node.isTextual()) {
            return Cell.text(node.textValue());
        }
        if (node.isBoolean()) {
            return node.booleanValue() ? Cell.YES : Cell.NO;
        }
        return new Cell(Cell.Form.valueOf(text(node, "form")), text(node, "text"));
    }

    private static Scenario scenario(JsonNode node) {
        List<Step> steps = list(node, "steps", ChangeParser::step);
        return new Scenario(text(node, "id"), text(node, "on"), steps, rest(node));
    }

    private static Step step(JsonNode node) {
        if (node.has("set")) {
            return new Step.Set(text(node, "set"), cell(need(node, "to")), rest(node));
        }
        if (node.has("add")) {
            return new Step.Add(text(node, "add"), row(need(node, "row")), rest(node));
        }
        if (node.has("drop")) {
            return new Step.Drop(text(node, "drop"), rest(node));
        }
        return new Step.Unread(text(node, "unread"));
    }

    private static Map<String, String> rest(JsonNode node) {
        Map<String, String> rest = new LinkedHashMap<>();
        need(node, "rest").forEach(pair -> rest.put(string(pair.path(0)), string(pair.path(1))));
        return Collections.unmodifiableMap(rest);
    }

    private static <T> List<T> list(JsonNode node, String key, Function<JsonNode, T> each) {
        List<T> all = new ArrayList<>();
        need(node, key).forEach(item -> all.add(each.apply(item)));
        return all;
    }

    private static Table table(JsonNode node, String key) {
        return Table.of(text(node, key)).orElseThrow(() -> new IllegalArgumentException("no table in " + node));
    }

    private static int place(JsonNode node) {
        JsonNode place = need(node, "place");
        if (!place.isInt()) {
            throw new IllegalArgumentException("no place in " + node);
        }
        return place.intValue();
    }

    private static String text(JsonNode node, String key) {
        return string(need(node, key));
    }

    private static String string(JsonNode node) {
        if (!node.isTextual()) {
            throw new IllegalArgumentException("no text: " + node);
        }
        return node.textValue();
    }

    private static JsonNode need(JsonNode node, String key) {
        JsonNode value = node.get(key);
        if (value == null) {
            throw new IllegalArgumentException("no " + key + " in " + node);
        }
        return value;
    }
}
