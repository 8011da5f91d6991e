package farwatt.language;

import farwatt.report.Code;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The reserved words. */
public enum Keyword implements Code {
    IF,
    THEN,
    ELSE,
    AND,
    OR,
    NOT,
    IS,
    YES,
    NO,
    THIS,
    PLAN,
    OF,
    ON,
    UNDER,
    WHERE,
    TOTAL,
    MEAN,
    LEAST,
    GREATEST,
    EVERY,
    SOME,
    COUNT;

    private static final Map<String, Keyword> WORDS = new HashMap<>();

    static {
        for (Keyword keyword : values()) {
            WORDS.put(keyword.word(), keyword);
        }
    }

    private final String word = name().toLowerCase(Locale.ROOT);

    /** As it is typed. */
    public String word() {
        return word;
    }

    static Optional<Keyword> of(String word) {
        return Optional.ofNullable(WORDS.get(word));
    }

    static Set<String> words() {
        return WORDS.keySet();
    }

    /** Those that a value may start with, gathers aside. */
    static Set<Keyword> startingValues() {
        return EnumSet.of(IF, NOT, YES, NO, THIS, PLAN);
    }

    /** The gather this word starts. */
    Optional<GatherKind> gather() {
        return compareTo(TOTAL) < 0 ? Optional.empty() : Optional.of(GatherKind.valueOf(name()));
    }

    @Override
    public String room() {
        return "language";
    }
}
