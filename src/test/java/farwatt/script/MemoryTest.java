package farwatt.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MemoryTest {
    private static final int RUNS = Boolean.getBoolean("farwatt.soak") ? 50 : 15;
    private static final int WARM = 5;
    private static final long MEGABYTE = 1 << 20;
    private static final String SWEEP = """
            const grid = sweep({over: {'quay.ambient': span('-20 degC', '79 degC', '1 K'),
              'trunk.length': span('1 m', '100 m', '1 m')}, read: ['gate.reserve_share', 'plan.lost']});
            const worst = grid.rows().sort((a, b) => a['plan.lost'] - b['plan.lost'])[0];
            globalThis.kept = [grid, worst];
            print(grid.points.length);
            """;

    /** A run that left its result behind would leave a megabyte or more each time. */
    @Test
    void manyRunsOfALargeSweepLeaveMemoryWhereItWas() {
        int[] points = {0};
        Session session =
                new Session(line -> points[0] += line.kind().equals("print") ? Integer.parseInt(line.part(0)) : 0);
        String plan = Changes.text(Scripts.ferry());
        long before = 0;
        for (int run = 0; run < RUNS; run++) {
            before = run == WARM ? used() : before;
            Script script = new Script("sweep.js", SWEEP, Optional.empty(), Script.Kind.FILE);
            Line end = session.run(
                    new Order(script, plan, "", List.of(), Limits.USUAL.statements(), Limits.USUAL.printed()));
            assertEquals("done", end.kind(), () -> end.parts().toString());
        }
        assertEquals(RUNS * 10_000, points[0]);
        long more = used() - before;
        assertTrue(more < 8 * MEGABYTE, "left " + more / MEGABYTE + " MB behind");
    }

    private static long used() {
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 3; i++) {
            System.gc();
            least = Math.min(
                    least,
                    ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed());
        }
        return least;
    }
}
