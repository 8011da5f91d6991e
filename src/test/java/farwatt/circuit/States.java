package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Compares whole states. */
final class States {

    private States() {}

    /** Every figure of the rows 0..count-1 the same to the last bit; a failure's figures at the sources. */
    static void assertSameBits(FlatState a, FlatState b, int count, String what) {
        double[][] left = rows(a);
        double[][] right = rows(b);
        for (int k = 0; k < left.length; k++) {
            for (int i = 0; i < count; i++) {
                assertEquals(
                        Double.doubleToRawLongBits(left[k][i]),
                        Double.doubleToRawLongBits(right[k][i]),
                        what + ", array " + k + ", row " + i);
            }
        }
        for (int i = 0; i < count; i++) {
            assertEquals(a.status[i], b.status[i], what);
            assertEquals(a.boundBy[i], b.boundBy[i], what);
        }
        assertEquals(a.culprit[0], b.culprit[0], what);
        assertEquals(a.asked[0], b.asked[0], what);
        assertEquals(a.possible[0], b.possible[0], what);
    }

    private static double[][] rows(FlatState state) {
        return new double[][] {
            state.amps,
            state.voltsNear,
            state.voltsFar,
            state.ohms,
            state.temp,
            state.rise,
            state.loss,
            state.sent,
            state.received,
            state.cliffShare,
            state.nodeSent,
            state.nodeReceived,
            state.mostAmps,
            state.receivable,
            state.available,
            state.reserve
        };
    }
}
