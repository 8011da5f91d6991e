package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.report.Level;
import farwatt.report.Messages;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ReviewerTest {
    /** A landing whose gate is asked for more in the cold, when all start, than its port lets arrive. */
    private static final String LANDING = """
            plan | reserve_target = 5 %
            zone office | ambient = 22 degC | setting = conduit
            zone quay | ambient = 24 degC | hottest = 38 degC | coldest = -15 degC | sun = 10 K | outdoor = yes
            source feed | zone = office | type = 4 | volts = 55 V
            switch gate | zone = quay | ports = 8 | volts = 55 V | own_draw = 6 W | efficiency = 94 %\
             | uplink_right = extended | grants_by = measured
            run trunk | from = feed | to = gate | zone = quay | length = 85 m | gauge = 23 AWG | sheath = outdoor
            run line 1 | from = gate | to = cam 1 | length = 18 m | sheath = outdoor
            run line 2 | from = gate | to = cam 2 | length = 18 m | sheath = outdoor
            run line 3 | from = gate | to = cam 3 | length = 18 m | sheath = outdoor
            device cam 1 | zone = quay | class = 4 | draw = 14 W | draw_start = 18 W
            device cam 2 | zone = quay | class = 4 | draw = 14 W | draw_start = 18 W
            device cam 3 | zone = quay | class = 4 | draw = 14 W | draw_start = 18 W
            """;

    private static final String FOURTH = "run line 4 | from = gate | to = cam 4 | length = 18 m | sheath = outdoor\n"
            + "device cam 4 | zone = quay | class = 4 | draw = 14 W | draw_start = 18 W\n";

    @Test
    void verdictsReadAsSentences() throws IOException {
        StringBuilder all = new StringBuilder();
        say(all, "holds", Sketch.review(LANDING));
        say(all, "holds in one corner", Reviewer.review(Sketch.calc(LANDING), Corner.MOST));
        say(all, "fails when all start", Sketch.review(LANDING + FOURTH));
        say(all, "fails in the one looked at", Reviewer.review(Sketch.calc(LANDING + FOURTH), Corner.COLD));
        say(all, "fails whatever the corner", Sketch.review(LANDING.replace("23 AWG", "23 AWG | metal = clad")));
        say(all, "a cell that cannot be read", Sketch.review(LANDING.replace("85 m", "85 n")));
        say(all, "an empty cell", Sketch.review(LANDING.replace("length = 85 m", "note = how long?")));
        say(
                all,
                "no operating point",
                Sketch.review(LANDING.replace("85 m", "500 m").replace("55 V", "50 V")));
        say(all, "a need", Sketch.review(LANDING + "need spare watts | holds = gate.reserve > 40 W"));
        say(
                all,
                "set aside",
                Sketch.review(LANDING.replace("85 m", "99 m")
                        + "practice review.reach/trunk | is = silent | why = data go over fibre beside it"));
        say(
                all,
                "raised",
                Sketch.review(
                        LANDING.replace("23 AWG", "23 AWG | leaves_building = yes | surge = yes")
                                + "practice review.bonding | is = fail | why = to be seen by a licensed person before hand-over"));
        say(
                all,
                "nothing limited",
                Sketch.review(
                        "source feed | type = passive | volts = 48 V\n"
                                + "run line | from = feed | to = radio | length = 20 m\ndevice radio | draw = 5 W | volts_floor = 36 V"));
        say(all, "empty", Sketch.review(""));
        Golden.compare("verdicts.txt", all.toString());
    }

    private static void say(StringBuilder all, String head, Review review) {
        all.append("== ").append(head).append('\n');
        all.append(review.verdict().text()).append('\n');
        all.append(review.verdict().corner().word())
                .append(" · ")
                .append(review.verdict().place().text())
                .append(" · ")
                .append(review.fails())
                .append(" fail · ")
                .append(review.warnings())
                .append(" warn\n\n");
    }

    @Test
    void theHotStartIsLookedAtOnlyWhereAStartExceedsTheMost() {
        assertEquals(
                List.of(Corner.TYPICAL, Corner.MOST, Corner.HOT, Corner.COLD, Corner.HOTSTART),
                List.copyOf(Sketch.review(LANDING).corners().keySet()));
        Review without = Sketch.review(LANDING.replaceAll(" \\| draw_start = 18 W", ""));
        assertEquals(
                List.of(Corner.TYPICAL, Corner.MOST, Corner.HOT, Corner.COLD),
                List.copyOf(without.corners().keySet()));
    }

    @Test
    void theCornerLookedAtStays() {
        Calculation calc = Sketch.calc(LANDING);
        calc.look(Corner.HOT);
        Reviewer.review(calc);
        assertEquals(Corner.HOT, calc.corner());
        Reviewer.review(calc, Corner.COLD);
        assertEquals(Corner.HOT, calc.corner());
    }

    @Test
    void aFindingStandsOnceAtItsWorstCorner() {
        Review review = Sketch.review(LANDING.replace("85 m", "99 m"));
        List<Finding> reach = review.findings().stream()
                .filter(f -> f.code().equals("review.reach"))
                .toList();
        assertEquals(1, reach.size());
        // the hottest wires: everything starts on the hottest day
        assertEquals(Corner.HOTSTART, reach.get(0).corner().orElseThrow());
        assertTrue(reach.get(0).limit() < 92, reach.toString());
    }

    @Test
    void cornersHoldEachForThemselvesAndAllFailWithWhatAlwaysFails() {
        Review cold = Sketch.review(LANDING + FOURTH);
        assertTrue(cold.corners().get(Corner.MOST).holds());
        assertFalse(cold.corners().get(Corner.COLD).holds());
        Review clad = Sketch.review(LANDING.replace("23 AWG", "23 AWG | metal = clad"));
        assertTrue(clad.corners().values().stream().noneMatch(CornerVerdict::holds));
    }

    @Test
    void worstComesFirstThenTableThenRow() {
        Review review = Sketch.review(LANDING.replace("85 m", "99 m") + FOURTH);
        List<Level> levels = review.findings().stream().map(Finding::level).toList();
        assertEquals(levels.stream().sorted().toList(), levels);
        assertEquals("review.overload", review.findings().get(0).code());
    }

    @Test
    void aReasonIsAskedForBeforeAnythingIsSetAside() {
        String silent = "practice review.reach | is = silent";
        String plan = LANDING.replace("85 m", "99 m");
        assertFalse(Sketch.review(plan + silent).verdict().holds());
        Review review = Sketch.review(plan + silent + " | why = data go over fibre");
        assertTrue(review.findings().stream().noneMatch(f -> f.code().equals("review.reach")));
        assertTrue(
                review.verdict().text().contains("data go over fibre"),
                review.verdict().text());
        Review lowered = Sketch.review(plan + "practice review.reach | is = note | why = data go over fibre");
        assertEquals(
                Set.of(Level.NOTE),
                Set.copyOf(lowered.findings().stream()
                        .filter(f -> f.code().equals("review.reach"))
                        .map(Finding::level)
                        .toList()));
    }

    @Test
    void limitsOfPracticeAreThePlansOwn() {
        String plan = LANDING.replace("85 m", "99 m") + "practice reach_total | is = 120 m | why = tested so\n"
                + "practice reach_most | is = 110 m | why = tested so";
        assertTrue(Sketch.review(plan).verdict().holds());
    }

    @Test
    void anEmptyPlanIsNotBlamed() {
        Review review = Sketch.review("");
        assertTrue(review.verdict().holds());
        assertEquals(List.of(), review.findings());
        assertEquals(0, review.fails());
    }

    @Test
    void cautionsAreAlwaysThere() {
        assertEquals(9, Sketch.review("").cautions().size());
        assertTrue(Sketch.review(LANDING).cautions().get(0).startsWith("This is a planning aid."));
    }

    @Test
    void everyCodeAndPhraseHasItsWords() {
        for (ReviewCode code : ReviewCode.values()) {
            assertFalse(Messages.pattern(code).isBlank(), code.key());
            assertFalse(Messages.pattern(new Findings.Brief(code)).isBlank(), code.key());
            assertTrue(
                    Messages.pattern(code).endsWith(".")
                            || Messages.pattern(code).endsWith("}"),
                    code.key());
            assertFalse(Messages.pattern(new Findings.Brief(code)).endsWith("."), code.key());
        }
        for (Phrase phrase : Phrase.values()) {
            assertFalse(Messages.pattern(phrase).isEmpty(), phrase.name());
        }
    }
}
