package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConductorTest {

    @ParameterizedTest
    @CsvSource({
        "22, 5.296, 5.402, 5.561",
        "23, 6.678, 6.812, 7.012",
        "24, 8.421, 8.590, 8.842",
        "26, 13.390, 13.658, 14.060",
        "28, 21.292, 21.717, 22.356"
    })
    void ohmsOfAHundredMetresByGauge(int gauge, double straight, double solid, double stranded) {
        assertEquals(straight, hundredMetres(gauge, 1), 0.0005001);
        assertEquals(solid, hundredMetres(gauge, 1.02), 0.0005001);
        assertEquals(stranded, hundredMetres(gauge, 1.05), 0.0005001);
    }

    @Test
    void gauge36IsFiveThousandthsOfAnInch() {
        assertEquals(0.127e-3, Conductor.diameter(36), 1e-18);
        assertEquals(0.127e-3 * 92, Conductor.diameter(-3), 1e-15);
        assertEquals(Math.PI * 0.127e-3 * 0.127e-3 / 4, Conductor.area(36), 1e-20);
    }

    @Test
    void ninetyMetresTenOfCordAndFourJoints() {
        double cable = Conductor.ohmsPerMetre(24, Conductor.COPPER_OHM_METRES, 1.02) * 90;
        double cord = Conductor.ohmsPerMetre(24, Conductor.COPPER_OHM_METRES, 1.05) * 10;
        double joints = 4 * 0.03;
        assertEquals(8.735, path(cable, cord, joints, 20), 0.0005);
        assertEquals(4.368, path(cable, cord, joints, 20) / 2, 0.0005);
        assertEquals(9.581, path(cable, cord, joints, 45), 0.0005);
    }

    /** The loop of two pairs, read back from a run without current. */
    private static double path(double cable, double cord, double joints, double celsius) {
        Sketch sketch = new Sketch();
        Sketch.Row load = sketch.load(sketch.source(52), 0).cable(cable).around(celsius);
        load.cord = cord;
        load.fixed = joints;
        FlatState state = sketch.solve();
        assertEquals(celsius, state.temp[load.index]);
        return state.ohms[load.index];
    }

    private static double hundredMetres(int gauge, double lay) {
        return 100 * Conductor.ohmsPerMetre(gauge, Conductor.COPPER_OHM_METRES, lay);
    }
}
