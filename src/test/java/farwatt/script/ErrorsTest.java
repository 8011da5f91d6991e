package farwatt.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ErrorsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            value = {
                "plan.set('trunk.gage', '22 AWG') | trunk has no cell gage. Did you mean gauge?",
                "plan.set('trunck.gauge', '22 AWG') | There is no row trunck. Did you mean trunk?",
                "plan.set('reserve_targt', '5 %') | There is no value or setting reserve_targt. Did you mean reserve_target?",
                "plan.set('trunk', '22 AWG') | trunk is a row. Name one of its cells, such as trunk.note.",
                "plan.set('trunk.loss', '3 W') | loss of runs is worked out and cannot be set. Set what it follows from.",
                "plan.set('trunk.length', undefined) | trunk · length: undefined is no value.",
                "plan.set('trunk.length', null) | trunk · length: null is no value.",
                "plan.set('trunk.length', 0 / 0) | trunk · length: what is no number came out of the script's arithmetic",
                "plan.set('trunk.length', 1 / 0) | trunk · length: an endless number came out of the script's arithmetic",
                "plan.set('trunk.length', {}) | trunk · length: an object cannot stand in a cell.",
                "plan.set('trunk.length', () => 1) | trunk · length: a function cannot stand in a cell.",
                "plan.set('trunk.length', 30) | trunk · length: 30 is a number without a unit",
                "plan.set('trunk.length', '295') | 295 has no unit, and trunk · length needs one: '295 m'.",
                "plan.set('trunk.length', '30 V') | trunk · length: ",
                "plan.set('trunk.length', '') | trunk · length: an empty text is no value.",
                "plan.set('trunk.length', 'long') | trunk · length: Found \"long\"",
                "plan.set('trunk.metal', 'coper') | trunk · metal: Found \"coper\"; wanted a name that is known here. Did you mean copper?",
                "plan.set('trunk.bundle', 'quay duc') | There is no row quay duc. Did you mean quay duct?",
                "plan.set('dark', 'maybe') | values · dark: Found \"maybe\"",
                "plan.get('gat.reserve') | Found \"gat\"; wanted a name that is known here. Did you mean \"gate\"?",
                "plan.get('trunk.length + gate.volts') | Found a voltage (V); wanted a length (m)",
                "plan.get(5) | plan.get needs a text, and got 5.",
                "plan.get('feed.runtime / 0') | feed.runtime / 0 has no value: ",
                "plan.rows('devises') | devises is no table.",
                "plan.rows('runs')[0].lenght | a row of runs has no lenght. Did you mean length?",
                "plan.findings({levl: 'fail'}) | plan.findings does not know levl. It takes level. Did you mean level?",
                "plan.findings({level: 'fial'}) | fial is no level. Choose fail, warn or note. Did you mean fail?",
                "plan.scenario('summer') | There is no scenario summer.",
                "plan.add('devices', {id: 'c', clas: 3}) | c has no cell clas. Did you mean class?",
                "plan.add('devices', {class: 3}) | A row of devices needs its id.",
                "plan.add('devices', {id: 'Cam 1'}) | There is Cam 1 already.",
                "plan.add('devices', {id: 'c', draw: 'trunk.loss'}) | c · draw: draw is filled in before",
                "plan.add('devices', {id: 'c'}, {from: 'gat'}) | There is no row gat. Did you mean gate?",
                "plan.drop('cam 99') | There is no row cam 99.",
                "plan.sett('a') | plan has no sett. Did you mean set?",
                "keep('x') | Nothing was changed so far",
                "swep({}) | swep is not known here. Did you mean sweep?",
                "x = 5 | x is not known here.",
                "const a = 1; a = 2 | a is a constant and cannot be set again.",
                "let q = 1; let q = 2 | q is there already.",
                "let a = ( | This cannot be read: Expected an operand but found the end.",
                "null.length | Nothing is there to take length of.",
                "const z = #x#; z.foo() | z.foo is no function.",
                "const f = () => f(); f() | The script calls itself without an end.",
                "throw new Error('own words') | own words",
                "Promise.reject(new Error('later')) | later",
                "table(plan.rows('runs')).save('../out.csv') | ../out.csv is no plain file name.",
                "table(plan.rows('runs')).save('out.exe') | out.exe cannot be saved. Choose one of these endings: csv, xlsx.",
                "table(plan.rows('runs')).picture('los') | There is no column los.",
                "table([{a: 1}], {a: 'metres'}).show() | metres is not a unit.",
                "table([{a: 1}], {b: 'm'}) | this table has no b."
            })
    void whatIsWrongIsSaidInPlainWords(String text, String said) {
        Scripts.Ran ran = Scripts.run(text.replace('#', '"'));
        assertEquals(Outcome.State.FAILED, ran.outcome().state(), text);
        assertTrue(ran.error().startsWith(said.strip()), () -> ran.error() + " for " + text);
        assertEquals(1, ran.outcome().error().orElseThrow().chain().get(0).line());
    }

    @Test
    void aMistakeStandsAtTheScriptsOwnLineWithTheCallsThatLedThere() {
        Scripts.Ran ran = Scripts.run("""
                function worst(name) {
                  return plan.get(name + '.reserv_share');
                }
                for (const node of ['gate']) {
                  print(worst(node));
                }
                """);
        List<ScriptError.Spot> chain = ran.outcome().error().orElseThrow().chain();
        List<String> places =
                new ArrayList<>(chain.stream().map(ScriptError.Spot::text).toList());
        assertEquals(List.of("test.js, line 2, in worst", "test.js, line 5"), places);
        assertTrue(
                ran.outcome().said().startsWith("test.js, line 2, in worst: "),
                ran.outcome().said());
        assertTrue(
                ran.outcome().said().endsWith("\n  called from test.js, line 5"),
                ran.outcome().said());
    }

    @Test
    void aScriptCanCatchWhatIsRefusedAndGoOn() {
        Scripts.Ran ran = Scripts.run("""
                try {
                  plan.set('trunk.gage', '22 AWG');
                } catch (e) {
                  print(e instanceof Error, e.message);
                }
                print(plan.text('trunk.gauge'));
                """);
        assertEquals("true trunk has no cell gage. Did you mean gauge?\n22 AWG", ran.printed());
    }

    @Test
    void whatWasRefusedLeavesThePlanAsItWas() {
        Scripts.Ran ran = Scripts.run("""
                const before = JSON.stringify(plan.rows('devices'));
                for (const attempt of [
                  () => plan.set("'cam 1'.draw", 'trunk.loss'),
                  () => plan.add('devices', {id: 'c', draw: 'trunk.loss'}),
                  () => plan.add('devices', {id: 'c', draw: '4 W'}, {from: 'nowhere'}),
                ]) {
                  try { attempt(); print('taken'); } catch (e) { print(JSON.stringify(plan.rows('devices')) === before); }
                }
                try { keep('x'); } catch (e) { print(e.message); }
                """);
        assertEquals(
                "true\ntrue\ntrue\nNothing was changed so far, so there is nothing to keep.",
                ran.printed(),
                ran.outcome().said());
    }

    @Test
    void aScenarioThatIsNotThereIsSaidBeforeTheScriptBegins() {
        Said said = new Said();
        Outcome outcome = Scripts.HOST.run(
                new Script("a.js", "print(1)", Optional.empty(), Script.Kind.FILE),
                Scripts.ferry(),
                "summer",
                List.of(),
                said,
                new farwatt.report.Cancel());
        assertEquals(Outcome.State.FAILED, outcome.state());
        assertTrue(outcome.said().startsWith("There is no scenario summer."), outcome.said());
        assertEquals(List.of(), said.printed);
    }
}
