package farwatt.study;

import java.util.Optional;

/** One point of a study: a value in every column. Valid until the next one is handed out. */
public interface Point {
    /** Which one, counted from 0. */
    long number();

    /** The inside value in a column; a NaN where there is none, or where it is a text or a row. */
    double inside(int column);

    /** The value in a column as a person reads it; a dash where there is none. */
    String text(int column);

    /** Why there is no value in a column; empty where there is one. */
    Optional<String> why(int column);
}
