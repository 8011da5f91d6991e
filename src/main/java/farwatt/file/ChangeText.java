package farwatt.file;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Row;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Writes changes as one line of JSON each, every text and form as it is. {@link ChangeParser} reads them back. */
final class ChangeText {
    private final StringBuilder out = new StringBuilder();

    private ChangeText() {}

    static String of(Change change) {
        ChangeText text = new ChangeText();
        text.change(change);
        return text.out.toString();
    }

    private void change(Change change) {
        if (change instanceof Change.SetCell set) {
            key("{", "set", set.table().key());
            key(", ", "id", set.id());
            key(", ", "name", set.name());
            out.append(", \"cell\": ");
            set.cell().ifPresentOrElse(this::cell, () -> out.append("null"));
        } else if (change instanceof Change.AddRow add) {
            key("{", "add", add.table().key());
            row(add.place(), add.row());
        } else if (change instanceof Change.DropRow drop) {
            key("{", "drop", drop.table().key());
            out.append(", \"place\": ").append(drop.place());
            key(", ", "id", drop.id());
        } else if (change instanceof Change.ReplaceRow replace) {
            key("{", "replace", replace.table().key());
            row(replace.place(), replace.row());
        } else if (change instanceof Change.SetScenarios set) {
            list("{", "scenarios", set.scenarios(), this::scenario);
        } else if (change instanceof Change.SetRest set) {
            key("{", "rest", set.key());
            set.json().ifPresentOrElse(json -> key(", ", "json", json), () -> out.append(", \"json\": null"));
        } else if (change instanceof Change.Batch batch) {
            key("{", "batch", batch.label());
            list(", ", "changes", batch.changes(), this::change);
        }
        out.append('}');
    }

    private void row(int place, Row row) {
        out.append(", \"place\": ").append(place).append(", \"row\": ");
        row(row);
    }

    private void row(Row row) {
        key("{", "id", row.id());
        list(", ", "cells", row.names(), name -> {
            Json.string(out.append('['), name);
            out.append(", ");
            row.cell(name).ifPresent(this::cell);
            out.append(']');
        });
        out.append('}');
    }

    private void cell(Cell cell) {
        if (cell.form() == Cell.Form.TEXT) {
            Json.string(out, cell.text());
        } else if (cell.equals(Cell.YES) || cell.equals(Cell.NO)) {
            out.append(cell.equals(Cell.YES));
        } else {
            key("{", "form", cell.form().name());
            key(", ", "text", cell.text());
            out.append('}');
        }
    }

    private void scenario(Scenario scenario) {
        key("{", "id", scenario.id());
        key(", ", "on", scenario.on());
        list(", ", "steps", scenario.steps(), this::step);
        rest(scenario.rest());
    }

    private void step(Step step) {
        if (step instanceof Step.Set set) {
            key("{", "set", set.path());
            out.append(", \"to\": ");
            cell(set.to());
            rest(set.rest());
        } else if (step instanceof Step.Add add) {
            key("{", "add", add.table());
            out.append(", \"row\": ");
            row(add.row());
            rest(add.rest());
        } else if (step instanceof Step.Drop drop) {
            key("{", "drop", drop.id());
            rest(drop.rest());
        } else if (step instanceof Step.Unread unread) {
            key("{", "unread", unread.json());
            out.append('}');
        }
    }

    private void rest(Map<String, String> rest) {
        list(", ", "rest", List.copyOf(rest.keySet()), key -> {
            Json.string(out.append('['), key);
            Json.string(out.append(", "), Optional.ofNullable(rest.get(key)).orElse(""));
            out.append(']');
        });
        out.append('}');
    }

    private void key(String before, String key, String text) {
        Json.string(out.append(before), key);
        Json.string(out.append(": "), text);
    }

    private <T> void list(String before, String key, List<T> items, Consumer<T> each) {
        Json.string(out.append(before), key);
        out.append(": [");
        String comma = "";
        for (T item : items) {
            out.append(comma);
            each.accept(item);
            comma = ", ";
        }
        out.append(']');
    }
}
