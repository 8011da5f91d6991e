package farwatt.window.remember;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;

/**
 * What is remembered between starts, in one small file of the person's own. What cannot be read is as if it had never
 * been; what cannot be written is remembered until the program ends. One thread at a time.
 */
public final class Remembered {
    private static final int MOST_RECENT = 8;

    private final Path file;
    private final Properties kept = new Properties();

    /** What is kept in a file, which need not be there yet. */
    public Remembered(Path file) {
        this.file = file;
        if (Files.isRegularFile(file)) {
            try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                kept.load(reader);
            } catch (IOException | IllegalArgumentException e) {
                kept.clear();
            }
        }
    }

    /** The folder it is in, where journals of plans without a file stand too. */
    public Path folder() {
        Path folder = file.toAbsolutePath().getParent();
        return folder == null ? Path.of("") : folder;
    }

    /** What is kept under a key, or something else. */
    public String get(String key, String otherwise) {
        return kept.getProperty(key, otherwise);
    }

    /** Keeps something. */
    public void put(String key, String value) {
        kept.setProperty(key, value);
        try {
            Files.createDirectories(folder());
            try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
                kept.store(writer, null);
            }
        } catch (IOException e) {
            // kept in memory: nobody should be bothered because a colour was not written down
            return;
        }
    }

    /** The plans opened last, newest first; those that are gone are left out. */
    public List<Path> recent() {
        List<Path> all = new ArrayList<>();
        for (int i = 0; i < MOST_RECENT; i++) {
            String text = kept.getProperty("recent." + i, "");
            try {
                if (!text.isEmpty() && Files.isRegularFile(Path.of(text))) {
                    all.add(Path.of(text));
                }
            } catch (InvalidPathException e) {
                kept.remove("recent." + i);
            }
        }
        return all;
    }

    /** Puts a plan first among the recent ones. */
    public void opened(Path plan) {
        List<Path> all = new ArrayList<>(recent());
        Path absolute = plan.toAbsolutePath().normalize();
        all.remove(absolute);
        all.add(0, absolute);
        for (int i = 0; i < MOST_RECENT; i++) {
            kept.setProperty("recent." + i, i < all.size() ? all.get(i).toString() : "");
        }
        put("recent", String.valueOf(Math.min(all.size(), MOST_RECENT)));
    }
}
