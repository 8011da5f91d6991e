package farwatt.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The message catalogue: one file a room, {@code farwatt/messages/ROOM.properties}, a sentence a code with places
 * {@code {0}}, {@code {1}} … for what the speaker fills in. Safe for any thread.
 */
public final class Messages {
    private static final Map<String, Properties> ROOMS = new ConcurrentHashMap<>();

    private Messages() {}

    /** The sentence of a code with its places filled. A code without a sentence is a bug. */
    public static String text(Code code, Object... parts) {
        String pattern = pattern(code);
        StringBuilder out = new StringBuilder(pattern.length() + 32);
        int at = 0;
        while (at < pattern.length()) {
            int open = pattern.indexOf('{', at);
            if (open < 0 || open + 2 >= pattern.length() || pattern.charAt(open + 2) != '}') {
                break;
            }
            out.append(pattern, at, open).append(parts[pattern.charAt(open + 1) - '0']);
            at = open + 3;
        }
        return out.append(pattern, at, pattern.length()).toString();
    }

    /** The sentence as it stands in the catalogue. */
    public static String pattern(Code code) {
        String found = ROOMS.computeIfAbsent(code.room(), Messages::load).getProperty(code.key());
        if (found == null) {
            throw new IllegalStateException("no sentence for " + code.key());
        }
        return found;
    }

    /** Every sentence of a room by its key, in the order of the keys. */
    public static SortedMap<String, String> all(String room) {
        SortedMap<String, String> sentences = new TreeMap<>();
        Properties known = ROOMS.computeIfAbsent(room, Messages::load);
        known.stringPropertyNames().forEach(key -> sentences.put(key, known.getProperty(key)));
        return sentences;
    }

    private static Properties load(String room) {
        Properties sentences = new Properties();
        String path = "/farwatt/messages/" + room + ".properties";
        try (InputStream in = Messages.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("no message file " + path);
            }
            sentences.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return sentences;
    }
}
