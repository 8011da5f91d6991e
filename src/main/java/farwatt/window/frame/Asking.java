package farwatt.window.frame;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What the window asks a person in between. Each question may be left unanswered. */
public interface Asking {
    /** Which file to open. */
    Optional<Path> open(String title, List<String> endings);

    /** Where to save. */
    Optional<Path> save(String title, String suggested, List<String> endings);

    /** One line of text. */
    Optional<String> text(String title, String question, String suggested);

    /** One of several ways to go on, given as they are on the buttons; empty for none of them. */
    Optional<String> choose(String title, String question, List<String> ways);

    /**
     * Any number of things.
     *
     * @return places of those that are wanted, ascending
     */
    Optional<List<Integer>> pick(String title, String question, List<Offer> offers);

    /** A thing to be picked or not, and what holds before anyone says. */
    record Offer(String name, Usual usual) {}

    /** What holds before anyone says. */
    enum Usual {
        IN,
        OUT
    }
}
