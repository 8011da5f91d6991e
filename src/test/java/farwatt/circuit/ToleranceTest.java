package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ToleranceTest {

    private static final double INFINITE = Double.POSITIVE_INFINITY;

    @Test
    void roundingFitsAndAVisibleExcessDoesNot() {
        assertTrue(Tolerance.fits(30.000000000000004, 30));
        assertTrue(Tolerance.fits(30, 30));
        assertFalse(Tolerance.fits(30.05, 30));
        assertFalse(Tolerance.fits(30.0000001, 30));
    }

    @Test
    void nothingFitsALimitThatIsNotANumber() {
        assertFalse(Tolerance.fits(0, Double.NaN));
        assertFalse(Tolerance.fits(Double.NaN, 10));
    }

    @Test
    void everythingFitsNoLimitAndOnlyNoNeedFitsZero() {
        assertTrue(Tolerance.fits(1e300, INFINITE));
        assertTrue(Tolerance.fits(INFINITE, INFINITE));
        assertFalse(Tolerance.fits(INFINITE, 1e300));
        assertTrue(Tolerance.fits(0, 0));
        assertFalse(Tolerance.fits(1e-12, 0));
    }

    @Test
    void aClassFitsItsPortGiveOrTakeATenthOfAWatt() {
        assertTrue(Tolerance.fitsClass(15.4, 15.3));
        assertTrue(Tolerance.fitsClass(15.4, 15.4));
        assertFalse(Tolerance.fitsClass(15.4, 15.2));
    }

    @Test
    void sameIsRelativeToTheLarger() {
        assertTrue(Tolerance.same(90, 90 * (1 + 5e-10)));
        assertFalse(Tolerance.same(90, 90 * (1 + 5e-9)));
        assertTrue(Tolerance.same(INFINITE, INFINITE));
        assertFalse(Tolerance.same(90, INFINITE));
    }
}
