package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who gets power where not all can. */
class PoweredTest {

    /** 61.4 W behind a hundred metres, and four class 3 devices of 8 W each on runs of no length. */
    private static Draft four(String by) {
        Draft draft = Draft.cold()
                .source("feed", "type", "4", "volts", "55 V")
                .edge("gate", "volts", "55 V", "own_draw", "6 W", "efficiency", "94 %", "grants_by", by)
                .run("trunk", "feed", "gate", "length", "100 m", "joints", "0");
        for (int k : new int[] {10, 2, 1, 3}) {
            draft.device("cam " + k, "class", "3", "draw", "8 W")
                    .run("run " + k, "gate", "cam " + k, "length", "20 m", "basis", "limit", "joints", "0");
        }
        return draft;
    }

    private static String lit(Answers answers) {
        StringBuilder lit = new StringBuilder();
        for (int k : new int[] {1, 2, 3, 10}) {
            lit.append(answers.words("cam " + k, "powered").equals("yes") ? "+" : "-");
        }
        return lit.toString();
    }

    @Test
    void byClassTheFourthStaysDarkAndByMeasuredAllRun() {
        Answers byClass = four("class").solved();
        byClass.clean();
        assertEquals(61.4, byClass.number("gate", "available"), 0.05);
        assertEquals("+++-", lit(byClass));
        assertEquals(46.2, byClass.number("gate", "granted"), 1e-12);
        assertEquals(32.16, byClass.number("gate", "sent"), 0.005);
        String why = byClass.words("cam 10", "powered_why");
        assertTrue(why.contains("gate") && why.contains("15.18 W") && why.contains("15.4 W"), why);
        assertEquals("", byClass.words("cam 1", "powered_why"));
        Answers measured = four("measured").solved();
        assertEquals("++++", lit(measured));
        assertEquals(measured.number("gate", "sent"), measured.number("gate", "granted"), 1e-12);
    }

    @Test
    void declaredReservesTheMostInEveryCorner() {
        Draft draft = four("declared").cell(Table.DEVICES, "cam 1", "draw_typical", Cell.text("2 W"));
        double most = draft.solved(Corner.MOST).number("gate", "sent");
        for (Corner corner : Corner.values()) {
            Answers answers = draft.solved(corner);
            assertEquals("++++", lit(answers), corner.word());
            assertEquals(most, answers.number("gate", "granted"), 1e-12, corner.word());
        }
        assertTrue(draft.solved(Corner.TYPICAL).number("gate", "sent") < most - 5.9);
    }

    @Test
    void aFactorCountsOnClassesOnly() {
        Draft draft = four("class").cell(Table.SWITCHES, "gate", "grant_factor", Cell.text("1.4"));
        assertEquals("++--", lit(draft.solved()));
        assertEquals(2 * 15.4 * 1.4, draft.solved().number("gate", "granted"), 1e-12);
        Draft measured = four("measured").cell(Table.SWITCHES, "gate", "grant_factor", Cell.text("1.4"));
        assertEquals("++++", lit(measured.solved()));
    }

    @ParameterizedTest
    @CsvSource({
        // priority of cam 10, port of cam 10, ports of the others
        "1, , , ++-+",
        "2, , , ++-+",
        "3, 1, , ++-+",
        "3, 5, 4, +++-",
        "3, 3, 4, ++-+",
        "4, 1, 4, +++-",
        "3, , 4, +++-"
    })
    void priorityGoesBeforePortAndPortBeforeId(String priority, String port, String others, String lit) {
        Draft draft = four("class").cell(Table.DEVICES, "cam 10", "priority", Cell.text(priority));
        draft.cell(Table.RUNS, "run 10", "port", Cell.text(port == null ? "" : port));
        for (int k = 1; k <= 3; k++) {
            draft.cell(Table.RUNS, "run " + k, "port", Cell.text(others == null ? "" : others));
        }
        assertEquals(lit, lit(draft.solved()));
    }

