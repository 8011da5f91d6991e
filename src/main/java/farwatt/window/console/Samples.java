package farwatt.window.console;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The scripts that come with the program. Any thread. */
final class Samples {
    private static final String FOLDER = "/farwatt/scripts/";

    /** Their file names, the ones for the plan that is open at first before the others. */
    static final List<String> NAMES = List.of(
            "ambient-against-gauge.js",
            "cameras-until-the-reserve-fails.js",
            "night-and-cold-start.js",
            "second-switch-or-thicker-cable.js",
            "tolerance-of-lengths.js",
            "which-input-matters.js",
            "longest-trunk-per-gauge.js",
            "fleet-of-300-sites.js");

    private Samples() {}

    static String text(String name) {
        try (InputStream in = Samples.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("no sample " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the sample says of itself first. */
    static String about(String name) {
        String text = text(name);
        int end = text.indexOf('\n');
        return text.substring(0, Math.max(0, end)).replaceFirst("^//\\s*", "");
    }
}
