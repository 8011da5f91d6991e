package farwatt.window.console;

import farwatt.window.remember.Remembered;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was run before, oldest first, kept between sessions; and a place in it. For the window's thread. */
public final class History {
    private static final String KEY = "console.history";
    /** Stands between two entries; nobody types it. */
    private static final String BETWEEN = "\u001e";

    private static final int MOST = 200;
    private static final int MOST_LETTERS = 60_000;

    private final Remembered remembered;
    private final List<String> entries = new ArrayList<>();
    private int at;
    private String draft = "";

    public History(Remembered remembered) {
        this.remembered = remembered;
        for (String entry : remembered.get(KEY, "").split(BETWEEN, -1)) {
            if (!entry.isBlank()) {
                entries.add(entry);
            }
        }
        at = entries.size();
    }

    /** All entries, oldest first. */
    public List<String> all() {
        return List.copyOf(entries);
    }

    /** Puts an entry at the end, where it is once only. */
    public void add(String text) {
        String entry = text.strip();
        if (!entry.isEmpty()) {
            entries.remove(entry);
            entries.add(entry);
            cut();
            remembered.put(KEY, String.join(BETWEEN, entries));
        }
        at = entries.size();
        draft = "";
    }

    private void cut() {
        int letters = entries.stream().mapToInt(String::length).sum();
        while (entries.size() > MOST || (letters > MOST_LETTERS && entries.size() > 1)) {
            letters -= entries.remove(0).length();
        }
    }

    /** The entry before; what stands in its place is kept when it is new. Empty at the first. */
    public Optional<String> older(String now) {
        if (at == 0) {
            return Optional.empty();
        }
        if (at == entries.size()) {
            draft = now;
        }
        at--;
        return Optional.of(entries.get(at));
    }

    /** The entry after, at the end what was begun. Empty there. */
    public Optional<String> newer() {
        if (at >= entries.size()) {
            return Optional.empty();
        }
        at++;
        return Optional.of(at == entries.size() ? draft : entries.get(at));
    }
}
