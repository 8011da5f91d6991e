package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What sources and switches can give at most, and which limit set it. */
class LimitsTest {

    /** A switch without losses behind a run of known loop, so that every limit can be followed. */
    private static Draft trunk(String loop, String... edge) {
        Draft draft = Draft.cold()
                .source("feed", "type", "4", "volts", "52 V", "ports", "2")
                .run("trunk", "feed", "gate", "basis", "measured", "measured_loop", loop)
                .edge("gate", "own_draw", "0 W", "efficiency", "100 %", "volts_floor", "5 V");
        for (int i = 0; i < edge.length; i += 2) {
            draft.cell(Table.SWITCHES, "gate", edge[i], Cell.text(edge[i + 1]));
        }
        return draft;
    }

    private static void bound(Answers answers, double available, String by) {
        assertEquals(available, answers.number("gate", "available"), 1e-9);
        assertEquals(by, answers.words("gate", "bound_by"));
        double reserve = available - answers.number("gate", "sent");
        assertEquals(reserve, answers.number("gate", "reserve"), 1e-9);
        assertEquals(reserve / available, answers.number("gate", "reserve_share"), 1e-9);
    }

    @Test
    void right() {
        bound(trunk("1 ohm").solved(), 71.3, "right");
    }

    @Test
    void port() {
        double amps = 90 / 52.0;
        bound(trunk("1 ohm", "uplink_right", "extended").solved(), 90 - amps * amps, "port");
    }

    @Test
    void theRunsOwnPortLimitIsAPortLimit() {
        Draft draft =
                trunk("1 ohm", "uplink_right", "extended").cell(Table.RUNS, "trunk", "port_limit", Cell.text("45 W"));
        double amps = 45 / 52.0;
        bound(draft.solved(), 45 - amps * amps, "port");
    }

    @Test
    void budget() {
        bound(trunk("1 ohm", "budget", "40 W").solved(), 40, "budget");
    }

    @Test
    void wire() {
        Draft draft =
                trunk("1 ohm", "uplink_right", "extended").cell(Table.RUNS, "trunk", "amps_limit", Cell.text("0.3 A"));
        double four = 0.3 / 0.2675;
        bound(draft.solved(), 52 * four - four * four, "wire");
        draft.cell(Table.RUNS, "trunk", "pairs", Cell.text("2"));
        bound(draft.solved(), 52 * 0.6 - 0.36, "wire");
    }

    @Test
    void cable() {
        bound(trunk("20 ohm", "uplink_right", "extended").solved(), 52 * 52 / 80.0, "cable");
    }

    @Test
    void floor() {
        double amps = (52 - 42.5) / 8;
        bound(
                trunk("8 ohm", "uplink_right", "extended", "volts_floor", "42.5 V")
                        .solved(),
                42.5 * amps,
                "floor");
    }

    @Test
    void whatOtherPortsTakeIsNotThereAnyMore() {
        Draft draft = trunk("0 ohm", "uplink_right", "extended")
                .cell(Table.SOURCES, "feed", "budget", Cell.text("100 W"))
                .device("cam", "draw", "40 W")
                .run("r", "feed", "cam", "basis", "measured", "measured_loop", "0 ohm");
        bound(draft.solved(), 60, "port");
    }

    @Test
    void onATieTheFirstOfRightPortBudgetWireCableFloor() {
        bound(trunk("0 ohm", "budget", "71.3 W").solved(), 71.3, "right");
        bound(trunk("0 ohm", "budget", "90 W", "uplink_right", "extended").solved(), 90, "port");
        Draft wire = trunk("0 ohm", "budget", "31.2 W", "uplink_right", "extended")
                .cell(Table.RUNS, "trunk", "pairs", Cell.text("2"))
                .cell(Table.RUNS, "trunk", "amps_limit", Cell.text("0.3 A"));
        bound(wire.solved(), 31.2, "budget");
    }

    @Test
    void ownDrawAndEfficiencyComeOff() {
        bound(trunk("1 ohm", "own_draw", "6 W", "efficiency", "90 %").solved(), 0.9 * (71.3 - 6), "right");
    }

