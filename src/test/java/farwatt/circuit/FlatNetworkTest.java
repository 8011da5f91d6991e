package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FlatNetworkTest {

    @Test
    void clearingLeavesNothingOfTheNetworkBefore() {
        FlatNetwork fresh = new FlatNetwork(6);
        FlatNetwork used = new FlatNetwork(6);
        Arrays.fill(used.kind, FlatNetwork.LOAD);
        for (int[] array : List.of(used.parent, used.end, used.bundle)) {
            Arrays.fill(array, 5);
        }
        for (double[] array : doubles(used)) {
            Arrays.fill(array, 7);
        }
        used.clear(6);
        assertEquals(6, used.count);
        assertArrayEquals(fresh.kind, used.kind);
        assertArrayEquals(fresh.parent, used.parent);
        assertArrayEquals(fresh.end, used.end);
        assertArrayEquals(fresh.bundle, used.bundle);
        for (int k = 0; k < doubles(fresh).size(); k++) {
            assertArrayEquals(doubles(fresh).get(k), doubles(used).get(k), "array " + k);
            assertFalse(Arrays.stream(doubles(used).get(k)).anyMatch(value -> value == 7), "array " + k);
        }
    }

    @Test
    void aNetworkLaidOverAnotherSolvesLikeAFreshOne() {
        RandomNetworks networks = new RandomNetworks(new Random(77));
        FlatNetwork shared = new FlatNetwork(1000);
        for (int k = 0; k < 50; k++) {
            Sketch sketch = networks.any();
            FlatState fresh = sketch.solve();
            sketch.lay(shared);
            FlatState state = new FlatState(shared.count);
            new Solver().solve(shared, state);
            States.assertSameBits(fresh, state, shared.count, "turn " + k);
        }
    }

    private static List<double[]> doubles(FlatNetwork network) {
        return List.of(
                network.volts,
                network.draw,
                network.efficiency,
                network.throughDrop,
                network.floor,
                network.budget,
                network.right,
                network.cable,
                network.cord,
                network.fixed,
                network.alpha,
                network.alphaCord,
                network.ambient,
                network.heat,
                network.rth,
                network.perMetre,
                network.othersRise,
                network.alphaOthers,
                network.portWatts,
                network.wireAmps);
    }
}
