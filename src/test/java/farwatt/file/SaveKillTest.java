package farwatt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.catalogue.Wording;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class SaveKillTest {
    private static final int KILLS = Boolean.getBoolean("farwatt.soak") ? 200 : 20;

    @TempDir
    Path folder;

    /** Saves the small and the large plan in turn until it is killed. */
    public static final class Saver {
        private Saver() {}

        public static void main(String[] args) throws Refusal {
            Path file = Path.of(args[0]);
            Fingerprint opened = PlanReader.read(file).fingerprint();
            Plan[] plans = {plan(40), plan(4000)};
            System.out.println("ready");
            for (int i = 0; ; i++) {
                opened = new SafeSave().save(plans[i % 2], file, Wording.PLAIN, opened, Underneath.REFUSE);
            }
        }
    }

    static Plan plan(int rows) {
        List<Row> runs = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            runs.add(Row.of("run " + i)
                    .with("from", "gate")
                    .with("length", i % 100 + " m")
                    .with("note", "of " + rows));
        }
        return Plan.EMPTY.with(Table.RUNS, Rows.of(runs));
    }

    @Test
    @Timeout(value = 30, unit = TimeUnit.MINUTES)
    void aKillAtAnyMomentLeavesTheOldOrTheNewFile() throws Exception {
        Path file = folder.resolve("quay.farwatt.json");
        byte[] small = PlanWriter.bytes(plan(40), Wording.PLAIN);
        byte[] large = PlanWriter.bytes(plan(4000), Wording.PLAIN);
        Files.write(file, small);
        Random random = new Random(42);
        int larger = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Process child = Child.start(Saver.class, file.toString());
            try (BufferedReader said =
                    new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
                assertEquals("ready", said.readLine());
                Thread.sleep(random.nextInt(120));
            } finally {
                child.destroyForcibly().waitFor();
            }
            byte[] left = Files.readAllBytes(file);
            boolean isLarge = left.length == large.length;
            assertEquals(
                    Fingerprint.of(isLarge ? large : small), Fingerprint.of(left), "kill " + kill + ": " + left.length);
            larger += isLarge ? 1 : 0;
            assertEquals(
                    isLarge ? 4000 : 40,
                    PlanReader.read(file).plan().rows(Table.RUNS).size());
        }
        assertTrue(larger < KILLS, "some kills must meet the small plan: " + larger);
        onlyHiddenFilesAreLeftBeside(file);
    }

    private void onlyHiddenFilesAreLeftBeside(Path file) throws Exception {
        try (Stream<Path> all = Files.list(folder)) {
            List<String> others = all.filter(path -> !path.equals(file))
                    .map(path -> String.valueOf(path.getFileName()))
                    .filter(name -> !name.startsWith(".") || !name.endsWith(".saving"))
                    .toList();
            assertEquals(List.of(), others);
        }
    }
}
