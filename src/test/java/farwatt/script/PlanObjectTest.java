package farwatt.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.engine.ScenarioPlans;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Scenario;
import farwatt.report.Cancel;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlanObjectTest {
    private static String value(Plan plan, String expression) {
        return Calculation.of(plan).ask(expression).value().orElseThrow().text();
    }

    @Test
    void valuesAreThoseOfTheEngine() {
        Scripts.Ran ran = Scripts.run("""
                print(plan.text('gate.reserve_share'), plan.get('gate.reserve_share') === plan.get('1 * gate.reserve_share'));
                print(plan.get('dark'), plan.get('trunk.metal'), plan.get('quay.ambient'), plan.get("'cam 1'.run"));
                print(plan.get('trunk.port_limit', 'none typed'));
                """);
        assertEquals(
                value(Scripts.ferry(), "gate.reserve_share") + " true\nfalse copper 24 run cam 1\nnone typed",
                ran.printed(),
                ran.outcome().said());
    }

    @Test
    void theOpenPlanStaysAsItIsAndTheCopyChanges() throws Refusal {
        Plan before = Scripts.ferry();
        Plan open = Scripts.ferry();
        Scripts.Ran ran = Scripts.run(new Script("a.js", """
                        plan.set('trunk.length', '80 m').set('dark', true).set('slack', '5 %').set('joint_ohms', '0.06 ohm');
                        print(plan.text('gate.reserve_share'));
                        const night = plan.scenario('winter night');
                        print(night.text('quay.ambient'), plan.text('quay.ambient'), night.text('trunk.length'));
                        """, Optional.empty(), Script.Kind.FILE), open);
        Plan by = before;
        for (String path : List.of("trunk.length=80 m", "dark=yes", "slack=5 %", "joint_ohms=0.06 ohm")) {
            List<Notice> notices = new ArrayList<>();
            String[] parts = path.split("=", 2);
            by = ScenarioPlans.apply(
                    by, new farwatt.plan.Step.Set(parts[0], farwatt.plan.Cell.text(parts[1])), "", notices);
            assertEquals(List.of(), notices);
        }
        assertEquals(
                value(by, "gate.reserve_share") + "\n-10 °C 24 °C 80 m",
                ran.printed().replace("degC", "°C"),
                ran.outcome().said());
        assertEquals(before, open);
        assertEquals(Optional.empty(), ran.outcome().proposed());
        assertEquals(List.of(), ran.outcome().kept());
    }

    @Test
    void whatIsKeptIsAScenarioThatGivesTheSameValues() throws Refusal {
        Scripts.Ran ran = Scripts.run("""
                for (const gauge of ['24 AWG', '23 AWG']) { plan.set('trunk.gauge', gauge); }
                plan.add('devices', {id: 'cam 9', class: 3, zone: 'quay', draw: 'if dark then 9 W else 5 W'},
                  {from: 'gate', length: '30 m'});
                plan.set("'cam 9'.draw", '6 W');
                plan.drop('cam 4');
                keep('another trunk');
                print(plan.text('gate.reserve_share'), plan.scenario('another trunk').text('gate.reserve_share'));
                """);
        assertEquals(1, ran.outcome().kept().size(), ran.outcome().said());
        Scenario kept = ran.outcome().kept().get(0);
        assertEquals("another trunk", kept.id());
        // one setting of the trunk, two rows added, one setting, one row dropped
        assertEquals(5, kept.steps().size());
        Plan plan = Scripts.ferry();
        Plan after = Edit.apply(plan, Changes.kept(plan, ran.outcome().kept())).plan();
        assertEquals(4, after.scenarios().size());
        String share = value(ScenarioPlans.of(after, "another trunk").plan(), "gate.reserve_share");
        assertEquals(share + " " + share, ran.printed());
    }

    @Test
    void aScenarioKeptOnAScenarioStandsOnIt() {
        Said said = new Said();
        Outcome outcome = Scripts.HOST.run(
                new Script(
                        "a.js",
                        "plan.set('trunk.gauge', '24 AWG'); keep('thin'); apply()",
                        Optional.empty(),
                        Script.Kind.FILE),
                Scripts.ferry(),
                "winter night",
                List.of(),
                said,
                new Cancel());
        assertEquals("winter night", outcome.kept().get(0).on());
        assertTrue(outcome.said().contains("The script works on the scenario winter night"), outcome.said());
    }

    @Test
    void whatIsAppliedIsOneStepThatGivesThePlanOfTheScript() {
        Scripts.Ran ran = Scripts.run("""
                plan.set('trunk.gauge', '24 AWG').set('dark', true);
                plan.drop('cam 4');
                apply();
                print(plan.text('gate.reserve_share'));
                """);
        Plan plan = Scripts.ferry();
        List<Notice> notices = new ArrayList<>();
        Change change = Changes.proposed(plan, ran.outcome().proposed().orElseThrow(), "Script a.js", notices);
        Edit edit = Edit.apply(plan, change);
        assertEquals(List.of(), notices);
        assertEquals(value(edit.plan(), "gate.reserve_share"), ran.printed());
        assertEquals(plan, Edit.apply(edit.plan(), edit.inverse()).plan());
    }

    @Test
    void resultsArePlainData() {
        Scripts.Ran ran = Scripts.run("""
                const rows = plan.rows('devices');
                const copy = {...rows[0]};
                print(Array.isArray(rows), Object.keys(copy).includes('draw'), 'draw' in rows[0], copy.id);
                print(JSON.parse(JSON.stringify(rows[0])).watts === rows[0].watts);
                const [first, ...others] = rows.slice().sort((a, b) => b.draw - a.draw);
                print(first.id, others.length, rows.filter((row) => row.draw > 5).map((row) => row.id).length);
                const {id, draw} = rows.find((row) => row.id === 'cam 2');
                print(id, draw, Object.entries(rows[0]).length === Object.keys(rows[0]).length);
                const result = table(rows.map(({id, watts}) => ({id, watts})), {watts: 'W'});
                result.points.sort((a, b) => b[1] - a[1]);
                print(Object.keys(result), result.rows()[0].id, JSON.stringify(result.columns));
                result.show();
                result.save('devices.csv');
                result.picture('watts', 'devices.svg');
                """);
        assertEquals("""
                true true true cam 1
                true
                quay wireless 11 2
                cam 2 5 true
                ["columns", "points"] quay wireless [{"name":"id","unit":""},{"name":"watts","unit":"W"}]""", ran.printed(), ran.outcome().said());
        ResultTable shown = ran.said().tables.get(0);
        assertEquals(
                "7 W",
                ResultTable.text(shown.rows().get(0).get(1), shown.columns().get(1)));
        assertEquals(List.of("devices.csv"), ran.said().saved);
        assertEquals(Optional.of("devices.svg"), ran.said().pictures.get(0).file());
    }

    @Test
    void findingsAndTheVerdictAreThoseOfTheReview() {
        Scripts.Ran ran = Scripts.run("""
                const night = plan.scenario('winter night, thinner trunk');
                const failing = night.findings({level: 'fail'});
                print(failing.length > 0, failing.every((finding) => finding.level === 'fail' && finding.text.length > 20));
                print(plan.verdict().holds, night.verdict().holds, night.findings().length > failing.length);
                """);
        assertEquals("true true\ntrue false true", ran.printed(), ran.outcome().said());
    }

    @Test
    void aFindingThatFailsCarriesWhatMendsItAsChangesThatCanBeMade() {
        Scripts.Ran ran = Scripts.run("""
                const night = plan.scenario('winter night, thinner trunk');
                const finding = night.findings({level: 'fail'}).find((each) => each.remedies.length > 0);
                const remedy = finding.remedies[0];
                for (const change of remedy.changes) {
                  if ('set' in change) night.set(change.set, change.to);
                  else if ('add' in change) night.add(change.add, change.row);
                  else night.drop(change.drop);
                }
                const same = (other) => other.code === finding.code && other.row === finding.row;
                print(remedy.text.length > 10, night.findings({level: 'fail'}).some(same));
                print(night.findings({level: 'note'}).every((note) => note.remedies.length === 0));
                """);
        assertEquals("true false\ntrue", ran.printed(), ran.outcome().said());
    }

    @Test
    void anExplanationGoesDownToWhatWasTyped() {
        Scripts.Ran ran = Scripts.run("""
                const tree = plan.explain('gate.available');
                const all = (t) => [t, ...t.inputs.flatMap(all)];
                print(tree.title, all(tree).some((t) => t.how.startsWith('typed')));
                plan.explain('trunk.length').show();
                """);
        assertEquals("gate · available true\ntrunk · length = 95 m  (typed: 95 m)", ran.printed());
    }

    @Test
    void whatIsPrintedReadsWell() {
        Scripts.Ran ran = Scripts.run("""
                print(0.1 + 0.2, 'text', [1, 'a', null], {a: {b: [undefined]}}, true, 0 / 0, 1 / 0, plan, new Map([[1, 2]]));
                print(); print(new Error('said')); console.log(1, Symbol('s'), 10n);
                """);
        assertEquals(
                "0.3 text [1, \"a\", nothing] {a: {b: [nothing]}} true no number no number a plan [[1, 2]]"
                        + "\n\nsaid\n1 Symbol(s) 10",
                ran.printed(),
                ran.outcome().said());
    }

    @Test
    void argumentsComeAsTexts() {
        Scripts.Ran ran = Scripts.run(
                new Script("a.js", "print(args, args.length)", Optional.empty(), Script.Kind.FILE),
                Scripts.ferry(),
                "one",
                "two\twith a tab\nand a line end \\ and an ä");
        assertEquals("[\"one\", \"two\\twith a tab\\nand a line end \\\\ and an ä\"] 2", ran.printed());
    }

    @Test
    void linesAtTheConsoleSeeWhatWasNamedBefore() {
        Plan plan = Scripts.ferry();
        Scripts.Ran first = Scripts.run(Script.line("const before = plan.get('trunk.length')"), plan);
        Scripts.Ran second = Scripts.run(Script.line("plan.set('trunk.length', '80 m'); before"), plan);
        Scripts.Ran third = Scripts.run(Script.line("[before, plan.get('trunk.length')]"), plan);
        Scripts.Ran whole = Scripts.run("print(typeof before)");
        assertEquals("", first.outcome().value());
        assertEquals("95", second.outcome().value());
        assertEquals("[95, 80]", third.outcome().value());
        assertEquals("undefined", whole.printed());
    }

    @Test
    void everyExampleOfTheHelpRuns() {
        for (Words.Word word : Words.all()) {
            Scripts.Ran ran = Scripts.run(word.example());
            assertEquals(
                    Outcome.State.DONE,
                    ran.outcome().state(),
                    word.example() + ": " + ran.outcome().said());
        }
    }
}
