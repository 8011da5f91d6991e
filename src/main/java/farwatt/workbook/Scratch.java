package farwatt.workbook;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.util.TempFile;
import org.apache.poi.util.TempFileCreationStrategy;

/**
 * A folder of its own for what the workbook library lays aside while it writes. For the thread that opens it; gone
 * with everything in it when closed.
 */
final class Scratch implements TempFileCreationStrategy, AutoCloseable {
    private final Path folder;

    private Scratch(Path folder) {
        this.folder = folder;
    }

    static Scratch open() throws IOException {
        Scratch scratch = new Scratch(Files.createTempDirectory(prefix()));
        TempFile.setThreadLocalTempFileCreationStrategy(scratch);
        return scratch;
    }

    /** Folders of a process that was killed can be told from those of one that works. */
    static String prefix() {
        return "farwatt-" + ProcessHandle.current().pid() + "-";
    }

    @Override
    public File createTempFile(String prefix, String suffix) throws IOException {
        return Files.createTempFile(folder, prefix, suffix).toFile();
    }

    @Override
    public File createTempDirectory(String prefix) throws IOException {
        return Files.createTempDirectory(folder, prefix).toFile();
    }

    @Override
    @SuppressWarnings("NullAway") // a null is how the library is told to go back to its own way
    public void close() throws IOException {
        TempFile.setThreadLocalTempFileCreationStrategy(null);
        List<Path> all;
        try (Stream<Path> found = Files.walk(folder)) {
            all = found.sorted(Comparator.reverseOrder()).toList();
        } catch (UncheckedIOException e) {
            throw new IOException(e.getMessage(), e);
        }
        for (Path path : all) {
            Files.deleteIfExists(path);
        }
    }
}
