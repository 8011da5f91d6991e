package farwatt.window.console;

import farwatt.script.ResultPicture;
import farwatt.script.ResultTable;

/** One thing that a script said. */
public sealed interface Piece {
    /**
     * Printed text.
     *
     * @param text one line or several
     */
    record Said(String text) implements Piece {}

    /** A table to look at. */
    record Listed(ResultTable table) implements Piece {}

    /** A picture to look at. */
    record Drawn(ResultPicture picture) implements Piece {}

    /**
     * A table that the script wants saved.
     *
     * @param name a plain file name
     */
    record Filed(String name, ResultTable table) implements Piece {}
}
