package farwatt.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class DimensionTest {
    @Test
    void productsAndQuotientsAddPowers() {
        assertEquals(Dimension.VOLT, Dimension.WATT.over(Dimension.AMPERE));
        assertEquals(Dimension.WATT, Dimension.OHM.times(Dimension.AMPERE.power(2)));
        assertEquals(Dimension.NONE, Dimension.METRE.over(Dimension.METRE));
        assertEquals(Dimension.NONE, Dimension.METRE.power(0));
    }

    @Test
    void onlyEvenPowersHaveARoot() {
        assertEquals(
                Optional.of(Dimension.VOLT), Dimension.WATT.times(Dimension.OHM).root());
        assertEquals(
                Optional.of(Dimension.METRE.power(-2)),
                Dimension.METRE.power(-4).root());
        assertEquals(Optional.empty(), Dimension.METRE.power(3).root());
        assertEquals(Optional.empty(), Dimension.METRE.power(-1).root());
    }

    @Test
    void theHighestPowerCountsWithoutItsSign() {
        assertEquals(3, Dimension.METRE.power(-3).times(Dimension.VOLT).highest());
        assertEquals(0, Dimension.NONE.highest());
    }

    @Test
    void isWrittenInWattsAndOhmsWhereTheyGoIn() {
        assertEquals("W", Dimension.WATT.symbol("EUR"));
        assertEquals("ohm", Dimension.OHM.symbol("EUR"));
        assertEquals("W/m^2", Dimension.WATT.over(Dimension.METRE.power(2)).symbol("EUR"));
        assertEquals("W^2", Dimension.WATT.power(2).symbol("EUR"));
        assertEquals("W V", Dimension.WATT.times(Dimension.VOLT).symbol("EUR"));
        assertEquals("1/m", Dimension.METRE.power(-1).symbol("EUR"));
        assertEquals("1/W", Dimension.WATT.power(-1).symbol("EUR"));
        assertEquals("EUR/m", Dimension.MONEY.over(Dimension.METRE).symbol("EUR"));
        assertEquals("", Dimension.NONE.symbol("EUR"));
    }
}
