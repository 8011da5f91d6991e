package farwatt.script;

import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.graalvm.polyglot.Value;

/** Reads a script's result (columns and points, as it may have changed them) as a table. */
final class Results {
    private Results() {}

    static ResultTable table(Value result, Units units) {
        Value columns = part(result, "columns");
        Value points = part(result, "points");
        List<ResultTable.Column> heads = new ArrayList<>();
        for (Value column : Handed.list(columns)) {
            heads.add(new ResultTable.Column(
                    Handed.text(Handed.needed(column, "a column", "name"), "a column's name"), unit(column, units)));
        }
        List<List<ResultTable.Cell>> rows = new ArrayList<>();
        for (Value point : Handed.list(points)) {
            if (!point.hasArrayElements() || point.getArraySize() != heads.size()) {
                throw ScriptFailure.of(ScriptCode.NO_RESULT);
            }
            rows.add(Handed.list(point).stream().map(Results::cell).toList());
        }
        return new ResultTable("", heads, rows);
    }

    private static Value part(Value result, String key) {
        Value part = result.hasMembers() ? result.getMember(key) : null;
        if (part == null || !part.hasArrayElements()) {
            throw ScriptFailure.of(ScriptCode.NO_RESULT);
        }
        return part;
    }

    private static Unit unit(Value column, Units units) {
        Value unit = column.getMember("unit");
        if (unit == null || !unit.isString() || unit.asString().isEmpty()) {
            return Unit.ONE;
        }
        return units.of(unit.asString())
                .orElseThrow(() -> ScriptFailure.of(
                        ScriptCode.UNKNOWN,
                        "a unit",
                        unit.asString(),
                        units.near(unit.asString())
                                .map(near -> " " + farwatt.report.Messages.text(ScriptCode.NEAR, near))
                                .orElse("")));
    }

    private static ResultTable.Cell cell(Value value) {
        if (value.isNumber() && value.fitsInDouble()) {
            double number = value.asDouble();
            return Double.isFinite(number) ? new ResultTable.Amount(number) : new ResultTable.None();
        }
        if (value.isBoolean()) {
            return new ResultTable.YesNo(value.asBoolean());
        }
        if (value.isNull()) {
            return new ResultTable.None();
        }
        return new ResultTable.Words(value.isString() ? value.asString() : Shown.of(value));
    }

    /** The columns of a sweep that were varied. */
    static List<String> varied(Value result) {
        return Handed.member(result, "varied").map(Handed::list).orElse(List.of()).stream()
                .map(name -> Handed.text(name, "varied"))
                .toList();
    }

    /** A picture of a result, with what the result says besides its table. */
    static ResultPicture picture(Value result, ResultTable table, String column, Optional<String> file) {
        String read = Handed.member(result, "read")
                .filter(Value::isString)
                .map(Value::asString)
                .orElse("");
        OptionalDouble now = Handed.member(result, "now")
                .filter(value -> value.isNumber() && value.fitsInDouble())
                .map(value -> OptionalDouble.of(value.asDouble()))
                .orElse(OptionalDouble.empty());
        return new ResultPicture(table, column, varied(result), read, now, file);
    }

    /** The place of a column; a failure with a near name if there is none. */
    static void checkColumn(ResultTable table, String name) {
        List<String> names =
                table.columns().stream().map(ResultTable.Column::name).toList();
        if (!names.contains(name)) {
            throw ScriptFailure.of(ScriptCode.NO_COLUMN, name, String.join(", ", names), Near.hint(name, names));
        }
    }
}
