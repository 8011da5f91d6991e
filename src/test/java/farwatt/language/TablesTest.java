package farwatt.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import farwatt.quantity.Decimal;
import farwatt.report.Span;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The data files: a line says what goes in and what comes out. */
class TablesTest {
    static Stream<Arguments> lexer() {
        return Table.rows("/language/lexer.txt", 2);
    }

    @ParameterizedTest
    @MethodSource("lexer")
    void cutsATextIntoWords(String text, String words) {
        List<Token> tokens = Language.tokens(Said.text(text), Site.UNITS, Decimal.POINT);
        String found = tokens.stream()
                .filter(t -> t.kind() != Token.Kind.END)
                .map(t -> t.kind().name().toLowerCase(Locale.ROOT) + "<" + t.text() + ">")
                .collect(Collectors.joining(" "));
        assertEquals(words, found);
    }

    static Stream<Arguments> parser() {
        return Table.rows("/language/parser.txt", 2);
    }

    @ParameterizedTest
    @MethodSource("parser")
    void readsShapesAndMistakes(String field, String expected) {
        checkParsed(Said.text(field), Decimal.POINT, expected);
    }

    static Stream<Arguments> comma() {
        return Table.rows("/language/comma.txt", 2);
    }

    @ParameterizedTest
    @MethodSource("comma")
    void readsACommaAsDecimalSignWhereItIsTheSign(String field, String expected) {
        checkParsed(Said.text(field), Decimal.COMMA, expected);
    }

    private static void checkParsed(String text, Decimal decimal, String expected) {
        Parsed parsed = Language.parse(text, Site.UNITS, decimal);
        String found =
                parsed.problems().isEmpty() ? Tree.of(parsed.expr()) : "!" + Said.problems(text, parsed.problems());
        assertEquals(expected, found);
    }

    static Stream<Arguments> check() {
        return Table.rows("/language/check.txt", 4);
    }

    @ParameterizedTest
    @MethodSource("check")
    void findsTypesAndClashes(String row, String text, String wanted, String expected) {
        Scope scope = new Site().at(row);
        Checked checked = Language.check(Language.parse(text, Site.UNITS, Decimal.POINT), scope, Said.wanted(wanted));
        String found = checked.problems().isEmpty()
                ? Said.type(checked.type())
                : "!" + Said.problems(text, checked.problems());
        assertEquals(expected, found);
    }

    static Stream<Arguments> evaluate() {
        return Table.rows("/language/evaluate.txt", 3);
    }

    @ParameterizedTest
    @MethodSource("evaluate")
    void worksOutValuesAndFaults(String row, String text, String expected) {
        Site site = new Site();
        Scope scope = site.at(row);
        Checked checked = Language.check(Language.parse(text, Site.UNITS, Decimal.POINT), scope, Wanted.ANY);
        assertEquals(List.of(), checked.problems());
        Planned planned = Language.plan(checked, scope, Hoist.NONE);
        Frame frame = new Frame(site).at(site.row(row));
        assertEquals(
                expected, Said.value(site, planned.type(), planned.formula().value(frame)));
        assertEquals(site.row(row), frame.row, "a gather puts the row back");
    }

    static Stream<Arguments> canonical() {
        return Table.rows("/language/canonical.txt", 4);
    }

    @ParameterizedTest
    @MethodSource("canonical")
    void putsCellsInCanonicalForm(String decimal, String wanted, String field, String expected) {
        String text = Said.text(field);
        Decimal sign = decimal.equals("comma") ? Decimal.COMMA : Decimal.POINT;
        String once = Language.canonical(text, Said.wanted(wanted), Site.UNITS, sign);
        assertEquals(Said.text(expected), once);
        boolean readable = Language.parse(text, Site.UNITS, sign).problems().isEmpty();
        for (Decimal again : readable ? Decimal.values() : new Decimal[0]) {
            assertEquals(once, Language.canonical(once, Said.wanted(wanted), Site.UNITS, again));
        }
    }

    static Stream<Arguments> rename() {
        return Table.rows("/language/rename.txt", 5);
    }

    @ParameterizedTest
    @MethodSource("rename")
    void renamesRowsAndNothingElse(String row, String text, String from, String to, String expected) {
        assertEquals(expected, Language.rename(text, new Site().at(row), from, to));
    }

    static Stream<Arguments> colours() {
        return Table.rows("/language/colours.txt", 2);
    }

    @ParameterizedTest
    @MethodSource("colours")
    void coloursEveryPart(String field, String expected) {
        String text = Said.text(field);
        Parsed parsed = Language.parse(text, Site.UNITS, Decimal.POINT);
        String found = parsed.colours().stream()
                .map(c -> c.colour().name().toLowerCase(Locale.ROOT) + "<" + part(text, c.span()) + ">")
                .collect(Collectors.joining(" "));
        assertEquals(expected, found);
    }

    private static String part(String text, Span span) {
        return text.substring(span.from(), span.to());
    }

    static Stream<Arguments> complete() {
        return Table.rows("/language/complete.txt", 5);
    }

    /** The cursor is ‸; first the best offers in their order, then what must not be among them. */
    @ParameterizedTest
    @MethodSource("complete")
    void offersWhatMayStandAtTheCursor(String row, String wanted, String field, String best, String not) {
        String marked = Said.text(field);
        int cursor = marked.indexOf('‸');
        String text = marked.replace("‸", "");
        Completion completion = Language.complete(text, cursor, new Site().at(row), Said.wanted(wanted), Decimal.POINT);
        List<String> offered =
                completion.offers().stream().map(Completion.Offer::text).toList();
        if (best.equals("nothing")) {
            assertEquals(List.of(), offered);
            return;
        }
        List<String> first = List.of(best.split(" \\| ", -1));
        assertEquals(first, offered.subList(0, Math.min(first.size(), offered.size())));
        for (String unwanted : not.isEmpty() ? new String[0] : not.split(" \\| ", -1)) {
            assertFalse(offered.contains(unwanted), unwanted);
        }
    }
}
