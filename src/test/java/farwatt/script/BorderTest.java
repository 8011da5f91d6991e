package farwatt.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers and texts on their way between a script and the plan. */
class BorderTest {
    @Test
    void identifiersAreTextsAndKeepEveryDigit() {
        Scripts.Ran ran = Scripts.run("""
                plan.add('devices', {id: '8939010102358478435', draw: '4 W', note: '79131111111'}, {from: 'gate', length: '9 m'});
                const row = plan.rows('devices').find((device) => device.id === '8939010102358478435');
                print(typeof row.id, row.id, typeof row.note, row.note, plan.text("'8939010102358478435'.note"));
                plan.set('gate.ports', 14n).set("'cam 1'.note", 8939010102358478435n);
                print(plan.get('gate.ports'), plan.get("'cam 1'.note"));
                """);
        assertEquals(
                "string 8939010102358478435 string 79131111111 79131111111\n14 8939010102358478435",
                ran.printed(),
                ran.outcome().said());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            value = {
                "plan.set(\"'cam 1'.note\", 8939010102358478435) | cam 1 · note: 8939010102358478800 has more digits",
                "plan.add('devices', {id: 79131111111}) | id needs a text, and got 79131111111.",
                "plan.set(\"'cam 1'.draw\", '12,95') | cam 1 · draw: Found a comma inside a number",
                "plan.set(\"'cam 1'.draw\", '7.5') | 7.5 has no unit, and cam 1 · draw needs one: '7.5 W'.",
                "plan.set(\"'cam 1'.draw\", 0 / 0) | cam 1 · draw: what is no number came out",
                "plan.set(\"'cam 1'.draw\", undefined) | cam 1 · draw: undefined is no value.",
                "plan.set(\"'cam 1'.draw\", Symbol('5 W')) | cam 1 · draw: an object cannot stand in a cell.",
                "plan.set('gate.ports', 12.5) | gate · ports: 12.5 is a count and must be a whole number"
            })
    void whatIsNoSoundValueIsRefusedAtItsLineInEveryMode(String text, String said) {
        for (String around : List.of("\n\n%s", "\n'use strict';\n%s", "\n\nnew Function(`%s`)()")) {
            Scripts.Ran ran = Scripts.run(String.format(java.util.Locale.ROOT, around, text));
            assertEquals(Outcome.State.FAILED, ran.outcome().state(), text);
            assertTrue(ran.error().startsWith(said.strip()), () -> ran.error() + " for " + text);
            List<ScriptError.Spot> chain = ran.outcome().error().orElseThrow().chain();
            assertEquals(3, chain.get(chain.size() - 1).line(), text);
        }
    }

    @Test
    void sortingWithoutAFunctionGoesByLettersAsTheReadmeSays() {
        Scripts.Ran ran = Scripts.run("""
                print([10, 9, 1.5, 100].sort(), [10, 9, 1.5, 100].sort((a, b) => a - b), 0.1 + 0.2 === 0.3);
                """);
        assertEquals("[1.5, 10, 100, 9] [1.5, 9, 10, 100] false", ran.printed());
    }

    @Test
    void aMistakeOfTheProgramIsSaidAtTheLineWithTheCallThatLedThere() {
        Scripts.Ran host = Scripts.run("""
                // sweep over lengths
                function step(m) {
                  plan.set('trunk.length', `${m} m`);
                }
                for (let m = 20; m >= -20; m -= 20) step(m);
                """);
        assertEquals(
                "test.js, line 3, in step: trunk · length: -20 m is below zero, which cannot be; check the sign"
                        + "\n  called from test.js, line 5",
                host.outcome().said());
        assertEquals(2, line(Scripts.run("let a = 1;\nlet b = ;\n")));
        assertEquals(4, line(Scripts.run("\n\nconst arr = [1];\narr.length = 88 ** 99;\n")));
    }

    private static int line(Scripts.Ran ran) {
        assertEquals(Outcome.State.FAILED, ran.outcome().state());
        return ran.outcome().error().orElseThrow().chain().get(0).line();
    }

    /** Cells that are set wait until something is asked for; what is asked for must not notice. */
    @Test
    void manySettingsBeforeAQuestionGiveWhatThePlanWithAllOfThemGives() {
        Random random = new Random(11);
        StringBuilder script = new StringBuilder();
        List<String> expected = new ArrayList<>();
        Plan plan = Scripts.ferry();
        for (int round = 0; round < 12; round++) {
            for (int i = random.nextInt(6); i >= 0; i--) {
                String[] set = choose(plan, random);
                script.append("plan.set(\"")
                        .append(set[0])
                        .append("\", '")
                        .append(set[4])
                        .append("');\n");
                Cell cell = Cell.text(set[4]);
                plan = Edit.apply(
                                plan,
                                new Change.SetCell(Table.of(set[1]).orElseThrow(), set[2], set[3], Optional.of(cell)))
                        .plan();
            }
            script.append("print(plan.text('gate.reserve_share'), plan.text('plan.lost'));\n");
            Calculation now = Calculation.of(plan);
            now.look(Corner.of(plan.settings().text("corner")).orElse(Corner.MOST));
            expected.add(text(now, "gate.reserve_share") + " " + text(now, "plan.lost"));
        }
        Scripts.Ran ran = Scripts.run(script.toString());
        assertEquals(
                String.join("\n", expected),
                ran.printed(),
                () -> script + ran.outcome().said());
    }

    private static String text(Calculation calculation, String expression) {
        return calculation.ask(expression).value().orElseThrow().text();
    }

    /** A path, its table, row and column, and a text for it. */
    private static String[] choose(Plan plan, Random random) {
        List<Row> runs = new ArrayList<>();
        plan.rows(Table.RUNS).forEach(runs::add);
        Row run = runs.get(random.nextInt(runs.size()));
        String quoted = "'" + run.id() + "'";
        return switch (random.nextInt(5)) {
            case 0 -> new String[] {quoted + ".length", "runs", run.id(), "length", 5 + random.nextInt(60) + " m"};
            case 1 -> new String[] {quoted + ".gauge", "runs", run.id(), "gauge", 21 + random.nextInt(4) + " AWG"};
            case 2 -> new String[] {"quay.ambient", "zones", "quay", "ambient", random.nextInt(50) + " degC"};
            case 3 -> new String[] {"corner", "plan", "", "corner", Corner.values()[random.nextInt(5)].word()};
            default -> new String[] {"dark", "values", "dark", "is", random.nextBoolean() ? "yes" : "no"};
        };
    }
}
