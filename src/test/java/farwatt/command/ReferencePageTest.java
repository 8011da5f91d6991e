package farwatt.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ReferencePageTest {
    @Test
    void thePageInTheTreeIsWhatTheCatalogueSays() throws IOException {
        Path page = Path.of(System.getProperty("farwatt.root", "."), "src", "docs", "reference.md");
        assertEquals(
                ReferencePage.text(),
                Files.readString(page),
                "stale: run java -jar target/farwatt.jar names --page > src/docs/reference.md");
    }
}
