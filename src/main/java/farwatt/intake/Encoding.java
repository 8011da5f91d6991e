package farwatt.intake;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.mozilla.universalchardet.UniversalDetector;

/**
 * Bytes as text: by their mark, as UTF-16 without a mark, as UTF-8 when they are valid, else as the eight-bit set in
 * which most signs beside letters are letters too.
 *
 * @param text without a mark
 * @param name of the set
 * @param sure false when it was judged by the look of the words
 */
record Encoding(String text, String name, boolean sure) {
    private static final int SAMPLE = 16_384;
    private static final List<String> EIGHT_BIT =
            List.of("windows-1252", "windows-1250", "ISO-8859-2", "IBM850", "x-MacRoman");

    static Encoding of(byte[] bytes) {
        return marked(bytes)
                .or(() -> unmarkedUtf16(bytes))
                .or(() -> strict(bytes, 0, StandardCharsets.UTF_8))
                .orElseGet(() -> judged(bytes));
    }

    /** The bytes read in a set that a person named. */
    static Optional<Encoding> named(byte[] bytes, String name) {
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9._:+-]*") || !Charset.isSupported(name)) {
            return Optional.empty();
        }
        return Optional.of(new Encoding(new String(bytes, Charset.forName(name)), name, true));
    }

    private static Optional<Encoding> marked(byte[] bytes) {
        if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
            return Optional.of(decoded(bytes, 3, StandardCharsets.UTF_8));
        }
        if (starts(bytes, 0xFF, 0xFE)) {
            return Optional.of(decoded(bytes, 2, StandardCharsets.UTF_16LE));
        }
        if (starts(bytes, 0xFE, 0xFF)) {
            return Optional.of(decoded(bytes, 2, StandardCharsets.UTF_16BE));
        }
        return Optional.empty();
    }

    /** True when the bytes are UTF-16, with a mark or by their zeros. */
    static boolean isUtf16(byte[] bytes) {
        return starts(bytes, 0xFF, 0xFE)
                || starts(bytes, 0xFE, 0xFF)
                || unmarkedUtf16(bytes).isPresent();
    }

    private static Optional<Encoding> unmarkedUtf16(byte[] bytes) {
        int even = 0;
        int odd = 0;
        int length = Math.min(bytes.length, SAMPLE) & ~1;
        for (int i = 0; i < length; i += 2) {
            even += bytes[i] == 0 ? 1 : 0;
            odd += bytes[i + 1] == 0 ? 1 : 0;
        }
        if (odd > length / 5 && even <= odd / 10) {
            return Optional.of(decoded(bytes, 0, StandardCharsets.UTF_16LE));
        }
        if (even > length / 5 && odd <= even / 10) {
            return Optional.of(decoded(bytes, 0, StandardCharsets.UTF_16BE));
        }
        return Optional.empty();
    }

    private static Encoding judged(byte[] bytes) {
        String detected = detected(bytes);
        boolean foreign = detected.startsWith("WINDOWS-1251")
                || detected.startsWith("KOI8")
                || detected.startsWith("SHIFT")
                || detected.startsWith("EUC")
                || detected.startsWith("GB")
                || detected.startsWith("BIG5");
        if (foreign && Charset.isSupported(detected)) {
            return new Encoding(new String(bytes, Charset.forName(detected)), detected, false);
        }
        String best = EIGHT_BIT.get(0);
        int fewest = Integer.MAX_VALUE;
        for (String name : EIGHT_BIT) {
            if (Charset.isSupported(name)) {
                int odd = oddSigns(head(bytes, Charset.forName(name)));
                if (odd < fewest) {
                    fewest = odd;
                    best = name;
                }
            }
        }
        return new Encoding(new String(bytes, Charset.forName(best)), best, false);
    }

    private static String detected(byte[] bytes) {
        UniversalDetector detector = new UniversalDetector();
        detector.handleData(bytes, 0, Math.min(bytes.length, SAMPLE));
        detector.dataEnd();
        String found = detector.getDetectedCharset();
        return found == null ? "" : found;
    }

    private static String head(byte[] bytes, Charset set) {
        return new String(bytes, 0, Math.min(bytes.length, 4 * SAMPLE), set);
    }

    /** Signs that stand beside a letter and are none, and capitals inside words of small letters. */
    private static int oddSigns(String text) {
        int odd = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < 128) {
                continue;
            }
            boolean besideSmall = (i > 0 && Character.isLowerCase(text.charAt(i - 1)))
                    || (i + 1 < text.length() && Character.isLowerCase(text.charAt(i + 1)));
            if (c == '\ufffd' || Character.isISOControl(c)) {
                odd += 4;
            } else if (!Character.isLetter(c)) {
                odd += besideSmall && c != '²' && c != '°' && c != '\u2019' ? 3 : 0;
            } else if (Character.isUpperCase(c) && i > 0 && Character.isLowerCase(text.charAt(i - 1))) {
                odd += 2;
            }
        }
        return odd;
    }

    private static Optional<Encoding> strict(byte[] bytes, int from, Charset set) {
        try {
            CharBuffer out = set.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, from, bytes.length - from));
            return Optional.of(new Encoding(out.toString(), set.name(), true));
        } catch (CharacterCodingException notThisOne) {
            return Optional.empty();
        }
    }

    private static Encoding decoded(byte[] bytes, int from, Charset set) {
        return new Encoding(new String(bytes, from, bytes.length - from, set), set.name(), true);
    }

    private static boolean starts(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
