package farwatt.intake;

import farwatt.plan.Rows;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Gives ids that are unique without regard to case. */
final class Names {
    private static final Pattern NUMBERED = Pattern.compile("(.*\\D)(\\d{1,6})");
    private static final Pattern SPAN = Pattern.compile("(.*?)(\\d{1,6})\\s*[-–—]\\s*(\\d{1,6})");

    /** More ids than that are not named one by one. */
    private static final int MOST_SPOKEN = 8;

    private final Set<String> used = new HashSet<>();
    /** Where the search for a free number goes on, so that many rows of one name stay quick. */
    private final Map<String, Integer> next = new HashMap<>();

    boolean isFree(String id) {
        return !used.contains(Rows.fold(id));
    }

    /** Takes an id; false when it was taken already. */
    boolean take(String id) {
        return used.add(Rows.fold(id));
    }

    /** The name followed by its next free number. */
    String numbered(String name) {
        Matcher m = NUMBERED.matcher(name);
        String stem = m.matches() ? m.group(1) : name + " ";
        int first = m.matches() ? Integer.parseInt(m.group(2)) + 1 : 1;
        String key = Rows.fold(stem);
        int number = Math.max(first, next.getOrDefault(key, 1));
        while (!take(stem + number)) {
            number++;
        }
        next.put(key, number + 1);
        return stem + number;
    }

    /** A free spelling of a name: itself, or with a word in brackets, or numbered. */
    String apart(String name, String word) {
        if (take(name)) {
            return name;
        }
        String longer = name + " (" + word + ")";
        return !word.isEmpty() && take(longer) ? longer : numbered(name);
    }

    /** Ids as a sentence names them: first and last where they follow each other, else one by one. */
    static String spoken(List<String> ids) {
        Matcher first = NUMBERED.matcher(ids.get(0));
        boolean follow = first.matches();
        for (int i = 1; follow && i < ids.size(); i++) {
            follow = ids.get(i).equals(first.group(1) + (Integer.parseInt(first.group(2)) + i));
        }
        if (follow && ids.size() > 2) {
            return ids.get(0) + " to " + ids.get(ids.size() - 1);
        }
        return ids.size() <= MOST_SPOKEN
                ? String.join(", ", ids)
                : String.join(", ", ids.subList(0, MOST_SPOKEN - 1)) + " … " + ids.get(ids.size() - 1);
    }

    /** Ids for several devices of one name. */
    List<String> several(String name, int count) {
        List<String> ids = new ArrayList<>();
        Matcher span = SPAN.matcher(name);
        if (span.matches()) {
            int from = Integer.parseInt(span.group(2));
            int to = Integer.parseInt(span.group(3));
            boolean free = to - from + 1 == count;
            for (int n = from; free && n <= to; n++) {
                free = isFree(span.group(1) + n);
            }
            if (free) {
                for (int n = from; n <= to; n++) {
                    ids.add(span.group(1) + n);
                    take(span.group(1) + n);
                }
                return ids;
            }
        }
        if (NUMBERED.matcher(name).matches() && take(name)) {
            ids.add(name);
        }
        while (ids.size() < count) {
            ids.add(numbered(name));
        }
        return ids;
    }
}
