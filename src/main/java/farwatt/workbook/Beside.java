package farwatt.workbook;

import farwatt.report.Refusal;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file beside its target, flushes it to the disk and renames it over: whatever happens on the way, the target
 * is the old file or the whole new one, and nothing is left beside it.
 */
final class Beside {
    private static final int TRIES = 100;

    private Beside() {}

    /** What fills the file. */
    @FunctionalInterface
    interface Filling {
        void into(OutputStream out) throws IOException;
    }

    /**
     * Fills a file and puts it in its place.
     *
     * @throws Refusal with one sentence if it cannot be written; the old file is untouched then
     */
    static void write(Path target, Filling filling) throws Refusal {
        check(target);
        try {
            Path real = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
            replace(real, filling);
        } catch (IOException e) {
            throw refused(target, e);
        } catch (RuntimeException e) {
            throw refused(target, cause(e));
        }
    }

    /** Says no before any work is done. */
    static void check(Path target) throws Refusal {
        Path parent = target.toAbsolutePath().getParent();
        if (Files.isDirectory(target) || parent == null) {
            throw Refusal.of(WorkbookCode.IS_FOLDER, target);
        }
        if (!Files.isDirectory(parent)) {
            throw Refusal.of(WorkbookCode.NO_FOLDER, target, parent);
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw Refusal.of(WorkbookCode.NOT_WRITTEN, target, "it is no ordinary file");
        }
    }

    private static void replace(Path real, Filling filling) throws IOException {
        Path part = open(real);
        try {
            try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
                OutputStream out = Channels.newOutputStream(channel);
                filling.into(out);
                out.flush();
                channel.force(true);
            }
            Files.move(part, real, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** A new empty file beside the target, with the rights that new files have there. */
    private static Path open(Path real) throws IOException {
        for (int i = 1; ; i++) {
            Path part = real.resolveSibling("." + real.getFileName() + ".part" + i);
            try {
                return Files.createFile(part);
            } catch (FileAlreadyExistsException e) {
                if (i == TRIES || !Files.exists(part, LinkOption.NOFOLLOW_LINKS)) {
                    throw e;
                }
            }
        }
    }

    /** The sentence for what went wrong with a file. */
    static Refusal refused(Path target, IOException e) {
        return Refusal.of(WorkbookCode.NOT_WRITTEN, target, reason(e));
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "writing there is not allowed";
        }
        if (e instanceof NoSuchFileException) {
            return "its folder is gone";
        }
        String said = e instanceof FileSystemException file ? file.getReason() : e.getMessage();
        return said == null || said.isBlank() ? "the disk gave no reason" : said;
    }

    /** What the disk said, out of what a library wrapped around it; anything else goes on its way. */
    private static IOException cause(RuntimeException thrown) {
        for (Throwable at = thrown.getCause(); at != null; at = at.getCause()) {
            if (at instanceof IOException found) {
                return found;
            }
        }
        throw thrown;
    }
}
