package farwatt.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.report.Level;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads scenarios and their steps. */
final class ScenarioParser {
    private static final Set<String> OWN = Set.of("id", "on", "changes");

    private final JsonParser parser;
    private final PlanParts parts;

    ScenarioParser(JsonParser parser, PlanParts parts) {
        this.parser = parser;
        this.parts = parts;
    }

    /** The list at whose start the parser stands. */
    void list() throws IOException {
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (parser.currentToken() == JsonToken.START_OBJECT) {
                scenario();
            } else {
                String json = Json.copy(parser);
                parts.setAside(Kept.SCENARIOS, json);
                parts.say(Level.FAIL, FileCode.SCENARIO_NO_OBJECT, Kept.SCENARIOS, -1, "", json);
            }
        }
    }

    private void scenario() throws IOException {
        int at = parts.scenarioCount();
        String id = "";
        String on = "";
        List<Step> steps = new ArrayList<>();
        Map<String, String> rest = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            JsonToken token = parser.nextToken();
            boolean isText = token == JsonToken.VALUE_STRING || token.isNumeric();
            if (key.equals("id") && id.isEmpty() && isText) {
                id = parser.getText();
            } else if (key.equals("on") && on.isEmpty() && isText) {
                on = parser.getText();
            } else if (key.equals("changes") && steps.isEmpty() && token == JsonToken.START_ARRAY) {
                steps(steps, at);
            } else {
                keep(key, rest, at);
            }
        }
        parts.add(new Scenario(named(id, at), on, steps, Collections.unmodifiableMap(rest)));
    }

    private void keep(String key, Map<String, String> rest, int at) throws IOException {
        String name = Kept.name(key, taken -> OWN.contains(taken) || rest.containsKey(taken));
        String json = Json.copy(parser);
        rest.put(name, json);
        if (OWN.contains(key)) {
            parts.say(Level.FAIL, FileCode.NOT_READ, Kept.SCENARIOS, at, "", key, json, name);
        } else if (!name.equals(key)) {
            parts.say(Level.FAIL, FileCode.KEY_TWICE, Kept.SCENARIOS, at, key, key, name);
        } else {
            parts.say(Level.NOTE, FileCode.UNKNOWN_KEY, Kept.SCENARIOS, at, key, key, Kept.SCENARIOS);
        }
    }

    private String named(String id, int at) {
        if (id.isEmpty()) {
            String name = Kept.name("unnamed", parts::hasScenario);
            parts.say(Level.WARN, FileCode.NO_ID, Kept.SCENARIOS, at, "", "id", name);
            return name;
        }
        if (parts.hasScenario(id)) {
            parts.say(Level.FAIL, FileCode.SCENARIO_TWICE, Kept.SCENARIOS, at, "", id);
        }
        return id;
    }

    private void steps(List<Step> steps, int at) throws IOException {
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            String json = Json.copy(parser);
            Step step = new StepParser(json).read();
            steps.add(step);
            if (step instanceof Step.Unread) {
                parts.say(Level.FAIL, FileCode.STEP_UNREAD, Kept.SCENARIOS, at, "", steps.size());
            }
        }
    }
}
