package farwatt.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Shows others that a plan is open here: a file beside it, {@code .NAME.lock}, locked as long as the plan is open and
 * naming who has it. It warns and never stops anyone; a crash frees it. Close it when the plan is closed.
 */
public final class PlanLock implements AutoCloseable {
    /** Far behind the text, so that others can read who it is even where a lock shuts readers out. */
    private static final long BYTE = 1L << 40;

    private static final int TRIES = 16;

    /**
     * What this very program holds, by lock file. Some systems free all of a program's locks on a file as soon as it
     * closes any channel to it, so a lock that is held here is never opened a second time.
     */
    private static final Map<Path, String> HELD = new ConcurrentHashMap<>();

    private final Path file;
    private final FileChannel channel;

    private PlanLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** What became of the wish for a lock. */
    public sealed interface Outcome {
        /** The plan is open nowhere else. */
        record Held(PlanLock lock) implements Outcome {}

        /**
         * The plan is open elsewhere.
         *
         * @param owner the text that the other one left
         */
        record Elsewhere(String owner) implements Outcome {}

        /** Nobody can tell here: the folder is read-only, or its disk knows no locks. */
        record Unknown() implements Outcome {}
    }

    /**
     * Takes the lock beside a plan file.
     *
     * @param owner what others are told, such as a name, a machine and a time
     */
    public static Outcome take(Path plan, String owner) {
        try {
            Path absolute = Files.exists(plan) ? plan.toRealPath() : plan.toAbsolutePath();
            Path folder =
                    Optional.ofNullable(absolute.getParent()).orElse(absolute).toRealPath();
            Path file = folder.resolve("." + absolute.getFileName() + ".lock");
            String here = HELD.putIfAbsent(file, owner);
            return here == null ? outside(file, owner) : new Outcome.Elsewhere(here);
        } catch (IOException e) {
            return new Outcome.Unknown();
        }
    }

    /** Asks other programs, once this one is known not to have it. */
    private static Outcome outside(Path file, String owner) throws IOException {
        Outcome outcome = new Outcome.Unknown();
        try {
            for (int i = 0; i < TRIES && outcome instanceof Outcome.Unknown; i++) {
                outcome = attempt(file, owner);
            }
            return outcome;
        } finally {
            if (!(outcome instanceof Outcome.Held)) {
                HELD.remove(file);
            }
        }
    }

    /** Unknown where the file came or went in between. */
    private static Outcome attempt(Path file, String owner) throws IOException {
        Optional<Object> before = key(file);
        StandardOpenOption how = before.isPresent() ? StandardOpenOption.CREATE : StandardOpenOption.CREATE_NEW;
        FileChannel channel;
        try {
            channel = FileChannel.open(file, how, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            return new Outcome.Unknown();
        }
        boolean held = false;
        try {
            Optional<Object> opened = before.isPresent() ? before : key(file);
            FileLock lock = channel.tryLock(BYTE, 1, false);
            if (lock == null) {
                return new Outcome.Elsewhere(Files.readString(file).strip());
            }
            if (!opened.equals(key(file))) {
                return new Outcome.Unknown();
            }
            channel.truncate(0).write(ByteBuffer.wrap((owner + "\n").getBytes(StandardCharsets.UTF_8)), 0);
            held = true;
            return new Outcome.Held(new PlanLock(file, channel));
        } finally {
            if (!held) {
                channel.close();
            }
        }
    }

    /** What tells this file from another of the same name, found without opening it. */
    private static Optional<Object> key(Path file) throws IOException {
        try {
            Object key = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
            return Optional.of(key == null ? file : key);
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    /** Takes the file away and frees the lock. */
    @Override
    public void close() throws IOException {
        try (channel) {
            Files.deleteIfExists(file);
        } finally {
            HELD.remove(file);
        }
    }
}
