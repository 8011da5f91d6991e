package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WavesTest {
    private static List<Tree.Feed> feeds(int count) {
        List<Tree.Feed> all = new ArrayList<>();
        for (int run = 0; run < count; run++) {
            all.add(new Tree.Feed(run, new Spot(Table.SOURCES, 0), new Spot(Table.DEVICES, run)));
        }
        return all;
    }

    private static List<Integer> sizes(Waves waves) {
        return waves.waves().stream().map(List::size).toList();
    }

    @Test
    void eachWaveWaitsForTheOneBeforeToSettle() {
        double[] start = {20, 20, 20, 20, 20};
        double[] settled = {10, 10, 10, 10, 10};
        assertEquals(List.of(5), sizes(Waves.of(100, feeds(5), start, settled)));
        // 3 · 20 start; 30 run and 20 start; 40 run and 20 start
        Waves waves = Waves.of(60, feeds(5), start, settled);
        assertEquals(List.of(3, 1, 1), sizes(waves));
        assertEquals(60, waves.peak(), 0);
        assertEquals(50, waves.settled(), 0);
    }

    @Test
    void whatFindsTooLittleEvenThenIsNamed() {
        Waves waves = Waves.of(30, feeds(3), new double[] {20, 25, 10}, new double[] {10, 10, 5});
        assertEquals(1, waves.never().size());
        assertEquals(1, waves.never().get(0).run());
        assertEquals(List.of(1, 1), sizes(waves));
        assertEquals(55, waves.all(), 0);
    }

    @Test
    void roundingStartsNoWaveOfItsOwn() {
        Waves waves = Waves.of(30, feeds(3), new double[] {5.4, 10.8, 13.8}, new double[] {1, 1, 1});
        assertTrue(waves.never().isEmpty());
        assertEquals(List.of(3), sizes(waves));
    }
}
