package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Texts that are compared with a file. To take over what the program says now:
 * {@code mvn -o -q test -Dtest='farwatt.review.*Test' -Dfarwatt.golden=update}; refused where {@code CI} is true.
 */
final class Golden {
    private static final Path FOLDER =
            Path.of(System.getProperty("farwatt.root", "."), "src", "test", "resources", "review");

    private Golden() {}

    static String read(String file) throws IOException {
        return Files.readString(FOLDER.resolve(file), StandardCharsets.UTF_8);
    }

    static void compare(String file, String text) throws IOException {
        if ("update".equals(System.getProperty("farwatt.golden"))) {
            assertNotEquals("true", System.getenv("CI"), "golden texts are not updated where nobody reads them");
            Files.writeString(FOLDER.resolve(file), text, StandardCharsets.UTF_8);
        }
        assertEquals(read(file), text, file);
    }
}
