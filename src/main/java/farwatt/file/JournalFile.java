package farwatt.file;

import farwatt.plan.Change;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the changes of an open plan that are not saved yet in a file beside it, so that a crash loses none that were
 * added. There is no such file as long as there is nothing unsaved. A change is safe from a crash of the program once
 * {@link #add} returns, and from one of the machine once {@link #flush} does. For one thread at a time; only
 * {@link #flush} may be called from another.
 */
public final class JournalFile implements AutoCloseable {
    private final Path file;
    private Fingerprint base;
    private volatile @Nullable FileChannel channel;

    private JournalFile(Path file, Fingerprint base) {
        this.file = file;
        this.base = base;
    }

    /** Where the journal of a plan file is: {@code .NAME.journal} beside it. */
    public static Path beside(Path plan) {
        return plan.toAbsolutePath().resolveSibling("." + plan.getFileName() + ".journal");
    }

    /**
     * What a crash left unsaved; empty where nothing is.
     *
     * @param file the journal
     * @param plan fingerprint of the plan file as it is now
     * @throws IOException if there is a journal that cannot be read
     */
    public static Optional<Recovered> recover(Path file, Fingerprint plan) throws IOException {
        return Files.exists(file) ? JournalText.read(file).unsaved(plan) : Optional.empty();
    }

    /**
     * A new journal; one that is there already is replaced with the first change.
     *
     * @param plan fingerprint of the plan file that the changes will stand on
     */
    public static JournalFile start(Path file, Fingerprint plan) {
        return new JournalFile(file, plan);
    }

    /**
     * Goes on with a journal whose changes were taken over, on the same plan file.
     *
     * @throws IOException if it cannot be read and written
     */
    public static JournalFile resume(Path file) throws IOException {
        JournalText text = JournalText.read(file);
        Fingerprint base = text.base().orElseThrow(() -> new IOException("no journal: " + file));
        JournalFile journal = new JournalFile(file, base);
        FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
        journal.channel = channel;
        channel.truncate(text.end()).position(text.end());
        return journal;
    }

    /** Adds a change that was made. After an exception the journal is as it was before. */
    public void add(Change change) throws IOException {
        append(JournalText.change(change));
    }

    /**
     * Notes that the plan file is about to become another, so that changes are not offered again where a crash comes
     * between the save and {@link #saved}.
     *
     * @param next fingerprint of the bytes that will be saved
     */
    public void saving(Fingerprint next) throws IOException {
        if (channel != null) {
            append(JournalText.mark(next));
            flush();
        }
    }

    /** Everything is saved: takes the file away; the next change starts it anew. */
    public void saved(Fingerprint next) throws IOException {
        base = next;
        discard();
    }

    /** Takes the file away, its changes being saved or not wanted. */
    public void discard() throws IOException {
        close();
        Files.deleteIfExists(file);
    }

    /** Waits until all that was added is on the disk. */
    public void flush() throws IOException {
        FileChannel open = channel;
        if (open == null) {
            return;
        }
        try {
            open.force(false);
        } catch (ClosedChannelException e) {
            // closed by the other thread meanwhile: nothing is left to wait for
            return;
        }
    }

    /** Leaves the file as it is. */
    @Override
    public void close() throws IOException {
        FileChannel open = channel;
        channel = null;
        if (open != null) {
            open.close();
        }
    }

    private void append(String line) throws IOException {
        FileChannel open = channel;
        if (open == null) {
            open = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING);
            channel = open;
        }
        long before = open.position();
        String text = before == 0 ? JournalText.head(base) + line : line;
        try {
            ByteBuffer left = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (left.hasRemaining()) {
                open.write(left);
            }
        } catch (IOException e) {
            open.truncate(before).position(before);
            throw e;
        }
    }
}
