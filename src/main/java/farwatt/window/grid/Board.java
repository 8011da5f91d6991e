package farwatt.window.grid;

import java.util.Optional;

/** The clipboard, as far as the grid uses it. */
interface Board {
    /** The text on it, if there is one. */
    Optional<String> text();

    void put(String text);
}