    @Test
    void aSwitchGoesBeforeDevicesUnlessTyped() {
        Draft draft = four("class")
                .edge("zz pole", "uplink_class", "4", "own_draw", "2 W")
                .run("run pole", "gate", "zz pole", "length", "5 m");
        assertEquals("++--", lit(draft.solved()));
        assertEquals("yes", draft.solved().words("zz pole", "powered"));
        draft.cell(Table.SWITCHES, "zz pole", "priority", Cell.text("9"));
        assertEquals("+++-", lit(draft.solved()));
        assertEquals("no", draft.solved().words("zz pole", "powered"));
    }

    @Test
    void oneThatDoesNotFitIsPassedOverAndLaterOnesStillTried() {
        Draft draft = four("class").cell(Table.DEVICES, "cam 2", "class", Cell.text("4"));
        for (int k : new int[] {3, 10}) {
            draft.cell(Table.DEVICES, "cam " + k, "class", Cell.text("3"));
        }
        // 15.4 + 30 + 15.4 fits 61.4, one more does not
        assertEquals("+++-", lit(draft.solved()));
        draft.cell(Table.DEVICES, "cam 1", "class", Cell.text("4"));
        draft.cell(Table.DEVICES, "cam 3", "class", Cell.text("4"));
        draft.cell(Table.DEVICES, "cam 10", "class", Cell.text("1"))
                .cell(Table.DEVICES, "cam 10", "draw", Cell.text("1 W"));
        draft.cell(Table.SWITCHES, "gate", "own_draw", Cell.text("0 W"));
        assertEquals("++-+", lit(draft.solved()));
    }

    @Test
    void aDarkSwitchDarkensAllBelow() {
        Draft draft = four("class").cell(Table.SOURCES, "feed", "budget", Cell.text("70 W"));
        Answers answers = draft.edge("pole", "own_draw", "2 W", "uplink_class", "1", "priority", "9")
                .run("run pole", "gate", "pole", "length", "5 m")
                .device("far", "draw", "1 W")
                .run("run far", "pole", "far", "length", "5 m")
                .solved();
        assertEquals("no", answers.words("gate", "powered"));
        assertTrue(answers.words("gate", "powered_why").contains("feed"));
        assertTrue(answers.words("gate", "powered_why").contains("90 W"));
        assertEquals("----", lit(answers));
        assertTrue(answers.words("cam 1", "powered_why").contains("gate"));
        assertEquals("no", answers.words("far", "powered"));
        assertTrue(answers.words("far", "powered_why").contains("pole"));
        assertEquals(0, answers.number("gate", "granted"));
        // what is asked for is shown all the same
        assertTrue(answers.number("gate", "sent") > 35);
        assertTrue(answers.number("feed", "sent") > 40);
    }

    @Test
    void exactFitsFitAndWhatIsVisiblyMoreDoesNot() {
        Draft draft = Draft.cold().source("feed", "type", "2", "budget", "60 W", "ports", "9");
        for (int k = 1; k <= 3; k++) {
            draft.device("cam " + k, "class", "4", "draw", "5 W").run("run " + k, "feed", "cam " + k, "length", "1 m");
        }
        assertEquals("yes", draft.solved().words("cam 2", "powered"));
        assertEquals("no", draft.solved().words("cam 3", "powered"));
        draft.cell(Table.SOURCES, "feed", "budget", Cell.text("59.95 W"));
        assertEquals("no", draft.solved().words("cam 2", "powered"));
    }

    /** Where the most has no operating point there is nothing to declare, in whatever corner one looks. */
    @ParameterizedTest
    @ValueSource(strings = {"typical", "cold"})
    void whatCannotRunAtItsMostDeclaresNothing(String corner) {
        Answers answers = Draft.cold()
                .source("feed", "type", "4", "grants_by", "declared", "volts", "52 V")
                .device("cam", "draw", "60 W", "draw_typical", "5 W", "draw_start", "5 W")
                .run("r", "feed", "cam", "basis", "measured", "measured_loop", "20 ohm")
                .device("near", "draw", "5 W")
                .run("s", "feed", "near", "length", "1 m")
                .solved(Corner.of(corner).orElseThrow());
        assertEquals("no", answers.words("cam", "powered"));
        String why = answers.words("cam", "powered_why");
        assertTrue(why.contains("cam") || why.contains("feed"), why);
        assertTrue(why.contains("most"), why);
        Sound.check(answers.calculation());
    }

