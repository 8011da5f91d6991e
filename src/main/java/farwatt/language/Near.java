package farwatt.language;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name someone may have meant. */
public final class Near {
    private static final int MOST_SLIPS = 3;
    private static final int LONGEST = 64;
    private static final int SHORTEST_START = 3;

    private Near() {}

    /**
     * The one of the known names that is nearest to what was typed; empty if none is near. Capitals, spaces, hyphens
     * and underscores do not count; about one slip in three letters is forgiven. Of equally near ones the first; if none is near, the first that goes
     * on from what was typed.
     */
    public static Optional<String> best(String typed, Collection<String> known) {
        String wanted = bare(typed);
        int allowed = Math.min(MOST_SLIPS, wanted.length() / 3);
        String best = null;
        int fewest = allowed + 1;
        for (String name : known) {
            int slips = slips(wanted, bare(name), fewest);
            if (slips < fewest) {
                fewest = slips;
                best = name;
            }
        }
        return best != null ? Optional.of(best) : continued(wanted, known);
    }

    /** The first name that goes on from what was typed. */
    private static Optional<String> continued(String wanted, Collection<String> known) {
        return wanted.length() < SHORTEST_START
                ? Optional.empty()
                : known.stream().filter(name -> bare(name).startsWith(wanted)).findFirst();
    }

    private static String bare(String name) {
        StringBuilder out = new StringBuilder(name.length());
        for (char c : name.toLowerCase(Locale.ROOT).toCharArray()) {
            if (c != '_' && c != ' ' && c != '-') {
                out.append(c);
            }
        }
        return out.toString();
    }

    /** Letters put in, left out, changed or two swapped; {@code enough} if there are that many or more. */
    private static int slips(String a, String b, int enough) {
        if (Math.abs(a.length() - b.length()) >= enough || a.length() > LONGEST) {
            return a.equals(b) ? 0 : enough;
        }
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
            }
            before = last;
            last = row;
        }
        return Math.min(last[b.length()], enough);
    }
}
