package farwatt.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import farwatt.plan.Cell;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.quantity.Reader;
import farwatt.quantity.Typed;
import farwatt.quantity.Units;
import farwatt.report.Notice;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class CellReaderTest {
    private static final Units UNITS = new Units("EUR");

    /** Column, what stands in the file, what it is understood as. */
    private static final List<String[]> TABLE = List.of(
            // quantities
            row("runs.length", "'60 m'", "60.0 = 60 m"),
            row("runs.length", "'60m'", "60.0 = 60 m"),
            row("runs.length", "' 60  m '", "60.0 = 60 m"),
            row("runs.length", "'6000 cm'", "60.0 = 6000 cm"),
            row("runs.length", "'5 ft 3 in'", "1.6002 = 5 ft 3 in"),
            row("runs.length", "'0 m'", "0.0 = 0 m"),
            row("runs.length", "'295'", "295.0 = 295 m; note: 295 has no unit and is taken as 295 m"),
            row(
                    "runs.length",
                    "'1200 m'",
                    "1200.0 = 1200 m; warn: 1200 m is out of the usual, 0 m to 1000 m: check the number and its unit"),
            row(
                    "zones.ambient",
                    "'295'",
                    "295.0 = 295 degC; warn: 295 has no unit; as 295 degC it would be out of the usual, -50 degC to 80"
                            + " degC: type the unit that was meant"),
            row("runs.length", "295", "fail: 295 is a number without a unit; write a text with one, such as \"295 m\""),
            row("runs.length", "true", "fail: yes is no quantity; write one such as \"1 m\""),
            row("devices.load_efficiency", "false", "fail: no is no quantity; write one such as \"100 %\""),
            row("runs.length", "null", "fail: null is nothing that a cell can hold; write a text, or leave it out"),
            row("runs.length", "[1]", "fail: [1] is nothing that a cell can hold; write a text, or leave it out"),
            row("runs.length", "''", "empty"),
            row("runs.length", "'  '", "empty"),
            row("runs.length", "'-5 m'", "fail: -5 m is below zero, which cannot be; check the sign"),
            row("runs.length", "'60 W'", "fail: 60 W is of another kind than what belongs here; give it in m"),
            row("runs.length", "'84,2 m'", "expression: 84,2 m"),
            row("runs.length", "'60 furlong'", "expression: 60 furlong"),
            row("runs.length", "'trunk.length * 2'", "expression: trunk.length * 2"),
            row(
                    "runs.conductor_ohms",
                    "'84.2 ohm/m'",
                    "84.2 = 84.2 ohm/m; warn: 84.2 ohm/m is out of the usual, 20 ohm/km to 300 ohm/km: check the number"
                            + " and its unit"),
            row("runs.conductor_ohms", "'84.2 Ω/km'", "0.0842 = 84.2 ohm/km"),
            row(
                    "sources.volts",
                    "'120 V'",
                    "120.0 = 120 V; warn: 120 V is out of the usual, 5 V to 60 V: check the number and its unit"),
            row("sources.volts", "'0 V'", "fail: 0 V cannot be; it must be more than zero"),
            row("switches.efficiency", "'0 %'", "fail: 0 % cannot be; it must be more than zero"),
            row("switches.efficiency", "'120 %'", "fail: 120 % is more than goes in; it can be at most 100 %"),
            row("switches.efficiency", "'-4 %'", "fail: -4 % is below zero, which cannot be; check the sign"),
            row("switches.efficiency", "'100 %'", "1.0 = 100 %"),
            row(
                    "switches.efficiency",
                    "'0.92'",
                    "0.0092 = 0.92 %; warn: 0.92 has no unit; as 0.92 % it would be out of the usual, 40 % to 100 %:"
                            + " type the unit that was meant"),
            row("sources.efficiency_ac", "0.88", "0.88 = 0.88"),
            row("sources.efficiency_ac", "'88 %'", "0.88 = 88 %"),
            row("sources.efficiency_ac", "'1.2'", "fail: 1.2 is more than goes in; it can be at most 100 %"),
            // temperatures and differences
            row("zones.ambient", "'-5 degF'", "-20.555555555555557 = -5 degF"),
            row("zones.ambient", "'38 °C'", "38.0 = 38 degC"),
            row(
                    "zones.ambient",
                    "'-300 degC'",
                    "fail: -300 degC is below absolute zero; check the number and its unit"),
            row(
                    "zones.ambient",
                    "'300 K'",
                    "fail: 300 K is a temperature difference, but a temperature belongs here; give it in degC"),
            row(
                    "zones.sun",
                    "'10 degC'",
                    "fail: 10 degC is a point on the temperature scale, but a difference belongs here; give it in K"),
            row(
                    "zones.sun",
                    "'-5 K'",
                    "-5.0 = -5 K; warn: -5 K is out of the usual, 0 K to 40 K: check the number and its unit"),
            // gauges
            row("runs.gauge", "'23 AWG'", "23.0 = 23 AWG"),
            row("runs.gauge", "'23'", "23.0 = 23 AWG; note: 23 has no unit and is taken as 23 AWG"),
            row("runs.gauge", "'23 m'", "fail: 23 m is of another kind than what belongs here; give it in AWG"),
            row("runs.gauge", "23", "fail: 23 is a number without a unit; write a text with one, such as \"23 AWG\""),
            // counts
            row("switches.ports", "12", "12.0 = 12"),
            row("switches.ports", "'12'", "12.0 = 12"),
            row("runs.joints", "'2.5'", "fail: 2.5 is a count and must be a whole number"),
            row("bundles.others", "-1", "fail: -1 is below zero, which cannot be; check the sign"),
            row(
                    "switches.ports",
                    "200",
                    "200.0 = 200; warn: 200 is out of the usual, 1 to 96: check the number and its unit"),
            // money
            row("devices.price", "'12.50 EUR'", "12.5 = 12.50 EUR"),
            row("devices.price", "'12.50'", "12.5 = 12.50 EUR; note: 12.50 has no unit and is taken as 12.50 EUR"),
            row("devices.price", "'-3 EUR'", "-3.0 = -3 EUR"),
            row("devices.price", "'12.50 USD'", "expression: 12.50 USD"),
            // choices
            row("zones.setting", "'tray'", "word 1 tray"),
            row("zones.setting", "' tray '", "word 1 tray"),
            row("zones.setting", "'Tray'", "fail: Tray is not known; write tray"),
            row(
                    "zones.setting",
                    "'if hot then \"tray\" else \"open\"'",
                    "expression: if hot then \"tray\" else \"open\""),
            row("zones.setting", "true", "fail: yes is not in the list; choose one of open, tray, conduit, insulated"),
            row("zones.setting", "{}", "fail: {} is nothing that a cell can hold; write a text, or leave it out"),
            row("devices.class", "3", "word 3 3"),
            row("devices.class", "'3'", "word 3 3"),
            row("devices.class", "9", "fail: 9 is not in the list; choose one of 0, 1, 2, 3, 4, 5, 6, 7, 8"),
            row("devices.class", "3.0", "fail: 3.0 is not in the list; choose one of 0, 1, 2, 3, 4, 5, 6, 7, 8"),
            row("sources.type", "'4 bt'", "fail: 4 bt is not in the list; choose one of 1, 2, 3, 4, passive"),
            row("runs.category", "'6a'", "fail: 6a is not known; write 6A"),
            row("zones.setting", "''", "empty"),
            // yes and no
            row("zones.outdoor", "true", "yes"),
            row("zones.outdoor", "'no'", "no"),
            row("zones.outdoor", "'Yes'", "fail: Yes is not known; write yes"),
            row("zones.outdoor", "'FALSE'", "fail: FALSE is not known; write no"),
            row("zones.outdoor", "1", "fail: 1 is neither yes nor no; write true or false"),
            row("zones.outdoor", "'ambient < 5 degC'", "expression: ambient < 5 degC"),
            row("zones.outdoor", "null", "fail: null is nothing that a cell can hold; write a text, or leave it out"),
            // rows
            row("runs.from", "'gate'", "row gate"),
            row("runs.from", "' Gate 1'", "row  Gate 1"),
            row("runs.from", "5", "row 5"),
            row("runs.from", "'007'", "row 007"),
            row("runs.from", "true", "fail: yes is no name of a row; write the row's id as a text"),
            row("runs.from", "[]", "fail: [] is nothing that a cell can hold; write a text, or leave it out"),
            row("runs.from", "''", "empty"),
            // texts
            row("runs.note", "' as it stands '", "text  as it stands "),
            row("runs.note", "007.50", "text 007.50"),
            row("runs.note", "true", "text yes"),
            row("runs.note", "null", "fail: null is nothing that a cell can hold; write a text, or leave it out"),
            row("columns.unit", "'°C'", "text degC"),
            row("columns.unit", "'boats'", "text boats"),
            row("columns.unit", "null", "fail: null is nothing that a cell can hold; write a text, or leave it out"),
            // values, conditions and constants
            row("values.is", "'20 %'", "0.2 = 20 %"),
            row("values.is", "'295'", "295.0 = 295"),
            row("values.is", "false", "no"),
            row("values.is", "5", "5.0 = 5"),
            row("values.is", "'\"tray\"'", "expression: \"tray\""),
            row("values.is", "{}", "fail: {} is nothing that a cell can hold; write a text, or leave it out"),
            row("values.is", "''", "empty"),
            row("needs.holds", "'gate.reserve_share >= 20 %'", "expression: gate.reserve_share >= 20 %"),
            row("practice.joint_ohms", "'0.05 ohm'", "0.05 = 0.05 ohm"),
            row(
                    "practice.joint_ohms",
                    "5",
                    "fail: 5 is a number without a unit; write a text with one, such as \"5 ohm\""));

    private static String[] row(String column, String typed, String understood) {
        return new String[] {column, typed, understood};
    }

    @TestFactory
    Stream<DynamicTest> everyCellIsUnderstoodOrSaysWhyNot() {
        return TABLE.stream()
                .map(row -> dynamicTest(
                        row[0] + " " + row[1],
                        () -> assertEquals(row[2], text(reader(row[0]).read("x", cell(row[1]))))));
    }

    @TestFactory
    Stream<DynamicTest> theCanonicalCellMeansTheSameAndIsItsOwnCanonicalForm() {
        return TABLE.stream()
                .map(row -> dynamicTest(row[0] + " " + row[1], () -> {
                    CellReader reader = reader(row[0]);
                    Cell once = reader.canonical(cell(row[1]), Wording.PLAIN);
                    assertEquals(once, reader.canonical(once, Wording.PLAIN));
                    String before = text(reader.read("x", cell(row[1])));
                    String after = text(reader.read("x", once));
                    assertEquals(before.split("; ", 2)[0].strip(), after.split("; ", 2)[0].strip());
                }));
    }

    @Test
    void aNoticeNamesTheCell() {
        Reading reading = reader("runs.length").read("trunk", Cell.text("-1 m"));
        assertEquals(
                "trunk · length: -1 m is below zero, which cannot be; check the sign",
                ((Reading.Wrong) reading).notice().line());
        Reading constant = reader("practice.joint_ohms").read("joint_ohms", Cell.number("5"));
        assertEquals("is", ((Reading.Wrong) constant).notice().place().name());
    }

    @Test
    void whatIsPlainlyWrittenIsReadAsTheFullReaderDoes() {
        CellReader reader = reader("runs.measured_loop");
        Random random = new Random(5);
        for (int i = 0; i < 20_000; i++) {
            String number = number(random);
            String text = number + (random.nextBoolean() ? " ohm" : random.nextBoolean() ? "ohm" : " mohm");
            Optional<Typed> full = Reader.read(text, UNITS, Decimal.POINT);
            Reading.Literal fast = (Reading.Literal) reader.read("x", Cell.text(text));
            assertEquals(full.orElseThrow(), fast.typed(), text);
            assertEquals(full.orElseThrow().inside(), fast.inside(), text);
        }
    }

    private static String number(Random random) {
        StringBuilder digits = new StringBuilder(Integer.toString(random.nextInt(10)));
        for (int i = random.nextInt(17); i > 0; i--) {
            digits.append(random.nextInt(10));
        }
        if (random.nextBoolean()) {
            digits.append('.').append(random.nextInt(10));
            for (int i = random.nextInt(17); i > 0; i--) {
                digits.append(random.nextInt(10));
            }
        }
        return digits.toString();
    }

    @Test
    void whatAPersonTypesBecomesTheCanonicalCell() {
        assertEquals(Cell.text("12.5 m"), reader("runs.length").typed("12,5", Decimal.COMMA, Wording.PLAIN));
        assertEquals(Cell.text("12.5 m"), reader("runs.length").typed("12,5 m", Decimal.COMMA, Wording.PLAIN));
        assertEquals(Cell.text("12,5 m"), reader("runs.length").typed("12,5 m", Decimal.POINT, Wording.PLAIN));
        assertEquals(Cell.text("38 degC"), reader("zones.ambient").typed("38 °C", Decimal.POINT, Wording.PLAIN));
        assertEquals(Cell.number("3"), reader("devices.class").typed("3", Decimal.POINT, Wording.PLAIN));
        assertEquals(Cell.text("6A"), reader("runs.category").typed("6A", Decimal.POINT, Wording.PLAIN));
        assertEquals(Cell.YES, reader("zones.outdoor").typed("yes", Decimal.POINT, Wording.PLAIN));
        assertEquals(Cell.text("yes"), reader("values.is").typed("yes", Decimal.POINT, Wording.PLAIN));
        assertEquals(Cell.text("1.5 W"), reader("values.is").typed("1,5 W", Decimal.COMMA, Wording.PLAIN));
        assertEquals(Cell.text("12,5"), reader("runs.note").typed("12,5", Decimal.COMMA, Wording.PLAIN));
        assertEquals(Cell.text("-1 m"), reader("runs.length").typed("-1 m", Decimal.POINT, Wording.PLAIN));
        assertEquals(
                Cell.text("a + 1.5 m"), reader("runs.length").typed(" a  + 1,5 m", Decimal.COMMA, new TokenWording()));
    }

    private static CellReader reader(String path) {
        String[] parts = path.split("\\.", 2);
        Table table = Table.of(parts[0]).orElseThrow();
        Name name = Catalogue.find(table, parts[1])
                .or(() -> Catalogue.cells(table).stream()
                        .filter(n -> n.key().equals(parts[1]))
                        .findFirst())
                .orElseThrow();
        return CellReader.of(name, UNITS);
    }

    /** The cell as the file has it: a text in quotes, true or false, a number, or anything else. */
    private static Cell cell(String json) {
        if (json.startsWith("'")) {
            return Cell.text(json.substring(1, json.length() - 1));
        }
        if (json.equals("true") || json.equals("false")) {
            return json.equals("true") ? Cell.YES : Cell.NO;
        }
        boolean number = json.charAt(0) == '-' || Character.isDigit(json.charAt(0));
        return number ? Cell.number(json) : new Cell(Cell.Form.OTHER, json);
    }

    private static String text(Reading reading) {
        if (reading instanceof Reading.Literal literal) {
            return String.format(
                            Locale.ROOT,
                            "%s = %s",
                            literal.inside(),
                            literal.typed().text())
                    + literal.notice().map(n -> "; " + said(n)).orElse("");
        }
        if (reading instanceof Reading.Word word) {
            return "word " + word.index() + " " + word.word();
        }
        if (reading instanceof Reading.YesNo yesNo) {
            return yesNo.yes() ? "yes" : "no";
        }
        if (reading instanceof Reading.RowId id) {
            return "row " + id.id();
        }
        if (reading instanceof Reading.TextValue text) {
            return "text " + text.text();
        }
        if (reading instanceof Reading.Expression expression) {
            return "expression: " + expression.text();
        }
        return reading instanceof Reading.Wrong wrong ? said(wrong.notice()) : "empty";
    }

    private static String said(Notice notice) {
        assertTrue(notice.code().startsWith("catalogue."));
        return notice.level().word() + ": " + notice.text();
    }
}
