package farwatt.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.edit.Rename;
import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Explanation;
import farwatt.engine.PlanWording;
import farwatt.engine.ScenarioPlans;
import farwatt.file.PlanReader;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Scenarios, names and reasons on the ferry landing, where all rooms meet. */
class FerryTest {
    private static Plan ferry() throws Refusal {
        return PlanReader.read(Program.scenario("ferry-landing.farwatt.json")).plan();
    }

    /** Every value of every corner by place, to the last bit; ids may be put under other names. */
    private static Map<String, String> values(Plan plan, String id, String as) {
        Map<String, String> all = new TreeMap<>();
        Calculation calculation = Calculation.of(plan);
        for (Corner corner : Corner.values()) {
            calculation.look(corner);
            for (Table table : Table.site()) {
                for (Name name : calculation.names(table)) {
                    if (name.kind() instanceof Kind.Quantity) {
                        for (int place = 0; place < calculation.rows(table); place++) {
                            double value =
                                    calculation.figures(table, name.key()).at(place);
                            String row = calculation.id(table, place).equals(id) ? as : calculation.id(table, place);
                            String key = corner + " " + row + "." + name.key();
                            all.put(key, Double.isNaN(value) ? "none" : Double.toHexString(value));
                        }
                    }
                }
            }
        }
        return all;
    }

    private static Plan set(Plan plan, Table table, String id, String name, Cell to) {
        return Edit.apply(plan, new Change.SetCell(table, id, name, Optional.of(to)))
                .plan();
    }

    @Test
    void aScenarioIsThePlanWithItsChangesWrittenInByHand() throws Refusal {
        Plan plan = ferry();
        Plan byHand = set(plan, Table.VALUES, "dark", "is", Cell.YES);
        byHand = set(byHand, Table.ZONES, "quay", "ambient", Cell.text("-10 degC"));
        byHand = set(byHand, Table.RUNS, "trunk", "gauge", Cell.text("24 AWG"));
        ScenarioPlans made = ScenarioPlans.of(plan, "Winter Night, thinner trunk");
        assertEquals(List.of(), made.notices());
        assertEquals(values(byHand, "", ""), values(made.plan(), "", ""));
    }

    @Test
    void dropsAndAddsOfAScenarioApplyInOrder() throws Refusal {
        Row camera = Row.of("cam 9").with("zone", "quay").with("draw", "4 W");
        Row run = Row.of("run cam 9").with("from", "gate").with("to", "cam 9").with("length", "20 m");
        List<Scenario> scenarios = new ArrayList<>(ferry().scenarios());
        scenarios.add(new Scenario(
                "swap",
                "",
                List.of(
                        new Step.Drop("cam 1"),
                        new Step.Add("devices", camera),
                        new Step.Add("runs", run),
                        new Step.Set("'cam 9'.draw", Cell.text("5 W")),
                        new Step.Set("reserve_target", Cell.text("25 %")))));
        Plan swapped =
                ScenarioPlans.of(ferry().withScenarios(scenarios), "swap").plan();
        assertTrue(swapped.find("cam 1").isEmpty() && swapped.find("run cam 1").isEmpty());
        Calculation calculation = Calculation.of(swapped);
        assertEquals(
                "5 W", calculation.ask("'cam 9'.watts").value().orElseThrow().text());
        assertEquals(
                "25 %", calculation.ask("reserve_target").value().orElseThrow().text());
    }

    @Test
    void scenariosThatCannotBeAreSaid() throws Refusal {
        Plan plan = ferry();
        assertThrows(Refusal.class, () -> ScenarioPlans.of(plan, "no such"));
        Plan round = plan.withScenarios(List.of(new Scenario("a", "b", List.of()), new Scenario("b", "a", List.of())));
        assertThrows(Refusal.class, () -> ScenarioPlans.of(round, "a"));
        Plan odd = plan.withScenarios(List.of(new Scenario(
                "odd", "", List.of(new Step.Set("nobody.draw", Cell.text("5 W")), new Step.Drop("nothing")))));
        assertEquals(2, ScenarioPlans.of(odd, "odd").notices().size());
    }

    @Test
    void aRowUnderAnotherNameKeepsEveryFigureAndEveryReference() throws Refusal {
        Plan plan = ferry();
        PlanWording wording = new PlanWording(Calculation.of(plan));
        int place = plan.rows(Table.SWITCHES).place("gate");
        Change.Batch rename = Rename.of(plan, Table.SWITCHES, place, "east gate", wording);
        Edit edit = Edit.apply(plan, rename);
        assertEquals(values(plan, "gate", "east gate"), values(edit.plan(), "", ""));
        assertEquals(
                "'east gate'.reserve_share >= reserve_target",
                edit.plan().rows(Table.NEEDS).at(0).text("holds"));
        assertEquals(plan, Edit.apply(edit.plan(), edit.inverse()).plan());
    }

    @Test
    void everySolvedValueTellsWhatItWasWorkedOutFrom() throws Refusal {
        Calculation calculation = Calculation.of(ferry());
        for (String asked : List.of("gate.available", "trunk.loop", "'cam 1'.volts", "plan.lost", "feed.mains")) {
            Explanation why = calculation.explain(asked, 8).orElseThrow();
            assertTrue(!why.inputs().isEmpty() && !why.how().isEmpty(), asked);
            assertTrue(leaves(why).anyMatch(leaf -> leaf.how().startsWith("typed: ")), asked);
        }
        Explanation loop = calculation.explain("trunk.loop", 3).orElseThrow();
        assertTrue(
                leaves(loop).anyMatch(leaf -> leaf.how().equals("typed: 0.05 ohm (salt air)")),
                "a replaced constant gives its reason");
    }

    private static java.util.stream.Stream<Explanation> leaves(Explanation e) {
        return e.inputs().isEmpty()
                ? java.util.stream.Stream.of(e)
                : e.inputs().stream().flatMap(FerryTest::leaves);
    }
}
