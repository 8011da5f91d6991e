package farwatt.intake;

import java.util.Arrays;
import java.util.Optional;

/** Texts by key in the order in which the keys first came; made for a handful of them. For one thread. */
final class Texts {
    private static final String[] NONE = {};
    private static final int STEP = 8;

    /** Key, text, key, text. */
    private String[] pairs = NONE;

    private int used;

    /** Puts a text under a key, in the place of the one that was there. */
    void put(String key, String text) {
        int at = find(key);
        if (at >= 0) {
            pairs[at + 1] = text;
            return;
        }
        if (used == pairs.length) {
            pairs = Arrays.copyOf(pairs, used + STEP);
        }
        pairs[used] = key;
        pairs[used + 1] = text;
        used += 2;
    }

    void putAll(Texts others) {
        for (int i = 0; i < others.size(); i++) {
            put(others.key(i), others.text(i));
        }
    }

    Optional<String> get(String key) {
        int at = find(key);
        return at < 0 ? Optional.empty() : Optional.of(pairs[at + 1]);
    }

    boolean has(String key) {
        return find(key) >= 0;
    }

    boolean isEmpty() {
        return used == 0;
    }

    int size() {
        return used / 2;
    }

    String key(int place) {
        return pairs[2 * place];
    }

    String text(int place) {
        return pairs[2 * place + 1];
    }

    /** Gives back the room that is not used. */
    void trim() {
        if (used < pairs.length) {
            pairs = used == 0 ? NONE : Arrays.copyOf(pairs, used);
        }
    }

    private int find(String key) {
        for (int i = 0; i < used; i += 2) {
            if (pairs[i].equals(key)) {
                return i;
            }
        }
        return -1;
    }
}
