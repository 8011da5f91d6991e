package farwatt.window.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Terms;
import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.report.Refusal;
import farwatt.window.remember.Remembered;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TypingTest {
    private static final Path ROOT = Path.of(System.getProperty("farwatt.root", "."));

    @TempDir
    Path folder;

    private Plan plan;
    private Typing typing;
    private History history;

    @BeforeEach
    void open() throws Refusal {
        plan = PlanReader.read(ROOT.resolve("scenarios/ferry-landing.farwatt.json"))
                .plan();
        Terms terms = Terms.of(plan);
        history = new History(new Remembered(folder.resolve("r.properties")));
        Completing completing = new Completing(
                () -> plan,
                (expression, caret) -> terms.complete(Table.VALUES, "", "is", expression, caret, Decimal.POINT),
                history::all);
        typing = new Typing(completing, history);
    }

    private List<String> offered(String text) {
        typing.ask(text, text.length());
        return typing.offers().stream().map(Completing.Offer::word).toList();
    }

    private String taken(String text) {
        typing.ask(text, text.length());
        return typing.accept(text, 0).text();
    }

    @Test
    void wordsOfScriptsAreOfferedOutsideQuotes() {
        assertEquals("plan.get", taken("plan.ge"));
        assertEquals("const a = sweep", taken("const a = swe"));
        assertTrue(offered("plan.").size() > 8);
        assertEquals(List.of(), offered("// plan.te"));
    }

    @Test
    void whatAResultHasIsOfferedAfterItsName() {
        assertEquals("const more = grow({}); print(more.fitted", taken("const more = grow({}); print(more.fi"));
        assertEquals(List.of(), offered("const more = Math.max(1); more.fi"));
        history.add("heat = sweep({over: {}, read: []})");
        assertEquals("heat.varied", taken("heat.v"));
        assertEquals(7, offered("heat.").size());
        typing.typed("heat.", 5);
        assertTrue(typing.isOffering());
    }

    @Test
    void namesOfThePlanAreOfferedInsideQuotes() {
        assertEquals("plan.get('gate.reserve_share", taken("plan.get('gate.reserve_sh"));
        assertEquals("plan.get(\"'run quay wireless'", taken("plan.get(\"wirel"));
        assertEquals("plan.get('\\'run quay wireless\\'", taken("plan.get('wirel"));
        assertEquals("plan.get('trunk.loss + gate.sent", taken("plan.get('trunk.loss + gate.sen"));
    }

    @Test
    void wholeTextsAreOfferedWhereOneIsWanted() {
        assertEquals(List.of("winter night", "winter night, thinner trunk"), offered("plan.scenario('winter"));
        assertEquals("plan.rows('devices", taken("plan.rows('dev"));
        assertEquals("grow({copy: 'cam 1", taken("grow({copy: 'cam"));
        assertEquals(List.of("fail", "warn", "note"), offered("plan.findings({level: '"));
    }

    @Test
    void offersComeByThemselvesOnlyWhenSomethingWasBegun() {
        typing.typed("p", 1);
        assertFalse(typing.isOffering());
        typing.typed("pl", 2);
        assertTrue(typing.isOffering());
        assertEquals(-1, typing.chosen());
        typing.choose(1);
        assertEquals(0, typing.chosen());
        typing.close();
        assertFalse(typing.isOffering());
    }

    @Test
    void aNewLineGoesInBehindAnOpenBracket() {
        assertEquals("f({\n  ", typing.newLine("f({", 3).text());
        Typing.Put put = typing.newLine("  a;\nb", 4);
        assertEquals("  a;\n  \nb", put.text());
        assertEquals(7, put.caret());
    }

    @Test
    void coloursGoByWhatTheSignsMean() {
        List<Tint> tints = Tint.of("const a = plan.text('it\\'s') // 1\n2").stream()
                .map(Tint.Stretch::tint)
                .filter(tint -> tint != Tint.PLAIN)
                .toList();
        assertEquals(List.of(Tint.KEYWORD, Tint.OURS, Tint.TEXT, Tint.REMARK, Tint.NUMBER), tints);
        for (String odd : List.of("'", "`${", "/*", "\\", "'\\", "é = 'ß", "a\n'b\nc'")) {
            List<Tint.Stretch> all = Tint.of(odd);
            assertEquals(odd.length(), all.get(all.size() - 1).to(), odd);
        }
    }

    @Test
    void helpKnowsTheWordAtTheCaretAndTheNamesInQuotes() {
        assertEquals(
                "sweep", Helping.at("sweep({over: {", 14, plan).orElseThrow().word());
        assertEquals(
                "reserve_share",
                Helping.at("plan.get('gate.reserve_share')", 28, plan)
                        .orElseThrow()
                        .word());
        assertTrue(Helping.at("1 + 1", 5, plan).isEmpty());
        assertTrue(Helping.all(plan).stream().allMatch(help -> !help.example().isBlank()));
    }
}
