package farwatt.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SamplesTest {
    private static final Path SAMPLES = Scripts.ROOT.resolve("scripts");

    private static Scripts.Ran sample(String name, String plan, String... arguments) throws Exception {
        Scripts.Ran ran = Scripts.run(Script.file(SAMPLES.resolve(name + ".js")), Scripts.plan(plan), arguments);
        assertEquals(Outcome.State.DONE, ran.outcome().state(), ran.outcome().said());
        return ran;
    }

    /** The lines of a table as people read them. */
    private static List<String> lines(ResultTable table) {
        List<String> lines = new ArrayList<>();
        for (List<ResultTable.Cell> row : table.rows()) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(ResultTable.text(row.get(i), table.columns().get(i)));
            }
            lines.add(String.join(" | ", cells));
        }
        return lines;
    }

    @Test
    void everySampleHasATestHere() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            List<String> names =
                    files.map(path -> path.getFileName().toString()).sorted().toList();
            assertEquals(
                    List.of(
                            "ambient-against-gauge.js",
                            "cameras-until-the-reserve-fails.js",
                            "fleet-of-300-sites.js",
                            "longest-trunk-per-gauge.js",
                            "night-and-cold-start.js",
                            "second-switch-or-thicker-cable.js",
                            "tolerance-of-lengths.js",
                            "which-input-matters.js"),
                    names);
        }
    }

    @Test
    void ambientAgainstGauge() throws Exception {
        Scripts.Ran ran = sample("ambient-against-gauge", "ferry-landing");
        assertEquals(
                List.of("18 AWG | 60 degC", "20 AWG | 60 degC", "22 AWG | 10 degC", "24 AWG | –"),
                lines(ran.said().tables.get(0)));
        assertEquals(17 * 4, ran.said().tables.get(1).rows().size());
        assertEquals(
                List.of("quay.ambient", "trunk.gauge"),
                ran.said().pictures.get(0).varied());
    }

    @Test
    void camerasUntilTheReserveFails() throws Exception {
        List<String> lines = lines(sample("cameras-until-the-reserve-fails", "ferry-landing")
                .said()
                .tables
                .get(0));
        assertTrue(
                lines.get(0).startsWith("by day | gate.reserve_share < reserve_target | 1 | With 2 more"),
                lines::toString);
        assertTrue(lines.get(1).startsWith("by day | some(not powered of devices) | 4 | With 5 more"), lines::toString);
        assertTrue(
                lines.get(2).startsWith("winter night | gate.reserve_share < reserve_target | 0 |"), lines::toString);
        assertEquals(4, lines.size());
    }

    @Test
    void longestTrunkPerGauge() throws Exception {
        ResultTable table = sample("longest-trunk-per-gauge", "orchard-packing-shed")
                .said()
                .tables
                .get(0);
        double before = Double.POSITIVE_INFINITY;
        for (List<ResultTable.Cell> row : table.rows()) {
            double reserve = ((ResultTable.Amount) row.get(1)).inside();
            double power = ((ResultTable.Amount) row.get(2)).inside();
            assertTrue(reserve <= power && reserve <= before, table::toString);
            before = reserve;
        }
        assertEquals("22 AWG | 379.3 m | 416.5 m", lines(table).get(1).replaceAll(" \\| [^|]*$", ""));
    }

    @Test
    void nightAndColdStart() throws Exception {
        Scripts.Ran ran = sample("night-and-cold-start", "ferry-landing");
        assertEquals(10, ran.said().tables.get(0).rows().size());
        assertTrue(ran.printed().startsWith("Tightest: winter night, corner hotstart\nby day: Holds"), ran.printed());
        assertTrue(ran.printed().contains("winter night: Fails"), ran.printed());
    }

    @Test
    void secondSwitchOrThickerCable() throws Exception {
        Scripts.Ran ran = sample("second-switch-or-thicker-cable", "ferry-landing");
        List<String> lines = lines(ran.said().tables.get(0));
        assertTrue(lines.get(0).startsWith("one switch, as it is | no |"), lines::toString);
        assertTrue(lines.get(1).startsWith("thicker trunk | no |"), lines::toString);
        assertTrue(lines.get(2).startsWith("second switch | yes |"), lines::toString);
        assertEquals("Best: second switch", ran.printed());
        assertEquals(
                List.of("", "four cameras more", ""),
                ran.outcome().kept().stream().map(scenario -> scenario.on()).toList());
    }

    @Test
    void toleranceOfLengths() throws Exception {
        Scripts.Ran first = sample("tolerance-of-lengths", "ferry-landing", "600");
        Scripts.Ran again = sample("tolerance-of-lengths", "ferry-landing", "600");
        assertEquals(first.said().tables, again.said().tables);
        assertTrue(first.printed().matches("Below the reserve in [1-9][0-9.]* % of 600 cases .*"), first.printed());
    }

    @Test
    void whichInputMatters() throws Exception {
        Scripts.Ran ran = sample("which-input-matters", "museum-courtyard");
        assertEquals(8, ran.said().tables.get(0).rows().size());
        assertTrue(ran.printed().contains("Most: 'arcade switch'.port_limit;"), ran.printed());
    }

    @Test
    void fleetOf300Sites() throws Exception {
        Scripts.Ran ran = sample("fleet-of-300-sites", "orchard-packing-shed", "300");
        assertEquals("300 sites, 42 of them below a reserve of 20 %", ran.printed());
        assertEquals(List.of("fleet.csv", "fleet.xlsx"), ran.said().saved);
        ResultTable fleet = ran.said().tables.get(1);
        assertEquals(300, fleet.rows().size());
        double before = Double.NEGATIVE_INFINITY;
        for (List<ResultTable.Cell> row : fleet.rows()) {
            double share = ((ResultTable.Amount) row.get(5)).inside();
            assertTrue(share >= before, () -> String.format(Locale.ROOT, "%s", row));
            before = share;
        }
    }
}
