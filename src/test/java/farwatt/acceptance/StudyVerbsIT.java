package farwatt.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a study tells is what the plan itself answers once the cell is typed. */
class StudyVerbsIT {
    private static final Path FERRY = Program.scenario("ferry-landing.farwatt.json");
    private static final String RESERVE = "gate.reserve_share";
    private static final String KEPT = "gate.reserve_share >= reserve_target";

    @TempDir
    Path folder;

    private static JsonNode json(Object... call) throws Exception {
        List<Object> all = new ArrayList<>(List.of(call));
        all.add("--json");
        Program.Run run = Program.run(all.toArray());
        assertEquals(0, run.exit(), run::err);
        assertTrue(run.isClean(), run::toString);
        return new ObjectMapper().readTree(run.out());
    }

    /** What the plan answers with another trunk. */
    private List<JsonNode> typed(String length, String gauge, String... expressions) throws Exception {
        String text = Files.readString(FERRY);
        String row = text.lines()
                .filter(line -> line.contains("\"id\": \"trunk\""))
                .findFirst()
                .orElseThrow();
        String other = row.replaceAll("\"length\": \"[^\"]*\"", "\"length\": \"" + length + "\"")
                .replaceAll("\"gauge\": \"[^\"]*\"", "\"gauge\": \"" + gauge + "\"");
        Path plan = folder.resolve("typed.farwatt.json");
        Files.writeString(plan, text.replace(row, other));
        List<Object> call = new ArrayList<>(List.of("ask", plan));
        call.addAll(List.of(expressions));
        List<JsonNode> values = new ArrayList<>();
        json(call.toArray()).get("answers").forEach(answer -> values.add(answer.get("value")));
        return values;
    }

    @Test
    void aPointOfASweepIsThePlanWithTheseCells() throws Exception {
        Path csv = folder.resolve("points.csv");
        Object[] sweep = {
            "sweep",
            FERRY,
            "--over",
            "trunk.length = 60 m .. 120 m by 30 m",
            "--over",
            "trunk.gauge = 22 AWG, 26 AWG",
            "--read",
            RESERVE,
            "--read",
            "plan.lost"
        };
        JsonNode points = json(sweep).get("points");
        assertEquals(6, points.size());
        List<JsonNode> answers = typed("120 m", "26 AWG", RESERVE, "plan.lost");
        assertEquals(120, points.get(5).get(0).asDouble());
        assertEquals(
                answers.get(0).asDouble(),
                points.get(5).get(2).asDouble(),
                1e-12 * answers.get(0).asDouble());
        assertEquals(
                answers.get(1).asDouble(),
                points.get(5).get(3).asDouble(),
                1e-12 * answers.get(1).asDouble());
        List<Object> written = new ArrayList<>(List.of(sweep));
        written.addAll(List.of("-o", csv));
        assertEquals(0, Program.run(written.toArray()).exit());
        List<String> lines = Files.readAllLines(csv);
        assertEquals(7, lines.size());
        assertTrue(lines.get(6).startsWith("120,26,"), lines.get(6));
    }

    @Test
    void aLimitHoldsAndALittleMoreDoesNot() throws Exception {
        JsonNode limit = json("limit", FERRY, "--vary", "trunk.length = 1 m .. 300 m", "--holds", KEPT);
        double farthest = limit.get("summary").get("farthest").asDouble();
        assertTrue(farthest > 95 && farthest < 300, () -> "farthest " + farthest);
        assertTrue(typed(farthest + " m", "22 AWG", KEPT).get(0).asBoolean());
        assertFalse(typed((farthest + 300e-6) + " m", "22 AWG", KEPT).get(0).asBoolean());
    }

    @Test
    void growthSaysHowManyFittedWithBothSidesOfTheCondition() throws Exception {
        JsonNode grown = json("grow", FERRY, "--copy", "cam 1", "--until", "gate.reserve_share < reserve_target");
        int fitted = grown.get("summary").get("fitted").asInt();
        assertTrue(grown.get("summary").get("reached").asBoolean());
        assertEquals(fitted + 2, grown.get("points").size());
        assertEquals(RESERVE, grown.get("columns").get(3).get("name").asText());
        for (JsonNode point : grown.get("points")) {
            boolean less = point.get(3).asDouble() < point.get(4).asDouble();
            assertEquals(less, point.get(1).asBoolean());
            assertEquals(point.get(0).asInt() > fitted, less);
        }
    }

    @Test
    void aSpreadIsTheSameForAnyCountOfThreadsAndItsShareIsThatOfItsPoints() throws Exception {
        Object[] spread = {
            "spread",
            FERRY,
            "--vary",
            "trunk.length = 95 m ± 5 %",
            "--runs",
            2000,
            "--seed",
            7,
            "--read",
            "gate.reserve_share >= 28 %",
            "--threads",
            1
        };
        JsonNode one = json(spread);
        spread[spread.length - 1] = 2;
        assertEquals(one, json(spread));
        int failing = 0;
        for (JsonNode point : one.get("points")) {
            assertTrue(Math.abs(point.get(0).asDouble() - 95) <= 95 * 0.05);
            failing += point.get(1).asBoolean() ? 0 : 1;
        }
        assertTrue(failing > 200 && failing < 1800, "failing " + failing);
        JsonNode summary = one.get("summary").findValue("failing");
        assertEquals(failing / 2000.0, summary.asDouble(), 1e-12);
    }

    @Test
    void aSensitivityIsOrderedByEffectAndEachStepIsThePlanWithIt() throws Exception {
        JsonNode effects = json("sensitivity", FERRY, "--read", RESERVE, "--step", "10 %");
        double now = effects.get("summary").get("now").asDouble();
        double before = Double.POSITIVE_INFINITY;
        boolean seen = false;
        for (JsonNode point : effects.get("points")) {
            double effect = Math.max(
                    Math.abs(point.get(5).asDouble() - now),
                    Math.abs(point.get(6).asDouble() - now));
            assertTrue(effect <= before);
            before = effect;
            if (point.get(0).asText().equals("trunk.length")) {
                seen = true;
                double longer = typed(point.get(4).asText() + " m", "22 AWG", RESERVE)
                        .get(0)
                        .asDouble();
                assertEquals(longer, point.get(6).asDouble(), 1e-12);
            }
        }
        assertTrue(seen);
    }

    @Test
    void roomIsNeverMoreThanTheFreePorts() throws Exception {
        JsonNode room = json("room", Program.scenario("orchard-packing-shed.farwatt.json"));
        int some = 0;
        for (JsonNode fit : room.get("points")) {
            assertTrue(fit.get(3).asInt() <= fit.get(4).asInt());
            assertFalse(fit.get(5).asText().isBlank());
            some += fit.get(3).asInt();
        }
        assertTrue(some > 0);
    }

    @Test
    void aLimitOfTimeEndsALongStudyWithItsOwnExitCode() throws Exception {
        Program.Run run = Program.run(
                "sweep",
                FERRY,
                "--over",
                "trunk.length = 1 m .. 100 m by 0.001 m",
                "--over",
                "quay.ambient = 0 degC .. 40 degC by 0.01 K",
                "--read",
                RESERVE,
                "-o",
                folder.resolve("long.csv"),
                "--seconds",
                1);
        assertEquals(3, run.exit(), run::toString);
        assertTrue(run.isClean(), run::toString);
        assertFalse(Files.exists(folder.resolve("long.csv")));
    }
}
