package farwatt.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gives every text a number, so that texts travel through columns like everything else. The empty text is 0. */
final class Texts {
    private final List<String> known = new ArrayList<>();
    private final Map<String, Integer> numbers = new HashMap<>();

    Texts() {
        number("");
    }

    double number(String text) {
        return numbers.computeIfAbsent(text, t -> {
            known.add(t);
            return known.size() - 1;
        });
    }

    /** How many texts have a number. */
    int size() {
        return known.size();
    }

    String text(double number) {
        return known.get((int) number);
    }
}
