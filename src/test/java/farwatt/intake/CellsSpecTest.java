package farwatt.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import farwatt.quantity.Decimal;
import farwatt.report.Messages;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single cells: what was typed, what it means. */
class CellsSpecTest {
    private static final Column WATTS = column("Power (W)", Meaning.WATTS);
    private static final Column METRES = column("Length (m)", Meaning.LENGTH);

    private static Column column(String heading, Meaning meaning) {
        Guess guess = new Guess(meaning, 1, "");
        return new Column(0, HeadingText.of(heading), guess).with(Optional.of(Decimal.POINT));
    }

    private static String power(String typed) {
        Power power = PowerReader.read(RawCell.text(typed), WATTS, Optional.empty());
        if (power.isHeld()) {
            return power.remarks().get(0).code().key();
        }
        return power.most().map(PowerReader::plain).orElse("nothing")
                + power.typical().map(t -> " usually " + PowerReader.plain(t)).orElse("")
                + power.start().map(s -> " start " + PowerReader.plain(s)).orElse("");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "6.5 | 6.5",
                "6,5 W | 6.5",
                "6.5W | 6.5",
                "+6.5 W | 6.5",
                ".5 | 0.5",
                "6500 mW | 6.5",
                "0.0065 kW | 6.5",
                "7 VA | 7",
                "1.2E+01 | 12",
                "<13 | 13",
                "≤ 13 W | 13",
                "up to 13 W | 13",
                "bis zu 13 W | 13",
                "jusqu'à 13 W | 13",
                "max. 13 W | 13",
                "13 W max | 13",
                "13 Watt maximal | 13",
                "~12 | 12",
                "ca. 12 W | 12",
                "approx 12 W | 12",
                "12 W (est.) | 12",
                "6-8 W | 8",
                "6 – 8 | 8",
                "6 to 8 W | 8",
                "6 bis 8 W | 8",
                "6…8 W | 8",
                "6~8W | 8",
                "6 W - 8 W | 8",
                "900 mW - 1200 mW | 1.2",
                "7.0 / 11.5 (IR) | 11.5 usually 7",
                "7.0/11.5 | 11.5 usually 7",
                "11.5 (7 typ.) | 11.5 usually 7",
                "4.5 W (max 6.5 W) | 6.5 usually 4.5",
                "typ. 4.5 W, max 6.5 W | 6.5 usually 4.5",
                "4.5W typ; 6.5W max | 6.5 usually 4.5",
                "day 6 W night 11 W | 11 usually 6",
                "6 W, 9 W inrush | 6 usually 6 start 9",
                "6.5 W + 3 W heater | 9.5 usually 6.5",
                "10 W ± 10 % | 11",
                "10 ±1 W | 11",
                "10 W +/- 2 W | 12",
                "48V/0.25A | 12",
                "48 V x 0.25 A | 12",
                "0.25 A @ 48 V | 12",
                "12VDC 500mA | 6",
                "12.95 W @ 48 V | 12.95",
                "12.95 W (0.27 A) | 12.95",
                "6.5 W each | 6.5",
                "N/A | nothing",
                "- | nothing",
                "tbd | nothing",
                "? | nothing",
                "k.A. | nothing",
                "0 | 0",
                "13d | intake.not_read",
                "NaN | intake.not_read",
                "Infinity | intake.not_read",
                "1.2.3 | intake.not_read",
                "abc | intake.not_read",
                "8-6 W | intake.not_read",
                "-5 | intake.negative",
                "−5 W | intake.negative",
                "0,35 A | intake.needs_volts",
                "350 mA | intake.needs_volts",
                "48 V | intake.not_watts",
                "30 m | intake.not_watts",
                "2 x 6.5 W | intake.times",
                ">13 W | intake.lower_bound",
                "min 6 W | intake.lower_bound",
                "120 W | intake.over_port",
                "6500 | intake.over_port_milli",
                "100 | 100",
            })
    void powerCells(String typed, String expected) {
        assertEquals(expected, power(typed));
    }

    private static String length(String typed) {
        Length length = LengthReader.read(RawCell.text(typed), METRES);
        return length.text()
                .orElseGet(() -> length.remarks().isEmpty()
                        ? "nothing"
                        : length.remarks().get(0).code().key());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "62.5 | 62.5 m",
                "62,5 m | 62.5 m",
                "62m | 62 m",
                "200 ft | 200 ft",
                "200' | 200 ft",
                "5 ft 3 in | 5 ft 3 in",
                "5'3\" | 5 ft 3 in",
                "0.3 km | 0.3 km",
                "~60 | 60 m",
                "max 60 m | 60 m",
                "60-80 m | 80 m",
                "60 + 5 m | 65 m",
                "1,250.5 cm | 1250.5 cm",
                "0 | intake.zero_length",
                "n/a | intake.no_length",
                "-5 | intake.negative",
                "1500 | intake.too_long",
                "6 W | intake.not_read",
                "far | intake.not_read",
                "60/80 | intake.not_read",
                "2 x 30 m | intake.not_read",
            })
    void lengthCells(String typed, String expected) {
        assertEquals(expected, length(typed));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PoE+ | TYPE 2",
                "802.3at | TYPE 2",
                "IEEE 802.3af | TYPE 1",
                "PoE | TYPE 1",
                "af/at | TYPE 2",
                "PoE++ | TYPE_OPEN 3",
                "802.3bt | TYPE_OPEN 3",
                "802.3bt Type 4 | TYPE 4",
                "Type 3 | TYPE 3",
                "Typ 4 | TYPE 4",
                "Class 3 | CLASS 3",
                "Klasse 4 | CLASS 4",
                "PoE+ (Class 4) | CLASS 4",
                "3 | CLASS 3",
                "passive 24 V | PASSIVE 24",
                "24V passive | PASSIVE 24",
                "none | OUTSIDE 0",
                "no | OUTSIDE 0",
                "230 V | OUTSIDE 0",
                "12 V adaptor | OUTSIDE 0",
                "n/a | BLANK 0",
                "yes | BLANK 0",
                "purple | UNREAD 0",
            })
    void classWords(String typed, String expected) {
        ClassWord word = ClassWord.read(typed);
        assertEquals(expected, word.sort() + " " + word.number());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "12.95 | POINT | 12.95",
                "12,95 | POINT | 12.95",
                "12,95 | NONE | 12.95",
                "1.234 | COMMA | 1234",
                "1.234 | POINT | 1.234",
                "1.234 | NONE | 1.234 or 1234",
                "1,234 | POINT | 1234",
                "0,123 | NONE | 0.123",
                "1.234,5 | NONE | 1234.5",
                "1,234.5 | NONE | 1234.5",
                "1.234.567 | NONE | 1234567",
                "1'234.5 | NONE | 1234.5",
                "1\u00a0234,5 | NONE | 1234.5",
                "12345,678 | NONE | 12345.678",
                "1.2.3 | NONE | none",
                "12.34.567 | NONE | none",
                "1,2.3 | NONE | none",
            })
    void numbersByHabit(String typed, String habit, String expected) {
        Optional<Decimal> decimal = habit.equals("NONE") ? Optional.empty() : Optional.of(Decimal.valueOf(habit));
        String read = NumberText.read(typed, decimal)
                .map(n -> n.value().toPlainString()
                        + n.other()
                                .map(BigDecimal::toPlainString)
                                .map(o -> " or " + o)
                                .orElse(""))
                .orElse("none");
        assertEquals(expected, read);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3 | 3",
                "x2 | 2",
                "2x | 2",
                "2 pcs | 2",
                "3 Stk. | 3",
                "3.0 | 3",
                "1 | 1",
                "2.5 | intake.not_whole",
                "-1 | intake.not_a_count",
                "two | intake.not_a_count",
                "0 | intake.quantity_zero",
                "5000 | intake.too_many",
            })
    void quantities(String typed, String expected) {
        QuantityReader read = QuantityReader.read(RawCell.text(typed), column("Qty", Meaning.QUANTITY));
        assertEquals(
                expected,
                read.remarks().isEmpty()
                        ? String.valueOf(read.count())
                        : read.remarks().get(0).code().key());
    }

    @Test
    void everyCodeHasASentence() {
        for (IntakeSays code : IntakeSays.values()) {
            assertEquals(false, Messages.pattern(code).isBlank(), code.key());
        }
    }
}
