package farwatt.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScriptIT {
    @TempDir
    Path folder;

    private Path plan;

    @BeforeEach
    void copyThePlan() throws Exception {
        plan = Files.copy(Program.scenario("ferry-landing.farwatt.json"), folder.resolve("plan.farwatt.json"));
    }

    private Path script(String text) throws Exception {
        return Files.writeString(folder.resolve("try.js"), text);
    }

    @Test
    void aScriptPrintsShowsAndSavesAndThePlanStaysAsItIs() throws Exception {
        String before = Files.readString(plan);
        Path script = script("""
                plan.set('trunk.gauge', '24 AWG');
                print(args, plan.text('trunk.gauge'), plan.text('quay.ambient'));
                const lost = table(plan.rows('runs').map(({id, loss}) => ({id, loss})), {loss: 'W'});
                lost.show();
                lost.save('lost.csv');
                lost.picture('loss', 'lost.svg');
                lost.picture('loss');
                keep('thin trunk');
                """);
        Program.Run run = Program.run(
                "script", plan, script, "one", "two", "--out", folder.resolve("results"), "--scenario", "winter night");
        assertTrue(run.isClean(), run::toString);
        assertEquals(0, run.exit(), run::toString);
        assertTrue(run.out().startsWith("[\"one\", \"two\"] 24 AWG -10 degC\nid "), run.out());
        assertTrue(run.out().contains("\ntrunk "), run.out());
        assertTrue(
                Files.readString(folder.resolve("results").resolve("lost.csv")).contains("\r\ntrunk,"));
        assertTrue(
                Files.readString(folder.resolve("results").resolve("lost.svg")).contains("loss over id"));
        assertTrue(Files.size(folder.resolve("results").resolve("loss.png")) > 1000);
        assertTrue(run.err().contains("offers 1 scenarios and 0 changes. Call with --into PLAN"), run.err());
        assertEquals(before, Files.readString(plan));
    }

    @Test
    void whatAScriptKeepsGoesIntoThePlanThatIsNamed() throws Exception {
        Path script = script("plan.set('trunk.length', '80 m'); keep('shorter'); apply();");
        Program.Run run = Program.run("script", plan, script, "--into", plan, "--json");
        assertEquals(0, run.exit(), run::toString);
        assertTrue(run.out().contains("\"kept\" : [\n    \"shorter\"\n  ]"), run.out());
        String after = Files.readString(plan);
        assertTrue(after.contains("\"id\": \"trunk\"") && after.contains("\"length\": \"80 m\""), after);
        assertTrue(after.contains("{\"id\": \"shorter\""), after);
    }

    @Test
    void aMistakeInAScriptIsOneSentenceWithItsPlace() throws Exception {
        Program.Run run = Program.run("script", plan, script("print(1);\nplan.set('trunk.gage', '22 AWG');"));
        assertTrue(run.isClean(), run::toString);
        assertEquals(2, run.exit(), run::toString);
        assertEquals("1\n", run.out());
        assertEquals("try.js, line 2: trunk has no cell gage. Did you mean gauge?\n", run.err());
        Program.Run none = Program.run("script", plan, folder.resolve("none.js"));
        assertEquals(2, none.exit(), none::toString);
        assertFalse(none.err().isBlank());
    }
}
