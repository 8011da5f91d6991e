package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Networks that a circuit simulator and forty digits agreed on, as plans: a junction is a direct switch that neither
 * takes nor loses anything, a relay a regulated one, every run a measured loop at its own air. Networks in which wires
 * warm themselves are not among them, since a plan says heat by zone and bundle only.
 */
class GoldenPlanTest {
    private static final double RELATIVE = 1e-9;
    private static final List<String> FILES = List.of("single", "collapse", "tree", "relay", "thermal");

    @TestFactory
    Stream<DynamicTest> thePlanAgrees() throws IOException {
        List<JsonNode> cases = new ArrayList<>();
        for (String file : FILES) {
            try (InputStream in = GoldenPlanTest.class.getResourceAsStream("/golden/" + file + ".json")) {
                new ObjectMapper().readTree(in).get("cases").forEach(cases::add);
            }
        }
        List<JsonNode> cold = cases.stream().filter(GoldenPlanTest::staysCold).toList();
        assertTrue(cold.size() >= 52, cold.size() + " of " + cases.size());
        return cold.stream().map(each -> DynamicTest.dynamicTest(each.get("id").textValue(), () -> agrees(each)));
    }

    private static boolean staysCold(JsonNode each) {
        for (JsonNode node : each.get("nodes")) {
            if (node.path("heating_celsius_metre_per_watt").doubleValue() != 0) {
                return false;
            }
        }
        return true;
    }

    private static void agrees(JsonNode golden) {
        Answers answers = plan(golden).solved();
        answers.clean();
        JsonNode expected = golden.get("expected");
        if (expected.get("feasible").booleanValue()) {
            figures(golden, expected, answers);
        } else {
            fails(golden, expected, answers);
        }
        Sound.check(answers.calculation());
    }

    private static void figures(JsonNode golden, JsonNode expected, Answers answers) {
        near(expected.get("source_watts").doubleValue(), answers.number("S", "sent"), "source watts");
        near(expected.get("total_run_loss_watts").doubleValue(), answers.ofPlan("lost"), "all losses");
        Map<String, String> types = types(golden);
        for (Map.Entry<String, JsonNode> each : expected.get("node_volts").properties()) {
            String volts = types.get(each.getKey()).equals("load") ? "volts" : "volts_in";
            near(each.getValue().doubleValue(), answers.number(each.getKey(), volts), "volts of " + each.getKey());
        }
        runs(expected, "run_amps", "amps", answers);
        runs(expected, "run_ohms", "loop", answers);
        runs(expected, "run_loss_watts", "loss", answers);
        for (Map.Entry<String, JsonNode> each :
                expected.path("relay_input_watts").properties()) {
            near(each.getValue().doubleValue(), answers.number(each.getKey(), "received"), each.getKey() + " takes");
        }
        for (Map.Entry<String, JsonNode> each :
                expected.path("relay_output_watts").properties()) {
            near(each.getValue().doubleValue(), answers.number(each.getKey(), "sent"), each.getKey() + " sends");
        }
    }

    private static void runs(JsonNode expected, String field, String name, Answers answers) {
        assertFalse(expected.get(field).isEmpty());
        for (Map.Entry<String, JsonNode> each : expected.get(field).properties()) {
            String run = "run " + each.getKey();
            near(each.getValue().doubleValue(), answers.number(run, name), name + " of " + run);
        }
    }

    private static void near(double expected, double actual, String what) {
        // what carries next to nothing is right to a billionth of an ampere or watt
        assertEquals(expected, actual, Math.max(1e-9, RELATIVE * Math.abs(expected)), what);
    }

