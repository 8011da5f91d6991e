package farwatt.intake;

import java.util.Arrays;
import java.util.List;

/**
 * Finds the first text that is the same as a later one, without regard to what is laid down as not counting. A table of
 * places, no copies of the texts: a list may have a hundred thousand. For one thread.
 */
final class Twice {
    private static final int NONE = -1;

    /** What counts in a text. */
    enum Counts {
        EVERY_SIGN,
        /** Letters and digits without regard to case, as in addresses of gear that are written in several ways. */
        LETTERS_AND_DIGITS
    }

    private final List<String> texts;
    private final Counts counts;
    private final int[] places;

    Twice(List<String> texts, Counts counts) {
        this.texts = texts;
        this.counts = counts;
        this.places = new int[Integer.highestOneBit(Math.max(4, texts.size())) * 4];
        Arrays.fill(places, NONE);
    }

    /** The place of the first text that is the same as the one at a place, the place itself if there is none before. */
    int first(int place) {
        String text = texts.get(place);
        int slot = hash(text);
        slot = (slot ^ slot >>> 16) & (places.length - 1);
        while (places[slot] != NONE && !isSame(texts.get(places[slot]), text)) {
            slot = (slot + 1) & (places.length - 1);
        }
        if (places[slot] == NONE) {
            places[slot] = place;
        }
        return places[slot];
    }

    /** How many signs count. */
    int length(int place) {
        String text = texts.get(place);
        if (counts == Counts.EVERY_SIGN) {
            return text.length();
        }
        int length = 0;
        for (int i = 0; i < text.length(); i++) {
            length += counting(text.charAt(i)) == 0 ? 0 : 1;
        }
        return length;
    }

    private int hash(String text) {
        if (counts == Counts.EVERY_SIGN) {
            return text.hashCode();
        }
        int hash = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = counting(text.charAt(i));
            hash = c == 0 ? hash : 31 * hash + c;
        }
        return hash;
    }

    private boolean isSame(String one, String other) {
        if (counts == Counts.EVERY_SIGN) {
            return one.equals(other);
        }
        int i = 0;
        int j = 0;
        while (true) {
            i = next(one, i);
            j = next(other, j);
            if (i == one.length() || j == other.length()) {
                return i == one.length() && j == other.length();
            }
            if (counting(one.charAt(i++)) != counting(other.charAt(j++))) {
                return false;
            }
        }
    }

    private static int next(String text, int from) {
        int i = from;
        while (i < text.length() && counting(text.charAt(i)) == 0) {
            i++;
        }
        return i;
    }

    /** A letter as a capital, a digit; 0 for what does not count. */
    private static char counting(char c) {
        boolean kept = (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z');
        if (kept) {
            return c;
        }
        return c >= 'a' && c <= 'z' ? (char) (c - 32) : 0;
    }
}
