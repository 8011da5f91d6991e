package farwatt.plan;

import java.util.Comparator;

/** Ids in the order people expect: "cam 2" before "cam 10", without regard to case; ties by the plain text. */
public final class NaturalOrder implements Comparator<String> {
    public static final NaturalOrder IDS = new NaturalOrder();

    private NaturalOrder() {}

    @Override
    public int compare(String a, String b) {
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            if (isDigit(a.charAt(i)) && isDigit(b.charAt(j))) {
                int endA = digitsEnd(a, i);
                int endB = digitsEnd(b, j);
                int byNumber = compareDigits(a, i, endA, b, j, endB);
                if (byNumber != 0) {
                    return byNumber;
                }
                i = endA;
                j = endB;
            } else {
                int byLetter = Character.compare(fold(a.charAt(i++)), fold(b.charAt(j++)));
                if (byLetter != 0) {
                    return byLetter;
                }
            }
        }
        int byLength = Integer.compare(a.length() - i, b.length() - j);
        return byLength != 0 ? byLength : a.compareTo(b);
    }

    private static int compareDigits(String a, int fromA, int toA, String b, int fromB, int toB) {
        int i = skipZeros(a, fromA, toA);
        int j = skipZeros(b, fromB, toB);
        if (toA - i != toB - j) {
            return Integer.compare(toA - i, toB - j);
        }
        while (i < toA) {
            int byDigit = Character.compare(a.charAt(i++), b.charAt(j++));
            if (byDigit != 0) {
                return byDigit;
            }
        }
        return 0;
    }

    private static int skipZeros(String s, int from, int to) {
        int at = from;
        while (at < to - 1 && s.charAt(at) == '0') {
            at++;
        }
        return at;
    }

    private static int digitsEnd(String s, int from) {
        int at = from;
        while (at < s.length() && isDigit(s.charAt(at))) {
            at++;
        }
        return at;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static char fold(char c) {
        return Character.toLowerCase(Character.toUpperCase(c));
    }
}
