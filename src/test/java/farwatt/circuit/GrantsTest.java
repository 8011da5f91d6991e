package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class GrantsTest {

    private static final double NONE = Double.NaN;

    @Test
    void fourOfClassThreeDoNotFitByClassButDoAsMeasured() {
        Grants byClass = star(61.4, 15.4, 15.4, 15.4, 15.4);
        outcomes(byClass, Grants.POWERED, Grants.POWERED, Grants.POWERED, Grants.REFUSED);
        assertEquals(46.2, byClass.granted[0], 1e-12);
        assertEquals(15.2, byClass.left[0], 1e-12);

        Grants measured = star(61.4, 8.04, 8.04, 8.04, 8.04);
        outcomes(measured, Grants.POWERED, Grants.POWERED, Grants.POWERED, Grants.POWERED);
        assertEquals(32.16, measured.granted[0], 1e-12);
    }

    @Test
    void oneThatDoesNotFitIsPassedOverAndLaterOnesStillAsk() {
        Grants grants = star(40, 30, 15.4, 7, 4);
        outcomes(grants, Grants.POWERED, Grants.REFUSED, Grants.POWERED, Grants.REFUSED);
        assertEquals(3, grants.left[0], 1e-12);
    }

    @Test
    void aPortTooSmallForAnyClassGrantsNothing() {
        Grants grants = star(40, NONE, 15.4);
        outcomes(grants, Grants.NO_CLASS, Grants.POWERED);
        assertEquals(15.4, grants.granted[0]);
    }

    @Test
    void roundingDoesNotRefuseAnExactFit() {
        double third = 0.1 + 0.2;
        outcomes(star(0.9, third, third, third), Grants.POWERED, Grants.POWERED, Grants.POWERED);
        assertEquals(0.0, star(0.9, third, third, third).left[0]);
    }

    @Test
    void theOrderIsTheCallers() {
        Grants grants = star(20, 15.4, 15.4);
        grants.child[0] = 2;
        grants.child[1] = 1;
        grants.grant();
        outcomes(grants, Grants.REFUSED, Grants.POWERED);
    }

    @Test
    void aNodeLeftDarkDarkensAllBelow() {
        // 0 feeds 1 and 4, 1 feeds 2, 2 feeds 3
        Grants grants = new Grants(8);
        grants.count = 5;
        int[] first = {0, 2, 3, 4, 4, 4};
        int[] child = {1, 4, 2, 3};
        double[] need = {0, 90, 15, 7, 10};
        double[] available = {60, 100, 100, 0, 0};
        System.arraycopy(first, 0, grants.first, 0, first.length);
        System.arraycopy(child, 0, grants.child, 0, child.length);
        System.arraycopy(need, 0, grants.need, 0, need.length);
        System.arraycopy(available, 0, grants.available, 0, available.length);
        grants.grant();
        outcomes(grants, Grants.REFUSED, Grants.PARENT_DARK, Grants.PARENT_DARK, Grants.POWERED);
        assertEquals(10.0, grants.granted[0]);
        assertEquals(0.0, grants.granted[1]);
        assertEquals(0.0, grants.left[1]);

        grants.available[0] = 100;
        grants.grant();
        outcomes(grants, Grants.POWERED, Grants.POWERED, Grants.POWERED, Grants.POWERED);
        assertEquals(15.0, grants.granted[1]);
        assertEquals(85.0, grants.left[1]);
    }

    @Test
    void withoutALimitEverythingIsGranted() {
        Grants grants = star(Double.POSITIVE_INFINITY, 90, 90);
        outcomes(grants, Grants.POWERED, Grants.POWERED);
        assertEquals(Double.POSITIVE_INFINITY, grants.left[0]);
    }

    @Test
    void aNodeWithNothingAvailableRefusesAllThatNeedSomething() {
        outcomes(star(0, 4, 0), Grants.REFUSED, Grants.POWERED);
        outcomes(star(-3, 4, 0), Grants.REFUSED, Grants.REFUSED);
        assertEquals(0.0, star(-3, 4).left[0]);
    }

    private static Grants star(double available, double... needs) {
        Grants grants = new Grants(needs.length + 1);
        grants.count = needs.length + 1;
        grants.available[0] = available;
        for (int k = 0; k < needs.length; k++) {
            grants.child[k] = k + 1;
            grants.need[k + 1] = needs[k];
            grants.first[k + 1] = needs.length;
        }
        grants.first[needs.length + 1] = needs.length;
        grants.grant();
        return grants;
    }

    private static void outcomes(Grants grants, byte... expected) {
        assertEquals(Grants.POWERED, grants.outcome[0]);
        for (int k = 0; k < expected.length; k++) {
            assertEquals(expected[k], grants.outcome[k + 1], "node " + (k + 1));
        }
    }
}
