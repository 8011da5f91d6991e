package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Sixty networks solved elsewhere: by a circuit simulator and in 40 digits. */
class GoldenTest {

    private static final List<String> FILES = List.of("single", "collapse", "tree", "relay", "thermal");
    private static final double RELATIVE = 1e-9;
    private static final double ABSOLUTE = 1e-9;

    /** A network of the files with the rows by their names. */
    private record Case(String id, JsonNode expected, Sketch sketch, Map<String, Sketch.Row> byName) {}

    @TestFactory
    List<DynamicTest> everyNetworkAgrees() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Case golden : cases()) {
            tests.add(DynamicTest.dynamicTest(golden.id, () -> agrees(golden, golden.sketch.solve())));
        }
        assertEquals(60, tests.size());
        return tests;
    }

    @Test
    void theOrderOfSiblingsDoesNotMatter() throws IOException {
        Random random = new Random(11);
        for (Case golden : cases()) {
            FlatState before = golden.sketch.solve();
            List<Integer> was =
                    golden.sketch.rows().stream().map(row -> row.index).toList();
            List<Sketch.Row> rows = golden.sketch.rows();
            golden.sketch.shuffle(random);
            FlatState after = golden.sketch.solve();
            for (int k = 0; k < rows.size(); k++) {
                int now = rows.get(k).index;
                int then = was.get(k);
                assertEquals(before.status[then], after.status[now], golden.id);
                near(before.amps[then], after.amps[now], 1e-12, golden.id);
                near(before.voltsFar[then], after.voltsFar[now], 1e-12, golden.id);
                near(before.nodeSent[then], after.nodeSent[now], 1e-12, golden.id);
            }
        }
    }

    @Test
    void theSameInputGivesTheSameBitsWhateverWasSolvedBetween() throws IOException {
        Solver solver = new Solver();
        List<FlatState> first = new ArrayList<>();
        for (Case golden : cases()) {
            FlatNetwork network = golden.sketch.lay();
            FlatState state = new FlatState(network.count);
            solver.solve(network, state);
            first.add(state);
        }
        List<Case> cases = cases();
        FlatNetwork shared = new FlatNetwork(100);
        FlatState again = new FlatState(100);
        for (int k = cases.size() - 1; k >= 0; k--) {
            cases.get(k).sketch.lay(shared);
            solver.solve(shared, again);
            States.assertSameBits(first.get(k), again, shared.count, cases.get(k).id);
        }
    }

    private static void agrees(Case golden, FlatState state) {
        JsonNode expected = golden.expected;
        int root = golden.byName.get("S").index;
        assertEquals(expected.get("feasible").booleanValue(), state.status[root] == FlatState.OK);
        if (state.status[root] != FlatState.OK) {
            fails(golden, state, root);
            return;
        }
        assertEquals(-1, state.culprit[root]);
        near(expected.get("source_watts").doubleValue(), state.nodeSent[root], RELATIVE, "source watts");
        compare(golden, "node_volts", state.voltsFar);
        compare(golden, "run_amps", state.amps);
        compare(golden, "run_ohms", state.ohms);
        compare(golden, "run_loss_watts", state.loss);
        compare(golden, "conductor_celsius", state.temp);
        compare(golden, "relay_input_watts", state.nodeReceived);
        compare(golden, "relay_output_watts", state.nodeSent);
        double lost = 0;
        for (Sketch.Row row : golden.byName.values()) {
            lost += row.parent == null ? 0 : state.loss[row.index];
        }
        near(expected.get("total_run_loss_watts").doubleValue(), lost, RELATIVE, "all losses");
    }

    private static void fails(Case golden, FlatState state, int root) {
        Sketch.Row culprit = golden.byName.values().stream()
                .filter(row -> row.index == state.culprit[root])
                .findFirst()
                .orElseThrow();
        Sketch.Row head = culprit.parent;
        while (head.kind == FlatNetwork.DIRECT) {
            head = head.parent;
        }
        String said = golden.expected.get("infeasible_subtree_head").textValue();
        assertEquals(golden.byName.get(said).index, head.index);
        assertArrayEquals(new double[] {Double.NaN, Double.NaN}, new double[] {state.amps[1], state.nodeSent[root]});
        JsonNode most = golden.expected.get("analytic_max_load_watts");
        if (most != null) {
            assertEquals(FlatState.NO_OPERATING_POINT, state.status[root]);
            near(most.doubleValue(), state.possible[root], RELATIVE, "most possible");
            assertTrue(state.asked[root] > state.possible[root]);
        }
    }

    private static void compare(Case golden, String field, double[] actual) {
        JsonNode values = golden.expected.get(field);
        if (values == null) {
            return;
        }
        assertNotEquals(0, values.size());
        values.properties().forEach(entry -> {
            Sketch.Row row = golden.byName.get(entry.getKey());
            near(entry.getValue().doubleValue(), actual[row.index], RELATIVE, field + " of " + entry.getKey());
        });
    }

    private static void near(double expected, double actual, double relative, String what) {
        if (Double.isNaN(expected)) {
            assertEquals(expected, actual, what);
            return;
        }
        assertEquals(expected, actual, Math.max(ABSOLUTE * relative / RELATIVE, relative * Math.abs(expected)), what);
    }

    private static List<Case> cases() throws IOException {
        List<Case> cases = new ArrayList<>();
        for (String file : FILES) {
            try (InputStream stream = GoldenTest.class.getResourceAsStream("/golden/" + file + ".json")) {
                for (JsonNode node : new ObjectMapper().readTree(stream).get("cases")) {
                    cases.add(read(node));
                }
            }
        }
        assertFalse(cases.isEmpty());
        return cases;
    }

    private static Case read(JsonNode json) {
        Sketch sketch = new Sketch();
        Map<String, Sketch.Row> byName = new HashMap<>();
        for (JsonNode node : json.get("nodes")) {
            Sketch.Row parent =
                    node.has("parent") ? byName.get(node.get("parent").textValue()) : null;
            Sketch.Row row = switch (node.get("type").textValue()) {
                case "source" -> sketch.source(number(node, "volts"));
                case "relay" ->
                    sketch.regulated(
                            parent,
                            number(node, "output_volts"),
                            number(node, "own_power_watts"),
                            number(node, "efficiency"));
                case "junction" -> sketch.direct(parent, 0, 0);
                case "load" -> sketch.load(parent, number(node, "power_watts"));
                default -> throw new IllegalStateException(node.toString());
            };
            if (parent != null) {
                wire(row, node);
            }
            byName.put(node.get("id").textValue(), row);
        }
        return new Case(json.get("id").textValue(), json.get("expected"), sketch, byName);
    }

    private static void wire(Sketch.Row row, JsonNode node) {
        String material = node.get("material").textValue();
        double resistivity = switch (material) {
            case "copper" -> 1.7241e-8;
            case "aluminium" -> 2.8264e-8;
            default -> 2.7431e-8;
        };
        row.alpha = switch (material) {
            case "copper" -> 0.00393;
            case "aluminium" -> 0.00403;
            default -> 0.00405;
        };
        double metres = number(node, "length_metres");
        double perMetre = Conductor.ohmsPerMetre(number(node, "awg"), resistivity, 1);
        row.cable(2 * perMetre * metres / number(node, "pairs"))
                .heat(number(node, "heating_celsius_metre_per_watt"), metres)
                .around(number(node, "ambient_celsius"));
    }

    private static double number(JsonNode node, String field) {
        return node.get(field).doubleValue();
    }
}
