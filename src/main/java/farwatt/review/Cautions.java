package farwatt.review;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What always holds, for every result and workbook: one sentence a line in a data file. */
final class Cautions {
    private static final List<String> LINES = load();

    private Cautions() {}

    static List<String> lines() {
        return LINES;
    }

    private static List<String> load() {
        try (InputStream in = Cautions.class.getResourceAsStream("cautions.txt")) {
            if (in == null) {
                throw new IllegalStateException("no file of cautions");
            }
            String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return all.lines().filter(line -> !line.isBlank()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
