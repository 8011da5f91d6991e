package farwatt.window.grid;

import farwatt.plan.Naming;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.StepPath;
import farwatt.plan.Table;

/** Free ids for rows that are added. */
final class NewRows {
    private final Table table;
    private final Naming naming;

    NewRows(Plan plan, Table table) {
        this.table = table;
        naming = table.isSite() ? Naming.in(plan) : Naming.in(plan.rows(table));
    }

    /** Values and columns are named in expressions without quotes, so their ids are plain names. */
    static boolean isNamed(Table table) {
        return table == Table.VALUES || table == Table.COLUMNS;
    }

    /** True where a person may add and take away rows. */
    static boolean canGrow(Table table) {
        return table != Table.PLAN;
    }

    Naming naming() {
        return naming;
    }

    /** An empty row. */
    Row row() {
        return Row.of(next(word()));
    }

    /** A row with the id that was asked for if it is free, else with the next one. */
    Row row(String wanted) {
        String id = wanted.strip();
        if (id.isEmpty()) {
            return row();
        }
        return Row.of(isNamed(table) && naming.isTaken(id) ? next(id) : naming.free(id));
    }

    /** The next free id after one that is there. */
    String next(String original) {
        if (!isNamed(table)) {
            String first = original.equals(word()) ? original + " 1" : original;
            return first.equals(original) ? naming.next(original) : naming.free(first);
        }
        String stem = StepPath.isName(original) ? original.replaceFirst("_\\d{1,9}$", "") : word();
        int number = stem.equals(original) && !original.equals(word()) ? 2 : 1;
        while (naming.isTaken(stem + "_" + number)) {
            number++;
        }
        return naming.free(stem + "_" + number);
    }

    private String word() {
        return switch (table) {
            case PLAN -> "plan";
            case VALUES -> "value";
            case PRACTICE -> "constant";
            case ZONES -> "zone";
            case BUNDLES -> "bundle";
            case SOURCES -> "source";
            case SWITCHES -> "switch";
            case RUNS -> "run";
            case DEVICES -> "device";
            case COLUMNS -> "column";
            case NEEDS -> "need";
        };
    }
}
