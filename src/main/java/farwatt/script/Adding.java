package farwatt.script;

import farwatt.catalogue.Reading;
import farwatt.plan.Naming;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.graalvm.polyglot.Value;

/** Adds rows for a script, each cell as if it were typed. */
final class Adding {
    private Adding() {}

    /** Adds a row, and the run that feeds it if one is handed over. */
    static void add(WorkingPlan working, String key, Value row, Optional<Value> run) {
        Table table = table(key);
        if (table == Table.PLAN) {
            throw ScriptFailure.of(ScriptCode.ONE_ROW);
        }
        Row made = row(working, table, row, Row.of(id(table, row)));
        put(working, table, made);
        if (run.isPresent()) {
            try {
                put(working, Table.RUNS, run(working, run.get(), made.id()));
            } catch (ScriptFailure e) {
                working.takeBack();
                throw e;
            }
        }
    }

    /** The table of that name; a failure with a near one if there is none. */
    static Table table(String key) {
        List<String> known = Arrays.stream(Table.values()).map(Table::key).toList();
        return Table.of(key)
                .orElseThrow(() ->
                        ScriptFailure.of(ScriptCode.NO_TABLE, key, String.join(", ", known), Near.hint(key, known)));
    }

    private static String id(Table table, Value row) {
        Handed.keys(row, "plan.add");
        Value id = Handed.member(row, table.idKey())
                .orElseThrow(() -> ScriptFailure.of(ScriptCode.ID_MISSING, table.key(), table.idKey()));
        return Handed.text(id, table.idKey());
    }

    /** A run without an id is named after what it feeds, and leads there. */
    private static Row run(WorkingPlan working, Value value, String to) {
        Handed.keys(value, "plan.add");
        Optional<Value> typed = Handed.member(value, Table.RUNS.idKey());
        String id = typed.isPresent() ? Handed.text(typed.get(), "id") : free(working, "run " + to);
        Row row = row(working, Table.RUNS, value, Row.of(id));
        return row.cell("to").isPresent() ? row : row.with("to", to);
    }

    private static String free(WorkingPlan working, String id) {
        if (!working.isTaken(id)) {
            return id;
        }
        Naming naming = working.naming();
        return naming.free(id);
    }

    private static Row row(WorkingPlan working, Table table, Value value, Row start) {
        Row row = start;
        for (String name : Handed.keys(value, "plan.add")) {
            if (!name.equals(table.idKey())) {
                Target target = Target.cell(working.cells(), table, start.id(), name);
                Typing typing = Typing.of(target, value.getMember(name), working.wording());
                row = row.with(name, typing.cell());
            }
        }
        return row;
    }

    private static void put(WorkingPlan working, Table table, Row row) {
        for (String name : row.names()) {
            Reading reading = Target.cell(working.cells(), table, row.id(), name)
                    .reader()
                    .read(row.id(), row.cell(name).orElseThrow());
            if (reading instanceof Reading.RowId id && !working.isTaken(id.id())) {
                throw ScriptFailure.of(
                        ScriptCode.NO_ROW,
                        id.id(),
                        Near.hint(id.id(), working.plan().ids()));
            }
        }
        working.add(table, row);
        boolean expression = row.names().stream()
                .anyMatch(name -> Target.cell(working.cells(), table, row.id(), name)
                                .reader()
                                .read(row.id(), row.cell(name).orElseThrow())
                        instanceof Reading.Expression);
        if (expression) {
            check(working, row);
        }
    }

    /** What the engine has to say of a row's expressions; a row that is wrong goes again. */
    private static void check(WorkingPlan working, Row row) {
        Optional<Notice> wrong = working.calculation().notices().stream()
                .filter(n -> n.level() == Level.FAIL)
                .filter(n -> n.place().row().equals(row.id())
                        && row.names().contains(n.place().name()))
                .findFirst();
        if (wrong.isPresent()) {
            working.takeBack();
            throw ScriptFailure.said(wrong.get().line());
        }
    }
}
