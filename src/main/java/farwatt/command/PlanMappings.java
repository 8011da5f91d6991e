package farwatt.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import farwatt.intake.Mapping;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Mappings that a plan keeps for its customer's next list, each under a name. */
final class PlanMappings {
    private static final String PART = "mappings";
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final TypeReference<List<Kept>> FORM = new TypeReference<>() {};

    /** One of them as the plan file has it. */
    record Kept(String name, Map<String, String> columns, Map<String, String> answers) {}

    private PlanMappings() {}

    static Optional<Mapping> of(Plan plan, String name) throws Refusal {
        return all(plan).stream()
                .filter(kept -> kept.name().equals(name))
                .findFirst()
                .map(kept -> new Mapping(kept.columns(), kept.answers()));
    }

    /** The change that keeps a mapping under a name, in place of the one before. */
    static Change keep(Plan plan, String name, Mapping mapping) throws Refusal {
        List<Kept> kept = new ArrayList<>(all(plan));
        kept.removeIf(one -> one.name().equals(name));
        kept.add(new Kept(name, mapping.columns(), mapping.answers()));
        try {
            return new Change.SetRest(PART, Optional.of(JSON.writeValueAsString(kept)));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("texts can always be written", e);
        }
    }

    private static List<Kept> all(Plan plan) throws Refusal {
        try {
            return JSON.readValue(plan.rest().getOrDefault(PART, "[]"), FORM);
        } catch (JsonProcessingException e) {
            throw Refusal.of(CommandCode.BAD_MAPPING, PART);
        }
    }
}
