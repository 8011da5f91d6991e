package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.report.Cancel;
import farwatt.report.Progress;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandoverTest {
    @TempDir
    Path folder;

    @Test
    void isWritten() throws Exception {
        Path file = folder.resolve("landing.xlsx");
        Workbook.write(file, Landing.handover(Landing.plan()), Progress.SILENT, new Cancel());
        Files.createDirectories(Path.of("target/look"));
        Files.copy(file, Path.of("target/look/landing.xlsx"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertTrue(Files.size(file) > 1000);
    }
}
