package farwatt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import farwatt.catalogue.Wording;
import farwatt.engine.PlanWording;
import farwatt.plan.Plan;
import farwatt.plan.RandomPlans;
import farwatt.report.Refusal;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Files together with how the language writes expressions. */
class TidyTest {
    @Test
    void theExampleIsTidyAsItStands() throws Exception {
        assertEquals(new String(Example.bytes(), StandardCharsets.UTF_8), tidied(Example.bytes()));
    }

    @Test
    void expressionsAreWrittenInTheirOneForm() throws Refusal {
        String byHand =
                "{\"farwatt\": 1, \"runs\": [{\"id\": \"a\", \"length\": \"if  dark then 5m else  2*b.length\"}],"
                        + " \"needs\": [{\"name\": \"n\", \"holds\": \"total( loss of runs )<5W\"}]}";
        assertEquals("""
                {
                  "farwatt": 1,
                  "runs": [{"id": "a", "length": "if dark then 5 m else 2 * b.length"}],
                  "needs": [{"name": "n", "holds": "total(loss of runs) < 5 W"}]
                }
                """, tidied(byHand.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void twiceIsOnce() throws Refusal {
        for (long seed = 1; seed <= 60; seed++) {
            byte[] once = tidied(PlanWriter.bytes(new RandomPlans(seed).plan(), Wording.PLAIN))
                    .getBytes(StandardCharsets.UTF_8);
            assertEquals(new String(once, StandardCharsets.UTF_8), tidied(once), "seed " + seed);
        }
    }

    private static String tidied(byte[] bytes) throws Refusal {
        Plan plan = PlanReader.read(bytes, "x").plan();
        return PlanWriter.text(plan, PlanWording.canonicalFor(plan));
    }
}
