package farwatt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.report.Refusal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How a list was read, kept in the plan or in a file of its own. */
class KeptMappingTest {
    private static final KeptMapping ORCHARD =
            new KeptMapping("orchard", Map.of("Juice", "watts"), Map.of("unit:Span", "ft"));

    @TempDir
    Path folder;

    private static Plan with(Plan plan, KeptMapping kept) {
        return Edit.apply(plan, kept.in(plan)).plan();
    }

    @Test
    void thePlanKeepsOneOfEachNameAndItsFileToo() throws Exception {
        Plan plan = with(Plan.EMPTY, ORCHARD);
        KeptMapping landing = new KeptMapping("landing", Map.of("Naam", "name"), Map.of());
        plan = with(plan, landing);
        KeptMapping later = new KeptMapping("orchard", Map.of("Juice", "load"), Map.of());
        plan = with(plan, later);
        assertEquals(List.of(landing, later), KeptMapping.of(plan));
        assertEquals(later, KeptMapping.of(plan, "orchard").orElseThrow());
    }

    @Test
    void aFileOfItsOwnComesBackTheSame() throws Exception {
        Path file = folder.resolve("kept.json");
        ORCHARD.write(file);
        KeptMapping read = KeptMapping.read(file);
        assertEquals(ORCHARD.columns(), read.columns());
        assertEquals(ORCHARD.answers(), read.answers());
    }

    @Test
    void whatIsNoneIsRefusedInAFileAndPassedOverInAPlan() throws Exception {
        Path file = folder.resolve("other.json");
        for (String text : List.of("", "[1]", "{\"columns\": 3}", "null", "{\"columns\": {\"a\": {}}}")) {
            Files.writeString(file, text);
            Refusal refused = assertThrows(Refusal.class, () -> KeptMapping.read(file), text);
            assertEquals("file.no_mapping", refused.notice().code());
        }
        for (String part : List.of("3", "null", "{}", "[3]", "[null]", "[{\"name\": 4}]", "[{\"columns\": {}}]")) {
            assertEquals(List.of(), KeptMapping.of(Plan.EMPTY.withRest(Map.of("mappings", part))), part);
        }
    }
}
