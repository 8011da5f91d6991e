package farwatt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Table;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class JournalKillTest {
    private static final int KILLS = Boolean.getBoolean("farwatt.soak") ? 100 : 5;

    @TempDir
    Path folder;

    /** Adds changes and says after each that it is safe, until it is killed. */
    public static final class Writer {
        private Writer() {}

        public static void main(String[] args) throws IOException {
            try (JournalFile journal = JournalFile.start(Path.of(args[0]), Fingerprint.NONE)) {
                for (int i = 0; ; i++) {
                    journal.add(change(i));
                    System.out.println(i + 1);
                }
            }
        }
    }

    private static Change change(int number) {
        Cell cell = Cell.text("x".repeat(number % 700) + number);
        return new Change.SetCell(Table.RUNS, "trunk", "note", Optional.of(cell));
    }

    @Test
    @Timeout(value = 30, unit = TimeUnit.MINUTES)
    void aKillLosesNoChangeThatWasSaidToBeSafe() throws Exception {
        Random random = new Random(7);
        for (int kill = 0; kill < KILLS; kill++) {
            Path file = folder.resolve("journal " + kill);
            Process child = Child.start(Writer.class, file.toString());
            int safe = 0;
            try (BufferedReader said =
                    new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
                int until = 1 + random.nextInt(2000);
                while (safe < until) {
                    safe = Integer.parseInt(said.readLine());
                }
            } finally {
                child.destroyForcibly().waitFor();
            }
            List<Change> left =
                    JournalFile.recover(file, Fingerprint.NONE).orElseThrow().changes();
            assertTrue(left.size() >= safe, "kill " + kill + ": " + left.size() + " of " + safe);
            for (int i = 0; i < left.size(); i++) {
                assertEquals(change(i), left.get(i), "kill " + kill);
            }
        }
    }
}
