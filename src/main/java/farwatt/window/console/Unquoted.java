package farwatt.window.console;

import java.util.ArrayList;
import java.util.List;

/**
 * What a quoted text of a script means, up to a place in it.
 *
 * @param text without the quotes and their signs
 * @param places where each letter stands in the script, and the end
 */
record Unquoted(String text, List<Integer> places) {
    Unquoted {
        places = List.copyOf(places);
    }

    /** Reads from after the quote to the caret. */
    static Unquoted of(String script, int from, int to) {
        StringBuilder text = new StringBuilder();
        List<Integer> places = new ArrayList<>();
        int at = from;
        while (at < to) {
            places.add(at);
            if (script.charAt(at) == '\\' && at + 1 < to) {
                at++;
            }
            text.append(script.charAt(at));
            at++;
        }
        places.add(to);
        return new Unquoted(text.toString(), places);
    }

    /** Where a place of the meaning stands in the script. */
    int place(int at) {
        return places.get(Math.max(0, Math.min(at, places.size() - 1)));
    }

    /** A text as it has to be typed between quotes of a kind. */
    static String quoted(String text, char quote) {
        return text.replace("\\", "\\\\").replace(String.valueOf(quote), "\\" + quote);
    }
}
