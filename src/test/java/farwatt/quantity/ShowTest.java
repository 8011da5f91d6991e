package farwatt.quantity;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShowTest {
    private static final Units UNITS = new Units("EUR");

    @ParameterizedTest
    @CsvSource({
        "71.88,W,71.88 W",
        "71.884,W,71.88 W",
        "71.8,W,71.8 W",
        "72,W,72 W",
        "0,W,0 W",
        "-0.0,W,0 W",
        "1000,W,1000 W",
        "123456,W,123456 W",
        "1234567.8,W,1234568 W",
        "0.35,mA,350 mA",
        "0.2,%,20 %",
        "0.2,'',0.2",
        "20,degC,20 degC",
        "-20.5555,degC,-20.56 degC",
        "10,degF,50 degF",
        "0.0668,ohm/km,66.8 ohm/km",
        "1e9,Gb/s,1 Gb/s",
        "1e9,W,1e9 W",
        "1.5e-7,W,1.5e-7 W",
        "0.00012345,W,0.0001234 W",
        "24,AWG,24 AWG",
        "NaN,W,–",
        "Infinity,W,–"
    })
    void showsFourDigitsAndWholeNumbersWhole(double inside, String unit, String expected) {
        assertEquals(expected, Show.text(inside, UNITS.need(unit)));
    }

    @ParameterizedTest
    @CsvSource({
        "30.05,30,W,30.05 W,30 W",
        "30.0005,30,W,30.0005 W,30 W",
        "30.000000001,30,W,30 W,30 W",
        "0.0003501,0.00035,mA,0.3501 mA,0.35 mA"
    })
    void showsTwoValuesApartWheneverTheyDiffer(double one, double other, String unit, String first, String second) {
        assertArrayEquals(new String[] {first, second}, Show.apart(one, other, UNITS.need(unit)));
    }

    @Test
    void differentValuesNeverLookTheSame() {
        Unit watt = UNITS.need("W");
        for (int seed = 0; seed < 5_000; seed++) {
            Random random = new Random(seed);
            double one = random.nextDouble() * 100;
            double other = one * (1 + Math.pow(10, -8.5 + random.nextDouble() * 8));
            String[] shown = Show.apart(one, other, watt);
            assertNotEquals(shown[0], shown[1], "seed " + seed);
        }
    }
}
