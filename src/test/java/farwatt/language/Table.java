package farwatt.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** Rows of a data file: fields apart by §, lines that start with # left out. */
final class Table {
    private Table() {}

    static Stream<Arguments> rows(String path, int fields) {
        return lines(path).stream().map(line -> row(path, line, fields));
    }

    private static Arguments row(String path, String line, int fields) {
        String[] parts = line.split("§", -1);
        if (parts.length != fields) {
            throw new AssertionError(path + " has " + parts.length + " fields, not " + fields + ": " + line);
        }
        return Arguments.of((Object[]) Stream.of(parts).map(String::strip).toArray(String[]::new));
    }

    static List<String> lines(String path) {
        try (InputStream in = Objects.requireNonNull(Table.class.getResourceAsStream(path), path)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
