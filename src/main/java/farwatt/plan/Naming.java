package farwatt.plan;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Free ids for copies: the original's with the next free number, {@code cam 1} → {@code cam 2}, {@code gate} →
 * {@code gate 2}, {@code cam 09} → {@code cam 10}. What it gave counts as taken from then on. One thread at a time.
 */
public final class Naming {
    /** More digits than this are no number to count on from. */
    private static final int LONGEST = 9;

    private final Set<String> taken = new HashSet<>();
    /** By original: the number given last, so that many copies of one do not count up from it again and again. */
    private final Map<String, Long> last = new HashMap<>();

    private Naming() {}

    /** Avoids every id on the site, those that scenarios add included. */
    public static Naming in(Plan plan) {
        Naming naming = new Naming();
        plan.ids().forEach(naming::take);
        for (Scenario scenario : plan.scenarios()) {
            for (Step step : scenario.steps()) {
                if (step instanceof Step.Add add) {
                    naming.take(add.row().id());
                }
            }
        }
        return naming;
    }

    /** Avoids the ids of one table only: values, columns, needs have a name space each. */
    public static Naming in(Rows rows) {
        Naming naming = new Naming();
        rows.forEach(row -> naming.take(row.id()));
        return naming;
    }

    /** Counts an id as taken. */
    public void take(String id) {
        taken.add(Rows.fold(id));
    }

    public boolean isTaken(String id) {
        return taken.contains(Rows.fold(id));
    }

    /** The id itself if it is free, else the next one. */
    public String free(String id) {
        if (isTaken(id)) {
            return next(id);
        }
        take(id);
        return id;
    }

    /** The next free id after the original's. */
    public String next(String original) {
        int from = digitsFrom(original);
        boolean counted = from < original.length() && original.length() - from <= LONGEST;
        String stem = counted ? original.substring(0, from) : original + " ";
        int width = counted ? original.length() - from : 1;
        long number = counted ? Long.parseLong(original.substring(from)) : 1;
        number = Math.max(number, last.getOrDefault(Rows.fold(original), 0L));
        String id;
        do {
            number++;
            id = stem + padded(number, width);
        } while (isTaken(id));
        last.put(Rows.fold(original), number);
        take(id);
        return id;
    }

    private static String padded(long number, int width) {
        String digits = Long.toString(number);
        return "0".repeat(Math.max(0, width - digits.length())) + digits;
    }

    private static int digitsFrom(String id) {
        int at = id.length();
        while (at > 0 && id.charAt(at - 1) >= '0' && id.charAt(at - 1) <= '9') {
            at--;
        }
        return at;
    }
}
