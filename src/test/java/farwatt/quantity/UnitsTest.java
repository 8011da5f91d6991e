package farwatt.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitsTest {
    private static final Units UNITS = new Units("EUR");

    @Test
    void everySpellingIsAUnitThatGoesBothWays() {
        for (String spelling : UNITS.spellings()) {
            Unit unit = UNITS.need(spelling);
            assertEquals(spelling, unit.symbol());
            for (double typed : new double[] {0.25, 1, 3, 24, 1234.5}) {
                double back = unit.fromInside(unit.toInside(typed));
                assertEquals(typed, back, typed * 1e-12, spelling);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"ohm/m,1", "ohm/km,0.001", "%/K,0.01", "EUR/m,1", "W/m,1", "Mb/s/m,1e6", "EUR/Mb/s,1e-6"})
    void quotientsDivideFactors(String spelling, double one) {
        assertEquals(one, UNITS.need(spelling).toInside(1), one * 1e-15);
    }

    @Test
    void gaugesAndAreasAreTheSameMeasure() {
        Unit area = UNITS.need("mm2");
        assertEquals(24, area.toInside(UNITS.need("mm2").fromInside(24)), 1e-12);
        assertEquals(0.20473, area.fromInside(24), 1e-5);
        assertTrue(area.sameMeasure(UNITS.need("AWG")));
    }

    @Test
    void aPointOnTheScaleIsNoDifference() {
        assertEquals(false, UNITS.need("degC").sameMeasure(UNITS.need("K")));
        assertTrue(UNITS.need("degC").sameMeasure(UNITS.need("degF")));
        assertEquals(212, UNITS.need("degF").fromInside(100), 1e-12);
    }

    @Test
    void unitsThatCanStandInForOneAnotherAreOfOneMeasure() {
        assertEquals(
                "[cm, ft, in, km, m, mm]",
                UNITS.alike(UNITS.need("m")).stream().map(Unit::symbol).toList().toString());
        assertEquals(
                "[AWG, mm2]",
                UNITS.alike(UNITS.need("AWG")).stream()
                        .map(Unit::symbol)
                        .toList()
                        .toString());
    }

    @ParameterizedTest
    @CsvSource({
        "w,W", "KW,kW", "ma,mA", "awg,AWG", "degc,degC", "metres,m", "Meter,m", "feet,ft", "inches,in", "Watts,W",
        "C,degC", "°,degC", "f,degF", "€,EUR", "$,EUR", "hours,h", "sec,s", "Mbps,Mb/s", "mbit/s,Mb/s", "gb/s,Gb/s",
        "ohms,ohm", "eur,EUR", "percent,%", "x,", "lenghts,", "s/m,"
    })
    void knowsWhatOtherSpellingsStandFor(String spelling, String expected) {
        assertEquals(Optional.ofNullable(expected), UNITS.near(spelling));
    }

    @ParameterizedTest
    @CsvSource({
        "W,W",
        "mV,V",
        "ohm/km,ohm/m",
        "kWh,Wh",
        "min,s",
        "Gb/s,b/s",
        "EUR/m,EUR/m",
        "%/K,1/K",
        "%,''",
        "in,m",
        "W/m2K,W/m^2/K",
        "W/m,W/m"
    })
    void aDimensionHasAUsualUnit(String spelling, String usual) {
        assertEquals(usual, UNITS.plain(UNITS.need(spelling).dimension()).symbol());
    }

    @Test
    void aCurrencySpelledAsAUnitStaysTheUnit() {
        assertTrue(new Units("AWG").need("AWG").isGauge());
        assertEquals(Optional.empty(), new Units("EUR").of("CHF"));
        assertThrows(IllegalArgumentException.class, () -> new Units("EUR").need("CHF"));
    }
}
