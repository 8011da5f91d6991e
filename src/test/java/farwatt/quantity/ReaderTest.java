package farwatt.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ReaderTest {
    private static final Units UNITS = new Units("EUR");

    /** Spaces that break no line stand as ~ in the file. */
    @ParameterizedTest
    @CsvFileSource(resources = "/quantity/read.csv", numLinesToSkip = 1, delimiter = ';')
    void readsLiteralsAndNothingElse(String sign, String field, String canonical, String inside) {
        String text = field == null ? "" : field.replace('~', '\u00a0');
        Optional<Typed> found = Reader.read(text, UNITS, Decimal.valueOf(sign.toUpperCase(Locale.ROOT)));
        assertEquals(Optional.ofNullable(canonical), found.map(Typed::text));
        if (found.isPresent()) {
            double expected = Double.parseDouble(inside);
            assertEquals(expected, found.get().inside(), Math.abs(expected) * 1e-15, text);
            assertEquals(found, Reader.read(canonical, UNITS, Decimal.POINT), "canonical text reads the same");
            assertEquals(found, Reader.read(canonical, UNITS, Decimal.COMMA), "with a comma as sign as well");
        }
    }

    @Test
    void shownExactlyReadsBackAsTheSame() {
        String[] units = {"W", "mW", "kW", "mA", "ohm/km", "m", "ft", "in", "%", "Gb/s", "kWh", "BTU/h", "degC", "degF"
        };
        for (int seed = 0; seed < 20_000; seed++) {
            Random random = new Random(seed);
            Unit unit = UNITS.need(units[random.nextInt(units.length)]);
            String typed = random.nextInt(100_000) + "." + random.nextInt(100_000);
            double inside = unit.toInside(Double.parseDouble(typed));
            String shown = Show.exact(inside, unit);
            double back = Reader.read(shown, UNITS, Decimal.POINT).orElseThrow().inside();
            assertEquals(inside, back, "seed " + seed + ": " + typed + " " + unit.symbol() + " shown as " + shown);
        }
    }

    @Test
    void anyTextIsReadOrRefused() {
        String pieces = "0123456789.,eE+-−°CFΩm²%/ ftinWkb\u00a0()'\"#𝒳";
        int read = 0;
        for (int seed = 0; seed < 50_000; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(9); i >= 0; i--) {
                text.append(pieces.charAt(random.nextInt(pieces.length())));
            }
            Decimal sign = Decimal.values()[random.nextInt(2)];
            Optional<Typed> found = Reader.read(text.toString(), UNITS, sign);
            if (found.isPresent()) {
                read++;
                String canonical = found.get().text();
                String seen = "seed " + seed + ": " + text;
                assertTrue(Double.isFinite(found.get().inside()), seen);
                assertEquals(found, Reader.read(canonical, UNITS, sign), seen);
            }
        }
        assertTrue(read > 500, "only " + read + " were read");
    }
}
