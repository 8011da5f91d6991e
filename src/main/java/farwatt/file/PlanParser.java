package farwatt.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Refusal;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Goes through a whole file once, part by part. */
final class PlanParser {
    /** Parts that other rooms keep in a plan file and that are not read here. */
    private static final Set<String> KNOWN_PARTS = Set.of("studies", "mappings");

    private final JsonParser parser;
    private final String file;
    private final PlanParts parts = new PlanParts();
    private final RowParser rows;
    private final ScenarioParser scenarios;
    private final Set<String> seen = new HashSet<>();

    PlanParser(JsonParser parser, String file) {
        this.parser = parser;
        this.file = file;
        this.rows = new RowParser(parser, parts);
        this.scenarios = new ScenarioParser(parser, parts);
    }

    /**
     * Reads the value at which the parser stands.
     *
     * @return empty if it is JSON of another kind
     * @throws Refusal if it is a plan without a version that can be read
     */
    Optional<PlanParts> read() throws IOException, Refusal {
        if (parser.currentToken() != JsonToken.START_OBJECT) {
            parser.skipChildren();
            return Optional.empty();
        }
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            parser.nextToken();
            part(key, seen.add(key));
        }
        if (seen.contains(Kept.VERSION)) {
            return Optional.of(parts);
        }
        if (seen.contains("runs") || seen.contains("sources") || seen.contains("devices")) {
            throw Refusal.of(FileCode.NO_VERSION, file, Plan.VERSION);
        }
        return Optional.empty();
    }

    private void part(String key, boolean first) throws IOException, Refusal {
        if (!first) {
            parts.say(Level.WARN, FileCode.PART_TWICE, key, -1, "", key);
        }
        Optional<Table> table = Table.of(key);
        if (key.equals(Kept.VERSION) && first) {
            version();
        } else if (table.isPresent() && table.get() == Table.PLAN) {
            settings();
        } else if (table.isPresent() && parser.currentToken() == JsonToken.START_ARRAY) {
            rows.table(table.get());
        } else if (key.equals(Kept.SCENARIOS) && parser.currentToken() == JsonToken.START_ARRAY) {
            scenarios.list();
        } else {
            keep(key, table.isPresent() || key.equals(Kept.SCENARIOS));
        }
    }

    private void keep(String key, boolean shouldBeList) throws IOException {
        if (shouldBeList) {
            parts.say(Level.FAIL, FileCode.TABLE_NO_LIST, key, -1, "", key);
        } else if (!KNOWN_PARTS.contains(key) && !key.equals(Kept.VERSION)) {
            parts.say(Level.NOTE, FileCode.UNKNOWN_PART, "", -1, key, key);
        }
        parts.keep(key, Json.copy(parser));
    }

    private void settings() throws IOException {
        if (parser.currentToken() == JsonToken.START_OBJECT) {
            rows.settings();
        } else {
            parts.say(Level.FAIL, FileCode.PLAN_NO_OBJECT, Table.PLAN.key(), -1, "");
            parts.keep(Table.PLAN.key(), Json.copy(parser));
        }
    }

    private void version() throws IOException, Refusal {
        String typed = Json.copy(parser);
        if (parser.currentToken() != JsonToken.VALUE_NUMBER_INT) {
            throw Refusal.of(FileCode.ODD_VERSION, file, typed);
        }
        BigDecimal number = new BigDecimal(typed);
        if (number.signum() <= 0) {
            throw Refusal.of(FileCode.ODD_VERSION, file, typed);
        }
        parts.version(number.min(BigDecimal.valueOf(Integer.MAX_VALUE)).intValue());
    }
}
