package farwatt.script;

import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What is to be run.
 *
 * @param name what sentences call it
 * @param text the program
 * @param folder where it may read modules from; empty for what was typed
 * @param kind whether names last to the next
 */
public record Script(String name, String text, Optional<Path> folder, Kind kind) {
    private static final long MOST_BYTES = 4 << 20;

    /** How long names last. */
    public enum Kind {
        /** A whole program: begins with nothing and leaves nothing behind. */
        FILE,
        /** Lines at the console: they see what the lines before them named. */
        LINE
    }

    /**
     * A script in a file; modules come from its folder.
     *
     * @throws Refusal if it cannot be read
     */
    public static Script file(Path path) throws Refusal {
        try {
            if (Files.size(path) > MOST_BYTES) {
                throw Refusal.of(ScriptCode.TOO_LARGE, path, MOST_BYTES >> 20);
            }
            String text = Files.readString(path, StandardCharsets.UTF_8);
            Path whole = path.toRealPath();
            Path last = whole.getFileName();
            String name = last == null ? path.toString() : last.toString();
            return new Script(name, text, Optional.ofNullable(whole.getParent()), Kind.FILE);
        } catch (CharacterCodingException e) {
            throw Refusal.of(ScriptCode.NOT_TEXT, path);
        } catch (IOException e) {
            throw Refusal.of(ScriptCode.NO_SCRIPT, path);
        }
    }

    /** Lines typed at the console. */
    public static Script line(String text) {
        return new Script("console", text, Optional.empty(), Kind.LINE);
    }
}
