package farwatt.intake;

import farwatt.standard.PortType;
import farwatt.standard.PowerClass;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A power class or type as customers word it.
 *
 * @param sort what was named
 * @param number the class 0 to 8 or the type 1 to 4; volts of a passive feed, 0 where not named
 * @param shown the standard's own wording
 */
record ClassWord(Sort sort, int number, String shown) {
    /** What a class cell named. */
    enum Sort {
        CLASS,
        TYPE,
        /** Four pairs by the newer clause, type 3 or 4 left open. */
        TYPE_OPEN,
        PASSIVE,
        /** Fed from elsewhere, not over the network cable. */
        OUTSIDE,
        /** Nothing there, or that power comes over the cable but not how much. */
        BLANK,
        UNREAD
    }

    private static final Pattern CLASS =
            Pattern.compile("\\b(?:class|klasse|classe|clase|klasa|cl|kl)\\.?\\s*:?\\s*([0-8])\\b");
    private static final Pattern TYPE = Pattern.compile("\\b(?:type|typ|tipo|t)\\.?\\s*([1-4])\\b");
    private static final Pattern PASSIVE =
            Pattern.compile("\\bpassi\\w*\\b(?:\\D*(\\d{1,2})\\s*v\\w*)?|(\\d{1,2})\\s*v\\w*\\s*passi\\w*");
    private static final Pattern BT =
            Pattern.compile("\\b(?:802[.,]?3[ -]?)?bt\\b|poe ?\\+ ?\\+|4 ?p(?:air)? ?poe|poe ?plus ?plus");
    private static final Pattern AT = Pattern.compile("\\b(?:802[.,]?3[ -]?)?at\\b|poe ?\\+|poe ?plus");
    private static final Pattern AF = Pattern.compile("\\b(?:802[.,]?3[ -]?)?af\\b|\\bpoe\\b");
    private static final Pattern YES = Pattern.compile("yes|ja|oui|si|sí|sim|tak|y|x|1?");

    static ClassWord read(String typed) {
        String text = Spelling.lower(Spelling.tidy(typed));
        String folded = Spelling.fold(text);
        if (folded.isEmpty()) {
            return new ClassWord(Sort.BLANK, 0, "");
        }
        if (text.length() == 1 && text.charAt(0) >= '0' && text.charAt(0) <= '8') {
            return ofClass(text.charAt(0) - '0');
        }
        Matcher m = CLASS.matcher(text);
        if (m.find()) {
            return ofClass(Integer.parseInt(m.group(1)));
        }
        m = PASSIVE.matcher(text);
        if (m.find()) {
            String volts = m.group(1) == null ? m.group(2) : m.group(1);
            return new ClassWord(Sort.PASSIVE, volts == null ? 0 : Integer.parseInt(volts), "passive");
        }
        m = TYPE.matcher(text);
        if (m.find()) {
            return ofType(Integer.parseInt(m.group(1)));
        }
        return byStandard(text, folded);
    }

    private static ClassWord byStandard(String text, String folded) {
        if (BT.matcher(text).find()) {
            return new ClassWord(Sort.TYPE_OPEN, 3, "802.3bt");
        }
        if (AT.matcher(text).find()) {
            return ofType(2);
        }
        if (AF.matcher(text).find()) {
            return ofType(1);
        }
        if (folded.equals("none") || folded.equals("no") || folded.equals("nein") || isOutside(folded)) {
            return new ClassWord(Sort.OUTSIDE, 0, "none");
        }
        if (Words.isRemark("missing", folded) || YES.matcher(folded).matches()) {
            return new ClassWord(Sort.BLANK, 0, "");
        }
        return new ClassWord(Sort.UNREAD, 0, typedOrEmpty(text));
    }

    private static String typedOrEmpty(String text) {
        return text.length() > 40 ? text.substring(0, 40) : text;
    }

    private static boolean isOutside(String folded) {
        for (String word : folded.split(" ", -1)) {
            if (Words.isRemark("outside", word)) {
                return true;
            }
        }
        return Words.isRemark("outside", folded);
    }

    private static ClassWord ofClass(int number) {
        return new ClassWord(Sort.CLASS, number, "class " + number);
    }

    private static ClassWord ofType(int number) {
        return new ClassWord(
                Sort.TYPE,
                number,
                switch (number) {
                    case 1 -> "802.3af";
                    case 2 -> "802.3at";
                    default -> "type " + number;
                });
    }

    /** True when the word limits the watts. */
    boolean hasRight() {
        return sort == Sort.CLASS || sort == Sort.TYPE || sort == Sort.TYPE_OPEN;
    }

    /** The class it stands for: its own, or the largest of its type. */
    int topClass() {
        if (sort == Sort.CLASS) {
            return number;
        }
        return PortType.of(String.valueOf(number)).orElseThrow().topClass();
    }

    /** Watts a device may take by it. */
    double deviceWatts() {
        return PowerClass.of(topClass()).deviceWatts();
    }
}
