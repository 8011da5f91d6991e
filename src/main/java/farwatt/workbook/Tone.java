package farwatt.workbook;

/** How a cell is meant; never the only carrier of a meaning, a word or number always stands with it. */
public enum Tone {
    PLAIN,
    /** Not typed by a person: a default took its place. */
    QUIET,
    GOOD,
    /** Holds, but someone should look. */
    POOR,
    BAD,
    /** Grounds from pale to deep for numbers from low to high. */
    SHADE_1,
    SHADE_2,
    SHADE_3,
    SHADE_4,
    SHADE_5
}
