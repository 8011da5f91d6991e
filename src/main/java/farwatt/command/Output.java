package farwatt.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * Where results and messages go: results to standard output in UTF-8, messages to standard error. A terminal that
 * cannot show more than ASCII gets plain spellings.
 */
final class Output {
    private static final Map<String, String> PLAIN = Map.ofEntries(
            Map.entry("°", "deg"),
            Map.entry("·", "-"),
            Map.entry("→", "->"),
            Map.entry("–", "-"),
            Map.entry("−", "-"),
            Map.entry("±", "+-"),
            Map.entry("…", "..."),
            Map.entry("Ω", "ohm"),
            Map.entry("≤", "<="),
            Map.entry("≥", ">="),
            Map.entry("×", "x"),
            Map.entry("²", "2"));

    private final PrintStream results;
    private final PrintStream messages;
    private final boolean plain;

    private Output(PrintStream results, PrintStream messages, boolean plain) {
        this.results = results;
        this.messages = messages;
        this.plain = plain;
    }

    /** Standard output and error of this process. */
    // newer Javas have a console without a terminal as well: a pipe then gets plain spellings, which anyone can read
    @SuppressWarnings("SystemConsoleNull")
    static Output standard() {
        boolean plain = System.console() != null && !isUnicode(Charset.defaultCharset());
        return new Output(
                new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8),
                new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8),
                plain);
    }

    /** True where someone may be looking on, so that it helps to tell how far the work is. */
    @SuppressWarnings("SystemConsoleNull")
    static boolean isWatched() {
        return System.console() != null;
    }

    private static boolean isUnicode(Charset charset) {
        return charset.name().startsWith("UTF");
    }

    /** One line of a result. */
    void line(String text) {
        results.print(spelled(text) + "\n");
    }

    /** One line to the person beside the result. */
    void say(String text) {
        results.flush();
        messages.print(spelled(text) + "\n");
    }

    /** Raw bytes of a result, for JSON. */
    PrintStream raw() {
        return results;
    }

    PrintStream errors() {
        return messages;
    }

    void flush() {
        results.flush();
        messages.flush();
    }

    private String spelled(String text) {
        if (!plain) {
            return text;
        }
        String out = text;
        for (Map.Entry<String, String> entry : PLAIN.entrySet()) {
            out = out.replace(entry.getKey(), entry.getValue());
        }
        return out;
    }
}