    @Test
    void aSwitchThatTakesAllItGetsHasNothingToGive() {
        Answers answers = trunk("1 ohm", "own_draw", "80 W").solved();
        assertEquals(0, answers.number("gate", "available"));
        Fault fault = answers.fault("gate", "reserve_share");
        assertEquals(Fault.Kind.ARITHMETIC, fault.kind());
        assertTrue(fault.text().contains("gate"), fault.text());
    }

    @Test
    void aDirectSwitchHandsOnTheVoltsItGets() {
        Draft draft = trunk("8 ohm", "mode", "direct", "own_draw", "4 W", "through_drop", "1 V", "volts_floor", "40 V")
                .cell(Table.SWITCHES, "gate", "uplink_right", Cell.text("extended"))
                .device("cam", "draw", "10 W")
                .run("r", "gate", "cam", "basis", "measured", "measured_loop", "2 ohm");
        Answers answers = draft.solved();
        answers.clean();
        double in = answers.number("gate", "volts_in");
        assertEquals(in - 1, answers.number("r", "volts_near"), 1e-12);
        double amps = answers.number("trunk", "amps");
        assertEquals(4 / in + answers.number("r", "amps"), amps, 1e-12);
        assertEquals(52 - 8 * amps, in, 1e-12);
        assertEquals(answers.number("r", "sent"), answers.number("gate", "sent"), 1e-12);
        double most = (52 - 40) / 8.0;
        assertEquals(40 * most, answers.number("gate", "receivable"), 1e-9);
        bound(answers, (40 * most - 4) * (in - 1) / in, "floor");
        Fault fault = answers.fault("trunk", "cliff_share");
        assertEquals(Fault.Kind.NOT_APPLICABLE, fault.kind());
        assertTrue(fault.text().contains("direct"), fault.text());
        assertEquals(
                Fault.Kind.NOT_APPLICABLE, answers.fault("r", "cliff_share").kind());
        assertEquals(fault.kind(), answers.fault("r", "cliff_share").kind());
    }

    @ParameterizedTest
    @CsvSource({
        // guard, from, rate, air, share left
        "0 %, , , 40, 1",
        "10 %, , , 40, 0.9",
        "0 %, 30 degC, 2 %/K, 25, 1",
        "0 %, 30 degC, 2 %/K, 30, 1",
        "0 %, 30 degC, 2 %/K, 40, 0.8",
        "10 %, 30 degC, 2 %/K, 40, 0.72",
        "0 %, 30 degC, 2 %/K, 90, 0",
        "0 %, 30 degC, , 40, 1",
        "0 %, , 2 %/K, 40, 1"
    })
    void guardAndHeatTakeFromABudget(String guard, String from, String rate, String air, double left) {
        String[] cells = {
            "budget",
            "200 W",
            "guard",
            guard,
            "derate_from",
            from == null ? "" : from,
            "derate_rate",
            rate == null ? "" : rate
        };
        Draft draft = Draft.cold()
                .zone("room", "ambient", air + " degC")
                .source("feed", "type", "4", "zone", "room")
                .edge("gate", "own_draw", "0 W", "efficiency", "100 %", "zone", "room")
                .run("trunk", "feed", "gate", "basis", "measured", "measured_loop", "0 ohm");
        for (int i = 0; i < cells.length; i += 2) {
            draft.cell(Table.SOURCES, "feed", cells[i], Cell.text(cells[i + 1]));
            draft.cell(Table.SWITCHES, "gate", cells[i], Cell.text(cells[i + 1]));
        }
        draft.cell(Table.SWITCHES, "gate", "budget", Cell.text("20 W"));
        Answers answers = draft.solved();
        assertEquals(200 * left, answers.number("feed", "available"), 1e-9);
        assertEquals("budget", answers.words("feed", "bound_by"));
        assertEquals(left == 0 ? 0 : 20 * left, answers.number("gate", "available"), 1e-9);
    }

