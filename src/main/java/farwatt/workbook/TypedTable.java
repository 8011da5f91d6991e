package farwatt.workbook;

import farwatt.catalogue.CellReader;
import farwatt.catalogue.Name;
import farwatt.catalogue.Reading;
import farwatt.catalogue.Stage;
import farwatt.engine.Calculation;
import farwatt.engine.Fault;
import farwatt.engine.Value;
import farwatt.plan.Cell;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Units;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a person typed that is no plain figure of a table: values, replaced practice, needs, own columns, rules. */
final class TypedTable {
    private final Calculation calc;
    private final Units units;
    private final List<List<Entry>> lines = new ArrayList<>();

    private TypedTable(Calculation calc) {
        this.calc = calc;
        units = new Units(calc.plan().currency());
    }

    static Schedule of(Calculation calc) {
        List<Column> columns = List.of(
                Column.of("name", "name", Form.WORD),
                Column.of("kind", "kind", Form.WORD),
                Column.of("row", "of", Form.WORD),
                Column.of("typed", "as typed", Form.SENTENCE),
                Column.of("value", "value", Form.FREE),
                Column.of("unit", "unit", Form.WORD),
                Column.of("says", "says", Form.WORD),
                Column.of("note", "note", Form.SENTENCE));
        TypedTable table = new TypedTable(calc);
        table.values();
        table.practice();
        table.needs();
        table.own();
        Table.site().forEach(table::rules);
        return Schedule.trimmed(
                Titles.TYPED,
                "Values, practice in place of ours, needs, own columns, and cells that hold a rule.",
                List.of(),
                columns,
                table.lines);
    }

    private void values() {
        for (int place = 0; place < calc.rows(Table.VALUES); place++) {
            Row row = calc.plan().rows(Table.VALUES).at(place);
            add(row.id(), "value", "", row.text("is"), calc.value(Table.VALUES, place, "is"), row.text("note"));
        }
    }

    private void practice() {
        Map<String, Integer> places = new HashMap<>();
        for (int place = 0; place < calc.rows(Table.PRACTICE); place++) {
            places.put(calc.id(Table.PRACTICE, place), place);
        }
        for (Row row : calc.plan().rows(Table.PRACTICE)) {
            Integer place = places.get(row.id());
            if (place != null) {
                Value value = calc.value(Table.PRACTICE, place, "is");
                add(row.id(), "practice", "", row.text("is"), value, row.text("why"));
            }
        }
    }

    private void needs() {
        for (int place = 0; place < calc.rows(Table.NEEDS); place++) {
            Row row = calc.plan().rows(Table.NEEDS).at(place);
            Value holds = calc.value(Table.NEEDS, place, "holds");
            String says = !holds.isPresent() ? "no answer" : holds.inside() != 0 ? "met" : "not met";
            Tone tone = says.equals("met") ? Tone.GOOD : Tone.BAD;
            lines.add(List.of(
                    Entry.words(row.id()),
                    Entry.words("need"),
                    Entry.NONE,
                    Entry.words(row.text("holds")),
                    Entry.NONE,
                    Entry.NONE,
                    Entry.words(says).in(tone),
                    Entry.words(join(row.text("note"), why(holds)))));
        }
    }

    private void own() {
        for (Row row : calc.plan().rows(Table.COLUMNS)) {
            lines.add(List.of(
                    Entry.words(row.id()),
                    Entry.words(row.text("is").isBlank() ? "own column" : "own rule"),
                    Entry.words(row.text("table")),
                    Entry.words(row.text("is")),
                    Entry.NONE,
                    Entry.words(row.text("unit")),
                    Entry.NONE,
                    Entry.words(row.text("note"))));
        }
    }

    private void rules(Table table) {
        for (Name name : calc.names(table)) {
            if (name.stage() != Stage.GIVEN) {
                continue;
            }
            CellReader reader = CellReader.of(name, units);
            for (int place = 0; place < calc.rows(table); place++) {
                Row row = calc.plan().rows(table).at(place);
                Optional<Cell> cell = row.cell(name.key());
                if (cell.isPresent() && reader.read(row.id(), cell.get()) instanceof Reading.Expression) {
                    Value value = calc.value(table, place, name.key());
                    add(name.key().replace('_', ' '), "rule", row.id(), row.text(name.key()), value, "");
                }
            }
        }
    }

    private void add(String name, String kind, String row, String typed, Value value, String note) {
        boolean number = value.isPresent() && value.isNumber();
        lines.add(List.of(
                Entry.words(name),
                Entry.words(kind),
                Entry.words(row),
                Entry.words(typed),
                number ? Figure.of(value).as(Form.of(value.unit())) : Entry.NONE,
                Entry.words(number ? Figure.symbol(value.unit().symbol()) : ""),
                number ? Entry.NONE : Figure.of(value),
                Entry.words(join(note, why(value)))));
    }

    private static String why(Value value) {
        return value.fault().map(Fault::text).orElse("");
    }

    private static String join(String note, String why) {
        return note.isEmpty() || why.isEmpty() ? note + why : note + "\n" + why;
    }
}
