package farwatt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import farwatt.catalogue.Wording;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeSaveTest {
    private static final Plan PLAN = Plan.EMPTY.and(Table.RUNS, Row.of("trunk").with("length", "95 m"));
    private static final byte[] OLD = "{\"farwatt\": 1}\n".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path folder;

    /** A disk that fails at one point of the way. */
    private static final class BadDisk extends Disk {
        private final String point;
        private final IOException failure;
        private final long room;

        BadDisk(String point, IOException failure, long room) {
            this.point = point;
            this.failure = failure;
            this.room = room;
        }

        @Override
        void write(Path path, byte[] bytes) throws IOException {
            if (point.equals("open")) {
                throw failure;
            }
            super.write(path, point.equals("write") ? Arrays.copyOf(bytes, bytes.length / 2) : bytes);
            if (point.equals("write") || point.equals("force")) {
                throw failure;
            }
        }

        @Override
        void replace(Path from, Path to) throws IOException {
            if (point.equals("replace")) {
                throw failure;
            }
            super.replace(from, to);
        }

        @Override
        long room(Path path) throws IOException {
            if (room < 0) {
                throw new IOException("no room known");
            }
            return room;
        }
    }

    @Test
    void aNewPlanIsSavedAndReadBack() throws Exception {
        Path file = folder.resolve("quay.farwatt.json");
        Fingerprint saved = new SafeSave().save(PLAN, file, Wording.PLAIN, Fingerprint.NONE, Underneath.REFUSE);
        Opened opened = PlanReader.read(file);
        assertEquals(PLAN.rows(Table.RUNS), opened.plan().rows(Table.RUNS));
        assertEquals(saved, opened.fingerprint());
        assertEquals(List.of("quay.farwatt.json"), names());
    }

    @Test
    void savingAgainAndAgainKeepsTheThread() throws Exception {
        Path file = old();
        Fingerprint print = Fingerprint.of(OLD);
        for (int i = 0; i < 3; i++) {
            Plan plan = PLAN.and(Table.RUNS, Row.of("spur " + i));
            print = new SafeSave().save(plan, file, Wording.PLAIN, print, Underneath.REFUSE);
        }
        assertEquals(print, PlanReader.read(file).fingerprint());
        assertEquals(1, names().size());
    }

    @Test
    void aFileThatChangedUnderneathIsNotOverwrittenUnlessToldTo() throws Exception {
        Path file = old();
        Fingerprint opened = Fingerprint.of(OLD);
        Files.writeString(file, "{\"farwatt\": 1, \"plan\": {}}");
        assertEquals(
                file + " was changed by another program since it was opened; save under another name, or overwrite it",
                refusal(new SafeSave(), file, opened, Underneath.REFUSE));
        assertEquals("{\"farwatt\": 1, \"plan\": {}}", Files.readString(file));
        new SafeSave().save(PLAN, file, Wording.PLAIN, opened, Underneath.OVERWRITE);
        assertEquals(1, PlanReader.read(file).plan().rows(Table.RUNS).size());
    }

    @Test
    void aFileThatIsThereAlreadyIsNotOverwrittenUnlessToldTo() throws Exception {
        Path file = old();
        assertEquals(
                file + " is there already; choose another name, or overwrite it",
                refusal(new SafeSave(), file, Fingerprint.NONE, Underneath.REFUSE));
        unchanged(file);
        new SafeSave().save(PLAN, file, Wording.PLAIN, Fingerprint.NONE, Underneath.OVERWRITE);
    }

    @Test
    void aFileThatWasDeletedMeanwhileIsSimplySaved() throws Exception {
        Path file = folder.resolve("gone.json");
        new SafeSave().save(PLAN, file, Wording.PLAIN, Fingerprint.of(OLD), Underneath.REFUSE);
        assertTrue(Files.exists(file));
    }

    @Test
    void aFullDiskLeavesTheOldFileAlone() throws Exception {
        for (String point : List.of("open", "write", "force", "replace")) {
            Path file = old();
            SafeSave full = new SafeSave(new BadDisk(point, new IOException("full"), 3));
            assertEquals(
                    file
                            + " was not saved because its disk is full; make room and save again: the file is as it was before",
                    refusal(full, file, Fingerprint.of(OLD), Underneath.REFUSE),
                    point);
            unchanged(file);
        }
    }

    @Test
    void aDiskThatFailsOtherwiseLeavesTheOldFileAlone() throws Exception {
        Path file = old();
        String sentence = file
                + " was not saved because its disk did not take it; try again or save elsewhere: the file is as it was"
                + " before";
        for (long room : new long[] {1 << 30, -1}) {
            SafeSave broken = new SafeSave(new BadDisk("force", new IOException("broken"), room));
            assertEquals(sentence, refusal(broken, file, Fingerprint.of(OLD), Underneath.REFUSE));
            unchanged(file);
        }
        SafeSave barred = new SafeSave(new BadDisk("open", new AccessDeniedException("x"), 1 << 30));
        assertEquals(
                file + " cannot be written here, for want of the right to; choose another folder",
                refusal(barred, file, Fingerprint.of(OLD), Underneath.REFUSE));
        unchanged(file);
    }

    @Test
    void whatIsNoOrdinaryFileIsLeftAlone() throws Exception {
        assertEquals(
                folder + " is a folder or a device and cannot hold a plan; choose another name",
                refusal(new SafeSave(), folder, Fingerprint.NONE, Underneath.OVERWRITE));
        Path device = Path.of("/dev/full");
        if (Files.exists(device)) {
            assertEquals(
                    device + " is a folder or a device and cannot hold a plan; choose another name",
                    refusal(new SafeSave(), device, Fingerprint.NONE, Underneath.OVERWRITE));
        }
        Path nowhere = folder.resolve("no/such/plan.json");
        assertEquals(
                "The folder of " + nowhere + " is not there; choose another folder",
                refusal(new SafeSave(), nowhere, Fingerprint.NONE, Underneath.REFUSE));
    }

    @Test
    void aProtectedFileIsNotReplaced() throws Exception {
        assumeTrue(posix());
        Path file = old();
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        assertEquals(
                file + " is protected against writing; save under another name, or lift the protection",
                refusal(new SafeSave(), file, Fingerprint.of(OLD), Underneath.OVERWRITE));
        unchanged(file);
    }

    @Test
    void permissionsAreKept() throws Exception {
        assumeTrue(posix());
        Path file = old();
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r-x"));
        new SafeSave().save(PLAN, file, Wording.PLAIN, Fingerprint.of(OLD), Underneath.REFUSE);
        assertEquals("rw-rw-r-x", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void linksAreFollowed() throws Exception {
        assumeTrue(posix());
        Path file = old();
        Path inner = Files.createDirectory(folder.resolve("inner"));
        Path link = Files.createSymbolicLink(inner.resolve("link.json"), Path.of("../quay.json"));
        Path second = Files.createSymbolicLink(folder.resolve("second.json"), link);
        new SafeSave().save(PLAN, second, Wording.PLAIN, Fingerprint.of(OLD), Underneath.REFUSE);
        assertTrue(Files.isSymbolicLink(link) && Files.isSymbolicLink(second));
        assertEquals(1, PlanReader.read(file).plan().rows(Table.RUNS).size());

        Path dangling = Files.createSymbolicLink(folder.resolve("dangling.json"), Path.of("inner/new.json"));
        new SafeSave().save(PLAN, dangling, Wording.PLAIN, Fingerprint.NONE, Underneath.REFUSE);
        assertTrue(Files.isRegularFile(inner.resolve("new.json")));

        Path ring = Files.createSymbolicLink(folder.resolve("ring.json"), Path.of("ring.json"));
        assertEquals(
                ring + " is a folder or a device and cannot hold a plan; choose another name",
                refusal(new SafeSave(), ring, Fingerprint.NONE, Underneath.OVERWRITE));
    }

    @Test
    void whatAKilledSaveLeftIsSweptUpOnceItIsOld() throws Exception {
        Path file = old();
        Path stale = Files.writeString(folder.resolve(".quay.json.1234.saving"), "half");
        Path fresh = Files.writeString(folder.resolve(".quay.json.5678.saving"), "half");
        Path other = Files.writeString(folder.resolve(".gate.json.1234.saving"), "half");
        FileTime before =
                FileTime.from(Files.getLastModifiedTime(file).toInstant().minus(Duration.ofDays(2)));
        Files.setLastModifiedTime(stale, before);
        Files.setLastModifiedTime(other, before);
        new SafeSave().save(PLAN, file, Wording.PLAIN, Fingerprint.of(OLD), Underneath.REFUSE);
        assertTrue(Files.notExists(stale));
        assertTrue(Files.exists(fresh), "another save may be at it");
        assertTrue(Files.exists(other), "belongs to another plan");
    }

    @Test
    void aPlanOfANewerVersionIsNotWritten() {
        Path file = folder.resolve("new.json");
        Refusal refusal = assertThrows(
                Refusal.class,
                () -> new SafeSave()
                        .save(PLAN.withVersion(2), file, Wording.PLAIN, Fingerprint.NONE, Underneath.OVERWRITE));
        assertEquals(
                file + " belongs to a newer version and would lose what this one does not know; update, or start a plan"
                        + " under another name",
                refusal.getMessage());
        assertTrue(Files.notExists(file));
    }

    private Path old() throws IOException {
        return Files.write(folder.resolve("quay.json"), OLD);
    }

    private void unchanged(Path file) throws IOException {
        assertEquals(Fingerprint.of(OLD), Fingerprint.of(Files.readAllBytes(file)));
        assertEquals(List.of("quay.json"), names(), "nothing is left beside it");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(file -> String.valueOf(file.getFileName())).sorted().toList();
        }
    }

    private static String refusal(SafeSave save, Path file, Fingerprint opened, Underneath underneath) {
        return assertThrows(Refusal.class, () -> save.save(PLAN, file, Wording.PLAIN, opened, underneath))
                .getMessage();
    }

    private boolean posix() {
        return folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
