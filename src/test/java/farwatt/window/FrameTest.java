package farwatt.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.file.PlanReader;
import farwatt.report.Refusal;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FrameTest {
    @TempDir
    Path folder;

    @Test
    void theDemoPlanIsThereWithItsVerdict() throws Refusal {
        Path plan = Path.of("scenarios/ferry-landing.farwatt.json");
        try (WindowRun run = new WindowRun(folder, PlanReader.read(plan).plan())) {
            assertTrue(run.frame.desk().review().isPresent());
            run.picture("first");
            WindowRun.on(() -> { run.frame.showTable(farwatt.plan.Table.RUNS, "trunk", "gauge"); return 1; });
            run.settle();
            run.picture("runs");
        }
    }
}
