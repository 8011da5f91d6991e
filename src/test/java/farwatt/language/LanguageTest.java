package farwatt.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.quantity.Decimal;
import farwatt.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LanguageTest {
    @ParameterizedTest
    @ValueSource(strings = {"gate", "größe", "a_1", "min", "devices", "カメラ", "W"})
    void plainNamesNeedNoQuotes(String name) {
        assertTrue(Language.isName(name));
        assertEquals(name, Language.row(name));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "edge 1", "5th", "_a", "if", "total", "a-b", "a.b", " gate", "gate "})
    void allElseIsQuoted(String id) {
        assertFalse(Language.isName(id));
        assertEquals("'" + id + "'", Language.row(id));
    }

    @Test
    void anIdIsQuotedWhereABareNameWouldMeanSomethingElse() {
        Site site = new Site();
        assertEquals("'load'", Language.row("load", site.at("cam 1")));
        assertEquals("load", Language.row("load", site.at("-")));
        assertEquals("'dark'", Language.row("dark", site.at("-")));
        assertEquals("'o''hara'", Language.row("o'hara", site.at("-")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '§',
            quoteCharacter = '~',
            value = {
                "gate.sent + 'edge 1'.sent § gate|edge 1",
                "total(draw of devices on north where kind is \"sign\") § draw|north|kind",
                "min(a, this.b) + plan.lost § a",
                "'o''hara'.draw + (x § o'hara|x",
                "'edge § edge",
                "5 W § ~~"
            })
    void namesThatMayReferToRowsAreFoundInAnyText(String text, String expected) {
        List<Expr.Part> found = Language.references(Language.parse(text, Site.UNITS, Decimal.POINT));
        assertEquals(
                expected, String.join("|", found.stream().map(Expr.Part::name).toList()));
    }

    @Test
    void everyNameIsToldWithWhatItRefersTo() {
        Site site = new Site();
        String text = "feeder.sent + total(draw of devices on gate)";
        Checked checked = Language.check(Language.parse(text, Site.UNITS, Decimal.POINT), site.at("cam 1"), Wanted.ANY);
        List<String> known = checked.known().stream()
                .map(k -> text.substring(k.span().from(), k.span().to()) + "="
                        + k.ref().getClass().getSimpleName())
                .sorted()
                .toList();
        assertEquals(List.of("draw=Reads", "feeder=Leads", "gate=Fixed", "sent=Reads"), known);
    }

    @Test
    void namesOtherThanRowsAreRenamedByWhatTheyReferTo() {
        Site site = new Site();
        String text = "if dark then draw else total(draw of devices) + spare";
        String renamed = Language.rename(
                text,
                site.at("cam 1"),
                ref -> ref instanceof Ref.Cell c && c.name().equals("dark"),
                "night");
        assertEquals("if night then draw else total(draw of devices) + spare", renamed);
        String column = Language.rename(
                text,
                site.at("cam 1"),
                ref -> ref instanceof Ref.Reads r && r.name().equals("draw"),
                "watts");
        assertEquals("if dark then watts else total(watts of devices) + spare", column);
    }

    @Test
    void aBareNumberTakesAUnitAndNothingElseDoes() {
        Unit watt = Site.UNITS.need("W");
        Parsed number = Language.parse("-18", Site.UNITS, Decimal.POINT);
        assertEquals("-18 W", Language.print(Language.withUnit(number.expr(), watt)));
        Parsed sum = Language.parse("18 + 1", Site.UNITS, Decimal.POINT);
        assertEquals(sum.expr(), Language.withUnit(sum.expr(), watt));
    }
}
