package farwatt.house;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The plan of the house: which package may import which, and which library is at home where. The other classes here
 * turn it into rules; a new room or library is one line in this file.
 */
final class Rooms {

    /** The package above all rooms; it holds only the start of the program. */
    static final String BASE = "farwatt";

    /**
     * One package and its sub-packages.
     *
     * @param name the package below {@link #BASE}; empty for that package alone
     * @param sees the rooms it may import from, besides itself
     * @param reason why it may see these and no others
     */
    record Room(String name, Set<String> sees, String reason) {
        boolean maySee(Room other) {
            return name.equals(other.name) || sees.contains(other.name);
        }

        String packageName() {
            return name.isEmpty() ? BASE : BASE + "." + name;
        }

        /** As the rules want it: with everything below, but for the base, which is itself alone. */
        String pattern() {
            return name.isEmpty() ? BASE : packageName() + "..";
        }

        String title() {
            return name.isEmpty() ? "the start" : name;
        }
    }

    /**
     * One foreign library.
     *
     * @param packageName its root package
     * @param rooms the only rooms that may import it
     * @param reason why it stays there
     */
    record Library(String name, String packageName, Set<String> rooms, String reason) {
        String pattern() {
            return packageName + "..";
        }
    }

    private static final Set<String> NONE = Set.of();
    private static final Set<String> VALUES = Set.of("report", "quantity");
    private static final Set<String> TYPED = with(VALUES, "plan", "catalogue");
    private static final Set<String> MEANING = with(TYPED, "language", "standard");
    private static final Set<String> SOLVED = with(MEANING, "engine");
    private static final Set<String> JUDGED = with(SOLVED, "review", "study");

    /** Lowest first: a room sees only rooms listed before it. */
    static final List<Room> ALL = List.of(
            new Room("report", NONE, "every room speaks through it, so it can know none of them"),
            new Room("quantity", Set.of("report"), "a unit is the same whatever is measured"),
            new Room("plan", VALUES, "it holds what was typed and must not know what it means"),
            new Room("standard", VALUES, "facts hold whatever anyone plans"),
            new Room(
                    "catalogue",
                    with(VALUES, "plan", "standard"),
                    "it names the columns of the plan for all rooms above; constants come from the data files"),
            new Room("language", VALUES, "an expression sees names only through its scope, never through the plan"),
            new Room("circuit", NONE, "numbers in, numbers out: what it solves can be checked without a plan"),
            new Room("engine", with(MEANING, "circuit"), "it alone turns a plan into a circuit and back"),
            new Room("review", SOLVED, "it judges solved values, and never solves by itself"),
            new Room("study", SOLVED, "it repeats what the engine does, and never solves by itself"),
            new Room("document", TYPED, "undo and saving go by what was typed, not by what came of it"),
            new Room("file", TYPED, "a file keeps what was typed, and can be read when nothing can be solved"),
            new Room("intake", MEANING, "it makes a plan out of foreign lists, before anything is solved"),
            new Room("picture", JUDGED, "it draws what others found out"),
            new Room("workbook", with(JUDGED, "picture"), "a hand-over holds tables and pictures of what others found"),
            new Room(
                    "script",
                    with(JUDGED, "document", "file", "picture", "workbook"),
                    "a line at the console edits, asks, draws and saves a result as a workbook; a plan goes to the"
                            + " process that runs it, and what is kept comes back, as the text of a file"),
            new Room(
                    "command",
                    with(JUDGED, "document", "file", "intake", "picture", "workbook", "script"),
                    "a verb may use every room, but must run where there is no window"),
            new Room(
                    "window",
                    with(JUDGED, "document", "file", "intake", "picture", "workbook", "script"),
                    "the window uses every room, and no verb of the command line"),
            new Room("", Set.of("command", "window"), "the start chooses between window and command line, no more"));

    /** Every library that may be imported at all, besides what Java brings and the null annotations. */
    static final List<Library> LIBRARIES = List.of(
            new Library("Jackson", "com.fasterxml.jackson", Set.of("file", "command"), "JSON is a form of files"),
            new Library("POI", "org.apache.poi", Set.of("workbook", "intake"), "only these two touch workbooks"),
            new Library(
                    "WorkbookSchemas",
                    "org.openxmlformats",
                    Set.of("workbook"),
                    "words for a picture are set where POI has no call of its own"),
            new Library("FastCSV", "de.siegmar.fastcsv", Set.of("intake", "standard"), "only these two read lists"),
            new Library("juniversalchardet", "org.mozilla.universalchardet", Set.of("intake"), "others write UTF-8"),
            new Library("picocli", "picocli", Set.of("command"), "no other room knows how it was called"),
            new Library("GraalVM", "org.graalvm", Set.of("script"), "the program works without its console"),
            new Library("XChart", "org.knowm.xchart", Set.of("picture"), "charts are drawn in one room"),
            new Library("Batik", "org.apache.batik", Set.of("picture"), "pictures become SVG in one room"),
            new Library("JavaFX", "javafx", Set.of("window"), "the rest runs where there is no display"));

    /** Rooms whose results depend on nothing but what is handed in. */
    static final Set<String> PURE = with(SOLVED, "circuit", "review", "study", "document");

    /** The only rooms that may write to the terminal. */
    static final Set<String> SPEAKING = Set.of("command", "script", "");

    private Rooms() {}

    private static Set<String> with(Set<String> some, String... more) {
        Set<String> all = new TreeSet<>(some);
        all.addAll(Arrays.asList(more));
        return Set.copyOf(all);
    }
}
