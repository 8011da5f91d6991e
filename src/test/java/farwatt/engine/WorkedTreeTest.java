package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import farwatt.plan.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures worked out by hand and by an independent script, from the cells of a plan. */
class WorkedTreeTest {

    @ParameterizedTest
    @CsvSource({
        "4, 8 W, 20 m, 32.160, 40.213, 46.607, 0.8628, 44.866",
        "6, 8 W, 20 m, 48.241, 57.320, 43.826, 1.3079, 68.011",
        "3, 12.95 W, 30 m, 39.330, 47.840, 45.416, 1.0534, 54.775",
        "4, 12.95 W, 30 m, 52.440, 61.787, 43.024, 1.4361, 74.676",
        "2, 25.5 W, 20 m, 51.833, 61.142, 43.142, 1.4172, 73.694"
    })
    void devicesBehindOneRegulatedSwitch(
            int devices,
            String draw,
            String length,
            double sent,
            double received,
            double volts,
            double amps,
            double source) {
        Draft draft = Draft.cold()
                .source("feed", "type", "4", "volts", "52 V")
                .edge("gate", "volts", "55 V", "own_draw", "6 W", "efficiency", "94 %")
                .run("trunk", "feed", "gate", "basis", "measured", "measured_loop", "6.25 ohm");
        for (int k = 1; k <= devices; k++) {
            String id = "cam " + k;
            draft.device(id, "draw", draw)
                    .run("run " + id, "gate", id, "length", length, "basis", "limit", "joints", "0", "pairs", "2");
        }
        Answers answers = draft.solved();
        answers.clean();
        assertEquals(sent, answers.number("gate", "sent"), 0.0005);
        assertEquals(received, answers.number("gate", "received"), 0.0005);
        assertEquals(received, answers.number("trunk", "received"), 0.0005);
        assertEquals(volts, answers.number("gate", "volts_in"), 0.0005);
        assertEquals(volts, answers.number("trunk", "volts_far"), 0.0005);
        assertEquals(amps, answers.number("trunk", "amps"), 0.00005);
        assertEquals(source, answers.number("feed", "sent"), 0.0005);
        assertEquals(source, answers.number("trunk", "sent"), 0.0005);
        assertEquals(6.25, answers.number("trunk", "loop"), 1e-12);
        assertEquals(52 - volts, answers.number("trunk", "drop"), 0.0005);
        assertEquals((52 - volts) / 52, answers.number("trunk", "drop_share"), 1e-5);
        assertEquals(source - received, answers.number("trunk", "loss"), 0.001);
        assertEquals(received * 4 * 6.25 / (52 * 52), answers.number("trunk", "cliff_share"), 1e-5);
        assertEquals(source, answers.ofPlan("sent"), 0.0005);
        assertEquals((source + 4) / 0.88, answers.ofPlan("mains"), 0.001);
        double lost = source - received + sent - devices * answers.number("cam 1", "watts");
        assertEquals(lost, answers.ofPlan("lost"), 0.001);
    }

    private static Draft trunk(String volts, String length) {
        return Draft.cold()
                .source("feed", "type", "4", "volts", volts)
                .edge("gate", "volts", "55 V", "own_draw", "6 W", "efficiency", "94 %")
                .run("trunk", "feed", "gate", "length", length, "joints", "0");
    }

    private static Draft changed(Draft draft, Table table, String id, String name, String text) {
        return draft.cell(table, id, name, farwatt.plan.Cell.text(text));
    }

    @Test
    void aPortOfNinetyWattsLeavesFarLessBehindAHundredMetres() {
        Draft draft = changed(trunk("55 V", "100 m"), Table.SWITCHES, "gate", "uplink_right", "extended");
        Answers answers = draft.solved();
        answers.clean();
        assertEquals(4.295, answers.number("trunk", "loop"), 0.0005);
        assertEquals(78.5, answers.number("gate", "receivable"), 0.05);
        assertEquals(68.1, answers.number("gate", "available"), 0.05);
        assertEquals("port", answers.words("gate", "bound_by"));
        assertEquals(1.0, answers.number("gate", "reserve_share"), 0.0);
    }

    @Test
    void theRightOfTheClassBindsBeforeThePort() {
        Answers answers = trunk("55 V", "100 m").solved();
        assertEquals(78.5, answers.number("gate", "receivable"), 0.05);
        assertEquals(61.382, answers.number("gate", "available"), 1e-9);
        assertEquals("right", answers.words("gate", "bound_by"));
        assertEquals("8", answers.words("gate", "class_granted"));
    }

    @Test
    void aThickerTrunkChangesNothingWhileTheRightBinds() {
        Answers thin = trunk("55 V", "100 m").solved();
        Answers thick = changed(trunk("55 V", "100 m"), Table.RUNS, "trunk", "gauge", "22 AWG")
                .solved();
        assertEquals(thin.number("gate", "available"), thick.number("gate", "available"));
    }

    @Test
    void aThinLongCableBindsAtHalfTheVolts() {
        Draft draft = trunk("48 V", "250 m");
        changed(draft, Table.SWITCHES, "gate", "uplink_right", "extended");
        changed(draft, Table.SWITCHES, "gate", "volts_floor", "10 V");
        changed(draft, Table.RUNS, "trunk", "pairs", "2");
        Answers answers = draft.solved();
        assertEquals(26.8, answers.number("gate", "receivable"), 0.05);
        double loop = answers.number("trunk", "loop");
        assertEquals(48 * 48 / 4 / loop, answers.number("gate", "receivable"), 1e-12);
        assertEquals(0.94 * (48 * 48 / 4 / loop - 6), answers.number("gate", "available"), 1e-12);
        assertEquals("cable", answers.words("gate", "bound_by"));
    }
}
