package farwatt.engine;

import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import java.util.List;

/** A plan in few words: rows by their ids, cells as name and text in turn. */
final class Draft {
    private Plan plan = Plan.EMPTY;

    /** Without self-heating, so that figures can be followed with a pocket calculator. */
    static Draft cold() {
        return new Draft().settings("heat_margin", "0");
    }

    Draft settings(String... cells) {
        Row changed = filled(plan.settings(), cells);
        plan = plan.with(Table.PLAN, Rows.of(List.of(changed)));
        return this;
    }

    Draft row(Table table, String id, String... cells) {
        plan = plan.and(table, filled(Row.of(id), cells));
        return this;
    }

    Draft zone(String id, String... cells) {
        return row(Table.ZONES, id, cells);
    }

    Draft bundle(String id, String... cells) {
        return row(Table.BUNDLES, id, cells);
    }

    Draft source(String id, String... cells) {
        return row(Table.SOURCES, id, cells);
    }

    Draft edge(String id, String... cells) {
        return row(Table.SWITCHES, id, cells);
    }

    Draft device(String id, String... cells) {
        return row(Table.DEVICES, id, cells);
    }

    Draft run(String id, String from, String to, String... cells) {
        Row ends = Row.of(id).with("from", from).with("to", to);
        plan = plan.and(Table.RUNS, filled(ends, cells));
        return this;
    }

    Draft value(String name, String is) {
        return row(Table.VALUES, name, "is", is);
    }

    Draft practice(String name, String is) {
        return row(Table.PRACTICE, name, "is", is, "why", "tried");
    }

    /** A derived column; no unit for "". */
    Draft column(Table table, String name, String is, String unit) {
        String[] cells = {"table", table.key(), "is", is, "unit", unit};
        return row(Table.COLUMNS, name, unit.isEmpty() ? new String[] {"table", table.key(), "is", is} : cells);
    }

    /** A column whose cells are typed. */
    Draft input(Table table, String name, String unit) {
        return row(Table.COLUMNS, name, "table", table.key(), "unit", unit);
    }

    /** Readings of a run at hand-over. */
    Draft read(String run, String near, String far, String amps) {
        return cell(Table.RUNS, run, "seen_volts_near", Cell.text(near))
                .cell(Table.RUNS, run, "seen_volts_far", Cell.text(far))
                .cell(Table.RUNS, run, "seen_amps", Cell.text(amps))
                .cell(Table.RUNS, run, "seen_temp", Cell.text("20 degC"));
    }

    Draft need(String name, String holds) {
        return row(Table.NEEDS, name, "holds", holds);
    }

    Draft cell(Table table, String id, String name, Cell cell) {
        Rows rows = plan.rows(table);
        int place = rows.place(id);
        plan = plan.with(table, rows.with(place, rows.at(place).with(name, cell)));
        return this;
    }

    Plan plan() {
        return plan;
    }

    Answers solved() {
        return new Answers(Calculation.of(plan));
    }

    Answers solved(Corner corner) {
        Calculation calculation = Calculation.of(plan);
        calculation.look(corner);
        return new Answers(calculation);
    }

    static Row filled(Row row, String... cells) {
        Row filled = row;
        for (int i = 0; i < cells.length; i += 2) {
            filled = filled.with(cells[i], cells[i + 1]);
        }
        return filled;
    }
}
