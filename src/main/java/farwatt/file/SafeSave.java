package farwatt.file;

import farwatt.catalogue.Wording;
import farwatt.plan.Plan;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;

/**
 * Saves plan files: written beside, flushed to the disk, renamed over. At any moment the file is the whole old one or
 * the whole new one; when saving fails it is the old one and nothing is left beside it. Links are followed; an existing
 * file's permissions are kept. Safe for any thread, but not for two threads and one file.
 */
public final class SafeSave {
    private static final Set<PosixFilePermission> WRITING =
            Set.of(PosixFilePermission.OWNER_WRITE, PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);

    private static final String BESIDE = ".saving";
    /** Links that lead on to links; more than that are a ring. */
    private static final int MOST_LINKS = 40;

    private static final Duration LEFT_BEHIND = Duration.ofDays(1);

    private final Disk disk;

    public SafeSave() {
        this(new Disk());
    }

    SafeSave(Disk disk) {
        this.disk = disk;
    }

    /**
     * Saves a plan.
     *
     * @param wording knows how expressions are written
     * @param opened fingerprint of the file as it was opened or last saved; {@link Fingerprint#NONE} for a new file
     * @param underneath what to do if the file is another one by now
     * @return fingerprint of the file as saved
     * @throws Refusal if it was not saved; the file is as it was
     */
    public Fingerprint save(Plan plan, Path path, Wording wording, Fingerprint opened, Underneath underneath)
            throws Refusal {
        if (plan.version() > Plan.VERSION) {
            throw Refusal.of(FileCode.NEWER_KEPT, path);
        }
        return save(PlanWriter.bytes(plan, wording), path, opened, underneath);
    }

    /**
     * Saves a plan whose unsaved changes are in a journal, and takes the journal away: whenever a crash comes, what it
     * offers afterwards is not in the file yet.
     *
     * @throws Refusal if it was not saved; file and journal are as they were
     */
    public Fingerprint save(
            Plan plan, Path path, Wording wording, Fingerprint opened, Underneath underneath, JournalFile journal)
            throws Refusal {
        if (plan.version() > Plan.VERSION) {
            throw Refusal.of(FileCode.NEWER_KEPT, path);
        }
        byte[] bytes = PlanWriter.bytes(plan, wording);
        Fingerprint next = Fingerprint.of(bytes);
        try {
            journal.saving(next);
        } catch (IOException e) {
            throw failed(e, path, path.toAbsolutePath(), bytes.length);
        }
        save(bytes, path, opened, underneath);
        try {
            journal.saved(next);
        } catch (IOException e) {
            // it knows that this was saved, so it offers nothing twice
            return next;
        }
        return next;
    }

    Fingerprint save(byte[] bytes, Path path, Fingerprint opened, Underneath underneath) throws Refusal {
        Path target = target(path);
        check(path, target);
        Path beside = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + BESIDE);
        try {
            disk.write(beside, bytes);
            copyRights(target, beside);
            checkUnderneath(path, target, opened, underneath);
            disk.replace(beside, target);
        } catch (IOException e) {
            throw failed(e, path, target, bytes.length);
        } finally {
            removed(beside);
        }
        disk.settle(folder(target));
        sweep(target);
        return Fingerprint.of(bytes);
    }

    /** The file itself where the path is a link to it, the link's end though nothing is there yet. */
    private static Path target(Path path) throws Refusal {
        Path target = path.toAbsolutePath();
        try {
            for (int links = 0; links < MOST_LINKS && Files.isSymbolicLink(target); links++) {
                target = target.resolveSibling(Files.readSymbolicLink(target)).normalize();
            }
        } catch (IOException e) {
            throw Refusal.of(FileCode.NOT_WRITTEN, path);
        }
        if (Files.isSymbolicLink(target)) {
            throw Refusal.of(FileCode.NO_ORDINARY_FILE, path);
        }
        return target;
    }

    private static void check(Path path, Path target) throws Refusal {
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw Refusal.of(FileCode.NO_ORDINARY_FILE, path);
        }
        if (!Files.isDirectory(folder(target))) {
            throw Refusal.of(FileCode.NO_FOLDER, path);
        }
        try {
            if (Files.exists(target) && isProtected(target)) {
                throw Refusal.of(FileCode.READ_ONLY, path);
            }
        } catch (IOException e) {
            throw Refusal.of(FileCode.NO_RIGHT, path);
        }
    }

    /** True where nobody may write, be it that this user could rename over it all the same. */
    private static boolean isProtected(Path target) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(target, PosixFileAttributeView.class);
        boolean nobody =
                view != null && view.readAttributes().permissions().stream().noneMatch(WRITING::contains);
        return nobody || !Files.isWritable(target);
    }

    private static void copyRights(Path target, Path beside) throws IOException {
        PosixFileAttributeView from = Files.getFileAttributeView(target, PosixFileAttributeView.class);
        PosixFileAttributeView to = Files.getFileAttributeView(beside, PosixFileAttributeView.class);
        if (from == null || to == null || !Files.exists(target)) {
            return;
        }
        PosixFileAttributes rights = from.readAttributes();
        try {
            to.setOwner(rights.owner());
            to.setGroup(rights.group());
        } catch (IOException e) {
            // only root gives files away; the saver's own file with the same permissions is what remains
            to.setPermissions(rights.permissions());
            return;
        }
        to.setPermissions(rights.permissions());
    }

    private static void checkUnderneath(Path path, Path target, Fingerprint opened, Underneath underneath)
            throws IOException, Refusal {
        if (underneath == Underneath.OVERWRITE || !Files.exists(target)) {
            return;
        }
        if (opened.equals(Fingerprint.NONE)) {
            throw Refusal.of(FileCode.ALREADY_THERE, path);
        }
        if (!Fingerprint.of(Files.readAllBytes(target)).equals(opened)) {
            throw Refusal.of(FileCode.CHANGED_UNDERNEATH, path);
        }
    }

    private Refusal failed(IOException e, Path path, Path target, int size) {
        if (e instanceof AccessDeniedException) {
            return Refusal.of(FileCode.NO_RIGHT, path);
        }
        try {
            return Refusal.of(disk.room(folder(target)) < size ? FileCode.DISK_FULL : FileCode.NOT_WRITTEN, path);
        } catch (IOException unknown) {
            return Refusal.of(FileCode.NOT_WRITTEN, path);
        }
    }

    /** After a rename nothing is there any more to be removed. */
    private static void removed(Path beside) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException e) {
            // the plan is what was asked about; what is left is swept up after a later save
            return;
        }
    }

    /** Removes what saves that were killed left beside the file, once it is so old that no save is still at it. */
    private static void sweep(Path target) {
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder(target), file -> isBeside(target, file))) {
            Instant now = Files.getLastModifiedTime(target).toInstant();
            for (Path file : all) {
                if (Files.getLastModifiedTime(file)
                        .toInstant()
                        .plus(LEFT_BEHIND)
                        .isBefore(now)) {
                    removed(file);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // the plan is saved; what is left is swept up after a later save
            return;
        }
    }

    private static boolean isBeside(Path target, Path file) {
        String name = String.valueOf(file.getFileName());
        return name.startsWith("." + target.getFileName() + ".") && name.endsWith(BESIDE);
    }

    private static Path folder(Path target) {
        Path folder = target.getParent();
        return folder == null ? target : folder;
    }
}
