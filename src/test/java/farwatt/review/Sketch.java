package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;

/**
 * Plans in a few lines: {@code table id | name = cell | name = cell}, the table in the singular or plural; the line
 * {@code plan | reserve_target = 0 %} sets the plan's own cells.
 */
final class Sketch {
    private Sketch() {}

    static Plan plan(String text) {
        Plan plan = Plan.EMPTY;
        for (String line : text.strip().split("\\R", -1)) {
            if (!line.isBlank() && !line.strip().startsWith("#")) {
                plan = add(plan, line.strip());
            }
        }
        return plan;
    }

    static Calculation calc(String text) {
        return Calculation.of(plan(text));
    }

    static Review review(String text) {
        return Reviewer.review(calc(text));
    }

    private static Plan add(Plan plan, String line) {
        String[] parts = line.split("\\|", -1);
        String head = parts[0].strip();
        int blank = head.indexOf(' ');
        Table table = table(blank < 0 ? head : head.substring(0, blank));
        Row row = table == Table.PLAN
                ? plan.settings()
                : Row.of(head.substring(blank + 1).strip());
        for (int i = 1; i < parts.length; i++) {
            int is = parts[i].indexOf('=');
            row = row.with(
                    parts[i].substring(0, is).strip(),
                    parts[i].substring(is + 1).strip());
        }
        return table == Table.PLAN ? plan.with(table, plan.rows(table).with(0, row)) : plan.and(table, row);
    }

    private static Table table(String word) {
        for (Table table : Table.values()) {
            if (table.key().equals(word)
                    || table.key().equals(word + "s")
                    || table.key().equals(word + "es")) {
                return table;
            }
        }
        throw new IllegalArgumentException(word);
    }
}
