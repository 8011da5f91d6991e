package farwatt.engine;

import java.util.Optional;

/** Which draws at which temperatures; the order decides ties between corners. */
public enum Corner {
    /** Usual draws, air as it is now. */
    TYPICAL("typical", "in typical use", "draw_typical", "ambient"),
    /** Most draws, air as it is now. */
    MOST("most", "with everything at its most", "draw", "ambient"),
    /** Most draws on the hottest day. */
    HOT("hot", "with everything at its most on the hottest day", "draw", "hottest"),
    /** Everything starts in the coldest night; no sun. */
    COLD("cold", "when all start in the cold", "draw_start", "coldest"),
    /** Everything starts on the hottest day. */
    HOTSTART("hotstart", "when all start in the heat", "draw_start", "hottest");

    private final String word;
    private final String phrase;
    private final String drawName;
    private final String airName;

    Corner(String word, String phrase, String drawName, String airName) {
        this.word = word;
        this.phrase = phrase;
        this.drawName = drawName;
        this.airName = airName;
    }

    /** The word in files and on the command line. */
    public String word() {
        return word;
    }

    /** How a sentence says it. */
    public String phrase() {
        return phrase;
    }

    /** Which of a device's draws holds here. */
    public String drawName() {
        return drawName;
    }

    /** Which of a zone's temperatures holds here. */
    public String airName() {
        return airName;
    }

    boolean sunShines() {
        return this != COLD;
    }

    public static Optional<Corner> of(String word) {
        for (Corner corner : values()) {
            if (corner.word.equals(word)) {
                return Optional.of(corner);
            }
        }
        return Optional.empty();
    }
}
