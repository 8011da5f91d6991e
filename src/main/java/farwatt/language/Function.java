package farwatt.language;

import farwatt.report.Code;
import java.util.Locale;
import java.util.Optional;

/** The functions. */
public enum Function implements Code {
    MIN(2, Integer.MAX_VALUE),
    MAX(2, Integer.MAX_VALUE),
    ABS(1, 1),
    SQRT(1, 1),
    ROUND(2, 2),
    DOWN(2, 2),
    UP(2, 2);

    private final String word = name().toLowerCase(Locale.ROOT);
    private final int fewest;
    private final int most;

    Function(int fewest, int most) {
        this.fewest = fewest;
        this.most = most;
    }

    /** As it is typed. */
    public String word() {
        return word;
    }

    /** How many values it takes at least. */
    public int fewest() {
        return fewest;
    }

    /** How many values it takes at most. */
    public int most() {
        return most;
    }

    static Optional<Function> of(String word) {
        for (Function function : values()) {
            if (function.word().equals(word)) {
                return Optional.of(function);
            }
        }
        return Optional.empty();
    }

    @Override
    public String room() {
        return "language";
    }
}