    private static void fails(JsonNode golden, JsonNode expected, Answers answers) {
        Fault fault = answers.fault("S", "sent");
        assertEquals(Fault.Kind.NO_OPERATING_POINT, fault.kind());
        Map<String, String> types = types(golden);
        Map<String, String> parents = new HashMap<>();
        golden.get("nodes")
                .forEach(node -> parents.put(
                        node.get("id").textValue(), node.path("parent").textValue()));
        String head = parents.get(fault.origin().row().substring("run ".length()));
        while (types.get(head).equals("junction")) {
            head = parents.get(head);
        }
        assertEquals(expected.get("infeasible_subtree_head").textValue(), head);
        JsonNode most = expected.get("analytic_max_load_watts");
        if (most != null) {
            near(most.doubleValue(), fault.possible(), "most possible");
            assertTrue(fault.asked() > fault.possible());
        }
        for (String id : parents.keySet()) {
            if (!id.equals("S")) {
                assertEquals(fault, answers.fault("run " + id, "amps"));
            }
        }
    }

    private static Map<String, String> types(JsonNode golden) {
        Map<String, String> types = new HashMap<>();
        golden.get("nodes")
                .forEach(node ->
                        types.put(node.get("id").textValue(), node.get("type").textValue()));
        return types;
    }

    private static Draft plan(JsonNode golden) {
        Draft draft = Draft.cold();
        for (JsonNode node : golden.get("nodes")) {
            String id = node.get("id").textValue();
            switch (node.get("type").textValue()) {
                case "source" -> draft.source(id, "type", "passive", "volts", in(node, "volts", "V"));
                case "load" -> draft.device(id, "draw", in(node, "power_watts", "W"), "volts_floor", "3 V");
                case "junction" ->
                    draft.edge(
                            id,
                            "type",
                            "passive",
                            "mode",
                            "direct",
                            "own_draw",
                            "0 W",
                            "through_drop",
                            "0 V",
                            "volts_floor",
                            "3 V");
                case "relay" -> relay(draft, id, node);
                default -> throw new IllegalStateException(node.toString());
            }
            if (node.has("parent")) {
                run(draft, id, node);
            }
        }
        return draft;
    }

    private static void relay(Draft draft, String id, JsonNode node) {
        String[] cells = {
            "type",
            "passive",
            "volts",
            in(node, "output_volts", "V"),
            "own_draw",
            in(node, "own_power_watts", "W"),
            "efficiency",
            node.get("efficiency").doubleValue() * 100 + " %",
            "volts_floor",
            "3 V"
        };
        draft.edge(id, cells);
    }

    private static String in(JsonNode node, String field, String unit) {
        return node.get(field).doubleValue() + " " + unit;
    }

    private static void run(Draft draft, String id, JsonNode node) {
        double celsius = node.get("ambient_celsius").doubleValue();
        String air = "air at " + celsius;
        if (draft.plan().find(air).isEmpty()) {
            draft.zone(air, "ambient", celsius + " degC");
        }
        String[] cells = {
            "basis",
            "measured",
            "measured_loop",
            ohms(node, celsius) + " ohm",
            "measured_at",
            celsius + " degC",
            "pairs",
            node.get("pairs").intValue() + "",
            "zone",
            air
        };
        draft.run("run " + id, node.get("parent").textValue(), id, cells);
    }

    /** Loop at the air's temperature by gauge (ASTM B258) and metal. */
    private static double ohms(JsonNode node, double celsius) {
        String metal = node.get("material").textValue();
        double resistivity = metal.equals("copper") ? 1.7241e-8 : metal.equals("aluminium") ? 2.8264e-8 : 2.7431e-8;
        double alpha = metal.equals("copper") ? 0.00393 : metal.equals("aluminium") ? 0.00403 : 0.00405;
        double diameter = 0.127e-3 * Math.pow(92, (36 - node.get("awg").doubleValue()) / 39);
        double perMetre = resistivity / (Math.PI * diameter * diameter / 4);
        double loop = 2
                * perMetre
                * node.get("length_metres").doubleValue()
                / node.get("pairs").doubleValue();
        return loop * (1 + alpha * (celsius - 20));
    }
}