    @Test
    void sunAndTheHottestDayDerateAsWell() {
        Draft draft = Draft.cold()
                .zone("roof", "ambient", "30 degC", "hottest", "35 degC", "sun", "10 K")
                .source("feed", "type", "4", "zone", "roof", "derate_from", "40 degC", "derate_rate", "1 %/K");
        assertEquals(90, draft.solved(Corner.MOST).number("feed", "available"));
        assertEquals(90 * 0.95, draft.solved(Corner.HOT).number("feed", "available"), 1e-12);
    }

    /** Where no budget was typed there is nothing to take from, however warm it is. */
    @Test
    void deratingOfNoBudgetLeavesNone() {
        Draft draft = trunk("1 ohm", "derate_from", "0 degC", "derate_rate", "10 %/K");
        bound(draft.solved(), 71.3, "right");
        draft.cell(Table.SWITCHES, "gate", "guard", Cell.text("100 %"));
        bound(draft.solved(), 71.3, "right");
    }

    @Test
    void reserveGoesBelowZeroWhenTooMuchIsAskedFor() {
        Draft draft = trunk("1 ohm");
        for (int k = 0; k < 4; k++) {
            draft.device("cam " + k, "draw", "25 W")
                    .run("r " + k, "gate", "cam " + k, "basis", "measured", "measured_loop", "0 ohm");
        }
        bound(draft.solved(), 71.3, "right");
        assertEquals(-28.7, draft.solved().number("gate", "reserve"), 1e-9);
        assertEquals(-28.7 / 71.3, draft.solved().ofPlan("least_reserve_share"), 1e-9);
    }

    @Test
    void aDeviceMayFallBelowItsFloorWithoutAFuss() {
        Answers answers = Draft.cold()
                .source("feed", "type", "4", "volts", "52 V")
                .device("cam", "draw", "30 W")
                .run("r", "feed", "cam", "basis", "measured", "measured_loop", "20 ohm")
                .solved();
        answers.clean();
        assertTrue(answers.number("cam", "headroom") < 0);
        assertEquals(answers.number("cam", "headroom"), answers.ofPlan("least_headroom"));
        assertEquals(0.8875739644970414, answers.number("r", "cliff_share"), 1e-12);
    }

    @Test
    void askedForMoreThanCanArriveSaysHowMuch() {
        Answers answers = Draft.cold()
                .source("feed", "type", "4", "volts", "52 V")
                .device("cam", "draw", "40 W")
                .run("thin run", "feed", "cam", "basis", "measured", "measured_loop", "20 ohm")
                .device("near", "draw", "4 W")
                .run("r", "feed", "near", "length", "1 m")
                .source("other", "type", "4")
                .device("far", "draw", "4 W")
                .run("s", "other", "far", "length", "1 m")
                .solved();
        Fault fault = answers.fault("feed", "sent");
        assertEquals(Fault.Kind.NO_OPERATING_POINT, fault.kind());
        assertEquals("thin run", fault.origin().row());
        assertTrue(
                fault.text().contains("40 W")
                        && fault.text().contains("33.8 W")
                        && fault.text().contains("6.2 W"),
                fault.text());
        // the whole tree has no figures, and the rest has
        for (String id : new String[] {"cam", "near"}) {
            assertEquals(fault, answers.fault(id, "volts"));
        }
        assertEquals(fault, answers.fault("r", "amps"));
        assertEquals(4, answers.number("far", "watts"));
        assertEquals(40, answers.number("cam", "draw"));
        assertEquals(
                Fault.Kind.NO_OPERATING_POINT,
                answers.calculation()
                        .value(Table.PLAN, 0, "sent")
                        .fault()
                        .orElseThrow()
                        .kind());
    }

    @Test
    void aTreeOfDirectSwitchesHasNoSingleRunsLimit() {
        Answers answers = Draft.cold()
                .source("feed", "type", "4", "volts", "52 V")
                .edge("hub", "mode", "direct")
                .device("cam", "draw", "40 W")
                .run("up", "feed", "hub", "basis", "measured", "measured_loop", "18 ohm")
                .run("down", "hub", "cam", "basis", "measured", "measured_loop", "2 ohm")
                .solved();
        Fault fault = answers.fault("cam", "volts");
        assertEquals(Fault.Kind.NO_OPERATING_POINT, fault.kind());
        assertTrue(fault.text().contains("direct"), fault.text());
    }
}
