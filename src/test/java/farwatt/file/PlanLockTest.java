package farwatt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(value = 5, unit = TimeUnit.MINUTES)
class PlanLockTest {
    @TempDir
    Path folder;

    private Path plan = Path.of("");

    @BeforeEach
    void aPlan() throws IOException {
        plan = Files.writeString(folder.resolve("quay.json"), "{\"farwatt\": 1}");
    }

    /** Takes the lock, says what came of it, and waits for a line before it goes. */
    public static final class Opener {
        private Opener() {}

        public static void main(String[] args) throws IOException {
            PlanLock.Outcome outcome = PlanLock.take(Path.of(args[0]), "the other one");
            String word = outcome instanceof PlanLock.Outcome.Elsewhere other ? "elsewhere " + other.owner() : "held";
            System.out.println(outcome instanceof PlanLock.Outcome.Unknown ? "unknown" : word);
            if (System.in.read() >= 0 && outcome instanceof PlanLock.Outcome.Held held) {
                held.lock().close();
            }
        }
    }

    @Test
    void theSecondInOneProgramIsToldWhoHasIt() throws IOException {
        try (PlanLock first = held(plan)) {
            assertEquals(new PlanLock.Outcome.Elsewhere("me"), PlanLock.take(plan, "me again"));
            assertEquals(
                    new PlanLock.Outcome.Elsewhere("me"), PlanLock.take(folder.resolve("./quay.json"), "me again"));
            assertTrue(Files.exists(folder.resolve(".quay.json.lock")));
            assertTrue(first != null);
        }
        assertEquals(List.of("quay.json"), names());
        held(plan).close();
    }

    @Test
    void anotherProgramIsToldWhoHasItEvenAfterATryInThisOne() throws Exception {
        try (PlanLock mine = held(plan)) {
            PlanLock.take(plan, "me again");
            Process child = Child.start(Opener.class, plan.toString());
            assertEquals("elsewhere me", line(child));
            child.destroyForcibly().waitFor();
            assertTrue(mine != null);
        }
    }

    @Test
    void whatAnotherProgramHasIsSeenHereUntilItCloses() throws Exception {
        Process child = Child.start(Opener.class, plan.toString());
        assertEquals("held", line(child));
        assertEquals(new PlanLock.Outcome.Elsewhere("the other one"), PlanLock.take(plan, "me"));
        child.getOutputStream().write('\n');
        child.getOutputStream().flush();
        child.waitFor();
        held(plan).close();
    }

    @Test
    void aCrashFreesTheLock() throws Exception {
        Process child = Child.start(Opener.class, plan.toString());
        assertEquals("held", line(child));
        child.destroyForcibly().waitFor();
        assertTrue(Files.exists(folder.resolve(".quay.json.lock")), "what a crash leaves");
        held(plan).close();
        assertEquals(List.of("quay.json"), names());
    }

    @Test
    void whereNoLockCanBeNobodyIsStopped() throws IOException {
        assertInstanceOf(PlanLock.Outcome.Unknown.class, PlanLock.take(folder.resolve("no/such/quay.json"), "me"));
        Files.createDirectory(folder.resolve(".quay.json.lock"));
        assertInstanceOf(PlanLock.Outcome.Unknown.class, PlanLock.take(plan, "me"));
    }

    @Test
    void aPlanThatIsReachedByALinkIsTheSamePlan() throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Path link = Files.createSymbolicLink(folder.resolve("link.json"), plan);
            PlanLock lock = held(link);
            assertInstanceOf(PlanLock.Outcome.Elsewhere.class, PlanLock.take(plan, "me again"));
            lock.close();
        }
    }

    private static PlanLock held(Path plan) {
        return assertInstanceOf(PlanLock.Outcome.Held.class, PlanLock.take(plan, "me"))
                .lock();
    }

    private static String line(Process child) throws IOException {
        return new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8)).readLine();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(file -> String.valueOf(file.getFileName())).sorted().toList();
        }
    }
}