    /** Rows that can be reckoned in one corner and not in the other must not shift what is declared. */
    @Test
    void anUnreadableCornerOfOneDeviceLeavesTheOthersDeclared() {
        Draft draft = Draft.cold()
                .source("feed", "type", "4", "grants_by", "declared", "budget", "40 W", "ports", "4")
                .device("a", "draw", "what ever", "draw_typical", "9 W", "class", "3", "draw_start", "9 W")
                .device("b", "draw", "20 W", "draw_typical", "1 W")
                .device("c", "draw", "10 W", "draw_typical", "2 W")
                .run("ra", "feed", "a", "length", "0 m", "joints", "0")
                .run("rb", "feed", "b", "length", "0 m", "joints", "0")
                .run("rc", "feed", "c", "length", "0 m", "joints", "0");
        Answers typical = draft.solved(Corner.TYPICAL);
        assertEquals(1, typical.number("b", "watts"));
        assertEquals("yes", typical.words("b", "powered"));
        assertEquals("yes", typical.words("c", "powered"));
        assertEquals(30, typical.number("feed", "granted"), 1e-9);
        assertEquals(9, typical.number("a", "watts"));
        assertEquals("no", typical.words("a", "powered"));
        assertTrue(typical.words("a", "powered_why").contains("no figures"));
        Sound.check(typical.calculation());
    }

    /** A classless device on a 30 W port of a switch with a pot of 242 W. */
    @Test
    void portsOfTwoKindsShareOnePot() {
        Draft draft = Draft.cold().source("forecourt", "type", "4", "ports", "8", "budget", "242 W");
        String[][] rows = {
            {"forecourt ptz", "3", "51.0 W", "6"},
            {"gate barrier", "7", "71.3 W", "8"},
            {"shelter cam 1", "1", "12.95 W", "3"},
            {"shelter cam 2", "2", "12.95 W", "3"},
            {"info screen", "8", "51.0 W", "6"}
        };
        for (String[] row : rows) {
            String limit = Integer.parseInt(row[1]) <= 6 ? "30 W" : "90 W";
            draft.device(row[0], "draw", row[2], "class", row[3])
                    .run("run " + row[0], "forecourt", row[0], "length", "1 m", "port", row[1], "port_limit", limit);
        }
        Answers answers = draft.solved();
        answers.clean();
        assertEquals("4", answers.words("forecourt ptz", "class_granted"));
        assertEquals("8", answers.words("gate barrier", "class_granted"));
        assertEquals("6", answers.words("info screen", "class_granted"));
        assertEquals(210.8, answers.number("forecourt", "granted"), 1e-9);
        for (String[] row : rows) {
            assertEquals("yes", answers.words(row[0], "powered"));
        }
    }

    @Test
    void aPassiveFeedCountsWhatFlows() {
        Draft draft = Draft.cold()
                .source("router", "type", "passive", "volts", "24 V", "budget", "50 W")
                .device("zone coordinator", "draw", "3.0 W", "class", "1", "volts_floor", "37 V")
                .device("roof radio", "draw", "8.5 W", "volts_floor", "12 V");
        for (String id : new String[] {"zone coordinator", "roof radio"}) {
            draft.run(
                    "to " + id,
                    "router",
                    id,
                    "basis",
                    "datasheet",
                    "conductor_ohms",
                    "84.2 ohm/km",
                    "length",
                    "30 m",
                    "joints",
                    "0");
        }
        Answers answers = draft.solved();
        answers.clean();
        assertEquals(2.526, answers.number("to roof radio", "loop"), 1e-9);
        assertEquals(0.3685, answers.number("roof radio", "amps"), 5e-5);
        assertEquals(23.069, answers.number("roof radio", "volts"), 5e-4);
        assertEquals(8.843, answers.number("to roof radio", "sent"), 5e-4);
        assertTrue(answers.number("zone coordinator", "headroom") < -13);
        assertEquals("yes", answers.words("roof radio", "powered"));
        assertEquals(answers.number("router", "sent"), answers.number("router", "granted"), 1e-12);
        assertEquals(50, answers.number("router", "available"));
    }
}
