package farwatt.catalogue;

/**
 * Digits with at most one decimal point between them: what nearly every cell starts with, read without a detour. The
 * value is the very double that the full reader gives.
 */
final class PlainNumber {
    /** Whole numbers of so many digits are exact as doubles, and so are their powers of ten. */
    private static final int EXACT_DIGITS = 15;

    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14};

    private PlainNumber() {}

    /** Where the number at the start of a text ends; 0 if there is none of this plain form. */
    static int end(String text) {
        int at = digitsEnd(text, 0);
        if (at == 0 || at >= text.length() || text.charAt(at) != '.') {
            return at <= EXACT_DIGITS ? at : 0;
        }
        int end = digitsEnd(text, at + 1);
        return end > at + 1 && end - 1 <= EXACT_DIGITS ? end : 0;
    }

    /** The number that ends there. One division of two exact doubles is rounded once, as a full conversion is. */
    static double value(String text, int end) {
        long whole = 0;
        int decimals = 0;
        for (int i = 0; i < end; i++) {
            char c = text.charAt(i);
            if (c == '.') {
                decimals = end - 1 - i;
            } else {
                whole = whole * 10 + (c - '0');
            }
        }
        return whole / TENS[decimals];
    }

    private static int digitsEnd(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }
}
