package farwatt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import farwatt.catalogue.TokenWording;
import farwatt.catalogue.Wording;
import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.RandomPlans;
import farwatt.plan.Row;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class PlanWriterTest {
    private static final int SEEDS = Boolean.getBoolean("farwatt.soak") ? 5000 : 150;

    @Test
    void theExampleIsWrittenAsItStands() throws Exception {
        String text = new String(Example.bytes(), StandardCharsets.UTF_8);
        assertEquals(text, PlanWriter.text(Example.opened().plan(), Wording.PLAIN));
    }

    @Test
    void anEmptyPlanIsTheVersionAlone() {
        assertEquals("{\n  \"farwatt\": 1\n}\n", PlanWriter.text(Plan.EMPTY, Wording.PLAIN));
    }

    /** Parts of a file by hand, and in canonical form. */
    private static final List<String[]> TIDIED = List.of(
            part("\"runs\": []", ""),
            part("\"plan\": {}", ""),
            part(
                    "\"runs\": [{\"length\": \"295\", \"id\": \"a\"}]",
                    "\"runs\": [{\"id\": \"a\", \"length\": \"295 m\"}]"),
            part(
                    "\"runs\": [{\"id\":\"a\",\"zz\":1.50,\"length\":\" 60m \",\"to\":\"b\",\"from\":\"\",\"aa\":null}]",
                    "\"runs\": [{\"id\": \"a\", \"to\": \"b\", \"length\": \"60 m\", \"zz\": 1.50, \"aa\": null}]"),
            part("\"runs\": [{\"id\": \"a\", \"length\": 295}]", "\"runs\": [{\"id\": \"a\", \"length\": 295}]"),
            part(
                    "\"runs\": [{\"id\": \"a\", \"length\": \"-5 m\"}]",
                    "\"runs\": [{\"id\": \"a\", \"length\": \"-5 m\"}]"),
            part(
                    "\"runs\": [{\"id\": \"a\", \"length\": \"84,2 m\"}]",
                    "\"runs\": [{\"id\": \"a\", \"length\": \"84,2 m\"}]"),
            part(
                    "\"runs\": [{\"id\": \"a\", \"length\": \"b  *  2\"}]",
                    "\"runs\": [{\"id\": \"a\", \"length\": \"b * 2\"}]"),
            part(
                    "\"runs\": [{\"id\": \"a\", \"note\": \"  b  *  2\"}]",
                    "\"runs\": [{\"id\": \"a\", \"note\": \"  b  *  2\"}]"),
            part("\"runs\": [{\"id\": \"a\", \"note\": \" \"}]", "\"runs\": [{\"id\": \"a\", \"note\": \" \"}]"),
            part("\"devices\": [{\"id\": \"a\", \"class\": \"3\"}]", "\"devices\": [{\"id\": \"a\", \"class\": 3}]"),
            part("\"runs\": [{\"id\": \"a\", \"category\": \"6\"}]", "\"runs\": [{\"id\": \"a\", \"category\": 6}]"),
            part(
                    "\"runs\": [{\"id\": \"a\", \"category\": \"6A\"}]",
                    "\"runs\": [{\"id\": \"a\", \"category\": \"6A\"}]"),
            part("\"runs\": [{\"id\": \"a\", \"joints\": \"4\"}]", "\"runs\": [{\"id\": \"a\", \"joints\": 4}]"),
            part("\"runs\": [{\"id\": \"a\", \"joints\": \"04\"}]", "\"runs\": [{\"id\": \"a\", \"joints\": \"04\"}]"),
            part(
                    "\"sources\": [{\"id\": \"a\", \"efficiency_ac\": 0.9}]",
                    "\"sources\": [{\"id\": \"a\", \"efficiency_ac\": \"0.9\"}]"),
            part(
                    "\"runs\": [{\"id\": \"a\", \"screened\": \"yes\"}]",
                    "\"runs\": [{\"id\": \"a\", \"screened\": true}]"),
            part("\"runs\": [{\"id\": \"a\", \"to\": 5}]", "\"runs\": [{\"id\": \"a\", \"to\": \"5\"}]"),
            part(
                    "\"zones\": [{\"id\": \"a\", \"ambient\": \"20 °C\"}]",
                    "\"zones\": [{\"id\": \"a\", \"ambient\": \"20 degC\"}]"),
            part(
                    "\"values\": [{\"is\": false, \"name\": \"dark\"}]",
                    "\"values\": [{\"name\": \"dark\", \"is\": \"no\"}]"),
            part("\"plan\": {\"slack\": \"5\", \"name\": \"a\"}", "\"plan\": {\"name\": \"a\", \"slack\": \"5 %\"}"),
            part(
                    "\"columns\": [{\"name\": \"b\", \"unit\": \"°C\", \"table\": \"runs\"}, {\"name\": \"a\", \"table\": \"runs\", \"kind\":"
                            + " \"text\"}], \"runs\": [{\"id\": \"r\", \"x\": 1, \"a\": 2, \"b\": \"5\"}]",
                    "\"runs\": [{\"id\": \"r\", \"b\": \"5 degC\", \"a\": \"2\", \"x\": 1}],\n  \"columns\": [\n    {\"table\": \"runs\","
                            + " \"name\": \"b\", \"unit\": \"degC\"},\n    {\"table\": \"runs\", \"name\": \"a\", \"kind\": \"text\"}\n  ]"),
            part(
                    "\"scenarios\": [{\"changes\": [{\"to\": \"30\", \"set\": \"a.length\"}, {\"set\": \"slack\", \"to\": \"5\"}, {\"set\":"
                            + " \"dark\", \"to\": true}, {\"set\": \"joint_ohms\", \"to\": \"1\"}, {\"set\": \"b.class\", \"to\": \"3\"},"
                            + " {\"set\": \"?\", \"to\": \"3\"}], \"id\": \"s\"}, {\"id\": \"t\", \"changes\": [{\"add\": \"devices\","
                            + " \"row\": {\"class\": \"2\", \"id\": \"b\"}, \"why\": [1,2]}]}], \"runs\": [{\"id\": \"a\"}]",
                    "\"runs\": [{\"id\": \"a\"}],\n  \"scenarios\": [\n    {\"id\": \"s\", \"changes\": [{\"set\": \"a.length\", \"to\":"
                            + " \"30 m\"}, {\"set\": \"slack\", \"to\": \"5 %\"}, {\"set\": \"dark\", \"to\": \"yes\"}, {\"set\":"
                            + " \"joint_ohms\", \"to\": \"1 ohm\"}, {\"set\": \"b.class\", \"to\": 3}, {\"set\": \"?\", \"to\": \"3\"}]},\n"
                            + "    {\"id\": \"t\", \"changes\": [{\"add\": \"devices\", \"row\": {\"id\": \"b\", \"class\": 2}, \"why\": [1,"
                            + " 2]}]}\n  ]"),
            // what cannot be read stays
            part("\"runs\": {\"a\":1}", "\"runs\": {\"a\": 1}"),
            part("\"runs\": 5, \"runs\": [{\"id\": \"a\"}]", "\"runs\": [{\"id\": \"a\"}],\n  \"runs (2)\": 5"),
            part("\"plan\": 5, \"plan\": {\"name\": \"a\"}", "\"plan\": {\"name\": \"a\"},\n  \"plan (2)\": 5"),
            part(
                    "\"plan\": {\"name\": \"a\"}, \"plan\": {\"name\": \"b\"}",
                    "\"plan\": {\"name\": \"a\", \"name (2)\": \"b\"}"),
            part("\"plan\": [5]", "\"plan\": [5]"),
            part("\"runs\": [7, {\"id\": \"a\"}]", "\"runs\": [\n    {\"id\": \"a\"},\n    7\n  ]"),
            part("\"scenarios\": [null]", "\"scenarios\": [null]"),
            part("\"scenarios\": \"x\"", "\"scenarios\": \"x\""),
            part("\"x\": [1,\n2], \"x\": {\"b\":{}}", "\"x\": [\n    1,\n    2\n  ],\n  \"x (2)\": {\"b\": {}}"),
            part("\"farwatt\": 2", "\"farwatt (2)\": 2"),
            part("\"studies\": [ ], \"mappings\": [1e400]", "\"studies\": [],\n  \"mappings\": [1e400]"),
            part("\"x\": \"\\u0000\\t\\ud800\\u00e9\\/\"", "\"x\": \"\\u0000\\t\\ud800é/\""));

    private static String[] part(String byHand, String tidy) {
        return new String[] {byHand, tidy};
    }

    @TestFactory
    Stream<DynamicTest> filesByHandAreTidied() {
        return TIDIED.stream()
                .map(row -> dynamicTest(row[0], () -> {
                    String comma = row[1].isEmpty() ? "" : ",\n  ";
                    String tidy = "{\n  \"farwatt\": 1" + comma + row[1] + "\n}\n";
                    assertEquals(tidy, tidied("{\"farwatt\": 1, " + row[0] + "}"));
                    assertEquals(tidy, tidied(tidy), "twice is once");
                }));
    }

    private static String tidied(String text) throws Refusal {
        Opened opened = PlanReader.read(text.getBytes(StandardCharsets.UTF_8), "x");
        return PlanWriter.text(opened.plan(), new TokenWording());
    }

    @Test
    void whatWasWrittenIsWrittenTheSameAgain() throws Refusal {
        for (long seed = 1; seed <= SEEDS; seed++) {
            Plan plan = new RandomPlans(seed).plan();
            String once = PlanWriter.text(plan, new TokenWording());
            assertEquals(once, tidied(once), "seed " + seed);
        }
    }

    @Test
    void nothingThatStoodInAFileVanishes() throws Refusal {
        for (long seed = 1; seed <= SEEDS; seed++) {
            Mischief mischief = new Mischief(seed);
            String text = mischief.file();
            String tidy = tidied(text);
            for (String mark : mischief.marks()) {
                assertTrue(tidy.contains(mark), "seed " + seed + ": " + mark + " of " + text + " is not in " + tidy);
            }
            assertEquals(tidy, tidied(tidy), "seed " + seed);
        }
    }

    @Test
    void cellsThatNoFileCanHoldAreWrittenAsText() throws Refusal {
        Plan plan = Plan.EMPTY.and(
                Table.RUNS,
                Row.of("a")
                        .with("x", Cell.number("1,5"))
                        .with("y", Cell.number("007"))
                        .with("z", Cell.number("+1")));
        assertEquals(
                "{\n  \"farwatt\": 1,\n  \"runs\": [{\"id\": \"a\", \"x\": \"1,5\", \"y\": \"007\", \"z\": \"+1\"}]\n}\n",
                PlanWriter.text(plan, Wording.PLAIN));
    }

    @Test
    void keptPartsThatAreNoJsonAreABugOfTheirMaker() {
        Plan plan = Plan.EMPTY.withRest(Map.of("studies", "[1"));
        assertThrows(IllegalArgumentException.class, () -> PlanWriter.text(plan, Wording.PLAIN));
        Plan two = Plan.EMPTY.withRest(Map.of("studies", "1 2"));
        assertThrows(IllegalArgumentException.class, () -> PlanWriter.text(two, Wording.PLAIN));
        Plan none = Plan.EMPTY.withRest(Map.of("studies", ""));
        assertThrows(IllegalArgumentException.class, () -> PlanWriter.text(none, Wording.PLAIN));
        Plan step = Plan.EMPTY.withScenarios(List.of(new Scenario("a", "", List.of(new Step.Unread("{")))));
        assertThrows(IllegalArgumentException.class, () -> PlanWriter.text(step, Wording.PLAIN));
    }

    /** Files with everything in the wrong place; every value is a mark of its own. */
    private static final class Mischief {
        private final Random random;
        private final List<String> marks = new ArrayList<>();

        Mischief(long seed) {
            random = new Random(seed);
        }

        String file() {
            List<String> parts = new ArrayList<>(List.of("\"farwatt\": 1"));
            List<String> keys = List.of(
                    "plan",
                    "values",
                    "runs",
                    "runs",
                    "devices",
                    "scenarios",
                    "studies",
                    "boats",
                    "runs (2)",
                    "columns");
            for (int i = random.nextInt(8); i >= 0; i--) {
                String key = keys.get(random.nextInt(keys.size()));
                parts.add("\"" + key + "\": " + (random.nextInt(4) == 0 ? value(3) : list(key)));
            }
            return "{" + String.join(", ", parts) + "}";
        }

        List<String> marks() {
            return marks;
        }

        private String list(String key) {
            if (key.equals("plan")) {
                return object(false);
            }
            List<String> items = new ArrayList<>();
            for (int i = random.nextInt(4); i > 0; i--) {
                items.add(random.nextInt(5) == 0 ? value(2) : object(key.equals("scenarios")));
            }
            return "[" + String.join(", ", items) + "]";
        }

        private String object(boolean scenario) {
            List<String> keys = scenario
                    ? List.of("id", "on", "changes", "why", "changes (2)")
                    : List.of("id", "name", "id", "length", "table", "is", "note", "odd", "id (2)", "length (2)");
            List<String> fields = new ArrayList<>();
            for (int i = random.nextInt(6); i > 0; i--) {
                String key = keys.get(random.nextInt(keys.size()));
                boolean steps = key.equals("changes") && random.nextBoolean();
                fields.add("\"" + key + "\": " + (steps ? steps() : value(2)));
            }
            return "{" + String.join(", ", fields) + "}";
        }

        private String steps() {
            List<String> steps = new ArrayList<>();
            List<String> keys = List.of("set", "to", "add", "row", "drop", "why");
            for (int i = random.nextInt(4); i > 0; i--) {
                List<String> fields = new ArrayList<>();
                for (int j = random.nextInt(4); j > 0; j--) {
                    String key = keys.get(random.nextInt(keys.size()));
                    fields.add("\"" + key + "\": " + (key.equals("row") ? object(false) : value(1)));
                }
                steps.add("{" + String.join(", ", fields) + "}");
            }
            return "[" + String.join(", ", steps) + "]";
        }

        private String value(int depth) {
            String mark = "mark" + marks.size() + "x";
            return switch (random.nextInt(depth > 0 ? 6 : 4)) {
                case 0, 1 -> {
                    marks.add("\"" + mark + "\"");
                    yield "\"" + mark + "\"";
                }
                case 2 -> {
                    String number = (100_000 + marks.size()) + ".250";
                    marks.add(number);
                    yield number;
                }
                case 3 -> random.nextBoolean() ? "null" : "true";
                case 4 -> "[" + value(depth - 1) + ", " + value(depth - 1) + "]";
                default -> "{\"" + key() + "\": " + value(depth - 1) + "}";
            };
        }

        private String key() {
            String key = "key" + marks.size() + "x";
            marks.add("\"" + key + "\"");
            return key;
        }
    }
}
