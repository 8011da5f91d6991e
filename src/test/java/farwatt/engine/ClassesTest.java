package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Table;
import farwatt.report.Place;
import farwatt.standard.PowerClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Classes, port types and the defaults that follow from them (IEEE 802.3 clauses 33 and 145). */
class ClassesTest {

    private static Draft hung(String device, String... port) {
        return Draft.cold()
                .source("feed", port)
                .device("cam", device.split(" ", -1)[0], device.substring(device.indexOf(' ') + 1))
                .run("cable", "feed", "cam", "length", "10 m");
    }

    @ParameterizedTest
    @CsvSource({"1, 44, 15.4", "2, 50, 30", "3, 50, 60", "4, 52, 90"})
    void aTypeSaysVoltsAndWattsOfAPort(String type, double volts, double watts) {
        Answers answers = Draft.cold()
                .source("feed", "type", type, "ports", "3")
                .edge("gate", "type", type)
                .solved();
        assertEquals(volts, answers.number("feed", "volts"));
        assertEquals(watts, answers.number("feed", "port_limit"));
        assertEquals(3 * watts, answers.number("feed", "budget"));
        assertEquals(volts, answers.number("gate", "volts"));
        assertEquals(watts, answers.number("gate", "port_limit"));
        assertEquals(Fault.Kind.EMPTY, answers.fault("gate", "budget").kind());
    }

    @Test
    void whatIsTypedStandsBeforeTheType() {
        Answers answers = Draft.cold()
                .source("feed", "type", "4", "volts", "55 V", "port_limit", "30 W", "ports", "4")
                .solved();
        assertEquals(55, answers.number("feed", "volts"));
        assertEquals(120, answers.number("feed", "budget"));
    }

    /** Volts, loop and right of the table belong together: P = V·I − I²·R at the class's current. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyClassBringsItsRightOverTheLoopThatTheStandardAssumes(int number) {
        PowerClass row = PowerClass.of(number);
        String type = number < 4 ? "1" : number == 4 ? "2" : number < 7 ? "3" : "4";
        Answers answers = Draft.cold()
                .source("feed", "type", type, "port_limit", row.portWatts() + " W")
                .edge("gate", "uplink_class", "" + number, "uplink_right", "extended", "volts_floor", "5 V")
                .run("cable", "feed", "gate", "basis", "measured", "measured_loop", row.loopOhms() + " ohm")
                .solved();
        answers.clean();
        assertEquals(row.portVolts(), answers.number("feed", "volts"));
        assertEquals(row.deviceWatts(), answers.number("gate", "receivable"), 0.07);
        assertEquals("port", answers.words("gate", "bound_by"));
        assertEquals(String.valueOf(number), answers.words("gate", "class_granted"));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8})
    void aClassAloneSaysDrawFloorAndPairs(int number) {
        PowerClass row = PowerClass.of(number);
        Answers answers = hung("class " + number, "type", "4").solved();
        answers.clean();
        assertEquals(row.deviceWatts(), answers.number("cam", "draw"));
        assertEquals(row.floorVolts(), answers.number("cam", "volts_floor"));
        assertEquals(String.valueOf(row.pairs()), answers.words("cable", "pairs"));
        assertEquals(row.portWatts(), answers.number("feed", "granted"));
    }

    @ParameterizedTest
    @CsvSource({
        "3.84 W, 1",
        "3.85 W, 2",
        "6.49 W, 2",
        "12.95 W, 3",
        "12.951 W, 4",
        "25.5 W, 4",
        "25.51 W, 5",
        "40 W, 5",
        "40.1 W, 6",
        "51 W, 6",
        "62 W, 7",
        "71.3 W, 8",
        "71.4 W, 8",
        "0 W, 1",
        "12.950000000000001 W, 3"
    })
    void aDrawLeadsToTheSmallestClassThatHoldsIt(String draw, String asked) {
        Answers answers = hung("draw " + draw, "type", "4").solved();
        assertEquals(asked, answers.words("cam", "class"));
        assertEquals(asked, answers.words("cam", "class_granted"));
    }

    @Test
    void aDrawGoesBeforeTheClassAndBothCanStand() {
        Answers answers = Draft.cold()
                .source("feed", "type", "4")
                .device("cam", "class", "6", "draw", "8 W")
                .run("cable", "feed", "cam", "length", "10 m")
                .solved();
        assertEquals("6", answers.words("cam", "class"));
        assertEquals(8, answers.number("cam", "draw"));
        assertEquals("4", answers.words("cable", "pairs"));
        assertEquals(42.5, answers.number("cam", "volts_floor"));
    }

    @Test
    void gearBehindAConverterDrawsWhatTheConverterLoses() {
        Answers answers = Draft.cold()
                .source("feed", "type", "4")
                .device("cam", "load", "15 W", "load_efficiency", "85 %", "class", "3")
                .device("plain", "load", "15 W")
                .run("r1", "feed", "cam", "length", "10 m")
                .run("r2", "feed", "plain", "length", "10 m")
                .solved();
        assertEquals(15 / 0.85, answers.number("cam", "draw"), 1e-12);
        assertEquals(17.6, answers.number("cam", "draw"), 0.05);
        assertEquals(15, answers.number("plain", "draw"));
        assertEquals("4", answers.words("plain", "class"));
        assertEquals("3", answers.words("cam", "class"));
        for (String draw : new String[] {"draw_typical", "draw_start"}) {
            assertEquals(15 / 0.85, answers.number("cam", draw), 1e-12);
        }
    }

    @Test
    void aDeviceWithNothingTypedLacksItsDraw() {
        Answers answers = hung("note hello").solved();
        for (String name : new String[] {"draw", "class", "volts", "amps", "watts", "powered"}) {
            Fault fault = answers.fault("cam", name);
            assertEquals(Fault.Kind.EMPTY, fault.kind(), name);
            assertEquals(new Place("devices", "cam", "draw"), fault.origin(), name);
        }
        assertEquals(Fault.Kind.EMPTY, answers.fault("cable", "amps").kind());
        assertEquals(0, answers.number("feed", "sent"));
    }

    /** A class asked for on a smaller port is granted as the class that fits, with that one's watts and pairs. */
    @ParameterizedTest
    @CsvSource({
        "90 W, 8, 71.3, 4", "75 W, 7, 62, 4", "60 W, 6, 51, 4", "45 W, 5, 40, 4", "30 W, 4, 25.5, 2",
        "15.4 W, 3, 12.95, 2", "7 W, 2, 6.49, 2", "4 W, 1, 3.84, 2", "89.9 W, 8, 71.3, 4", "89.8 W, 7, 62, 4"
    })
    void aSmallPortGrantsASmallerClass(String limit, String granted, double right, String pairs) {
        Answers answers = Draft.cold()
                .source("feed", "type", "4", "port_limit", limit, "budget", "500 W")
                .device("cam", "class", "8", "draw", "3 W")
                .edge("gate", "own_draw", "0 W", "efficiency", "100 %")
                .run("r1", "feed", "cam", "length", "1 m")
                .run("r2", "feed", "gate", "length", "0 m", "joints", "0")
                .solved();
        assertEquals(granted, answers.words("cam", "class_granted"));
        assertEquals(pairs, answers.words("r1", "pairs"));
        assertEquals("8", answers.words("cam", "class"));
        assertEquals(41.1, answers.number("cam", "volts_floor"));
        assertEquals(granted, answers.words("gate", "class_granted"));
        assertEquals(41.1, answers.number("gate", "volts_floor"));
        assertEquals(right, answers.number("gate", "available"), 1e-12);
        assertEquals("right", answers.words("gate", "bound_by"));
    }

    @ParameterizedTest
    @CsvSource({"1, 3", "2, 4", "3, 6", "4, 8"})
    void aTypeHasATopClass(String type, String top) {
        Answers answers = hung("class 8", "type", type).solved();
        assertEquals(top, answers.words("cam", "class_granted"));
    }

    @Test
    void aTypeThreePortOfThirtyWattsGrantsClassFour() {
        assertEquals(
                "4", hung("class 6", "type", "3", "port_limit", "30 W").solved().words("cam", "class_granted"));
    }

    @Test
    void aTypeDoesNotGrantMoreThanItsWattsWhateverThePortLimitSays() {
        assertEquals(
                "4", hung("class 8", "type", "2", "port_limit", "90 W").solved().words("cam", "class_granted"));
    }

    @Test
    void oneRunsOwnLimitCountsForItsPort() {
        Answers answers = Draft.cold()
                .source("feed", "type", "4", "budget", "200 W")
                .device("a", "class", "8")
                .device("b", "class", "8", "draw", "20 W")
                .run("ra", "feed", "a", "length", "10 m")
                .run("rb", "feed", "b", "length", "10 m", "port_limit", "30 W")
                .solved();
        assertEquals("8", answers.words("a", "class_granted"));
        assertEquals("4", answers.words("b", "class_granted"));
        assertEquals("2", answers.words("rb", "pairs"));
    }

    @Test
    void classZeroKeepsItsNameWhereItsWattsFit() {
        Answers answers = hung("class 0", "type", "3").solved();
        assertEquals("0", answers.words("cam", "class_granted"));
        assertEquals(12.95, answers.number("cam", "draw"));
        assertEquals(37, answers.number("cam", "volts_floor"));
        assertEquals(
                "2", hung("class 0", "type", "3", "port_limit", "7 W").solved().words("cam", "class_granted"));
    }

    @Test
    void aPortTooSmallForClassOneGrantsNothing() {
        Answers answers = Draft.cold()
                .source("feed", "type", "3", "port_limit", "3.8 W", "budget", "50 W")
                .device("cam", "class", "1")
                .edge("gate")
                .run("r1", "feed", "cam", "length", "1 m")
                .run("r2", "feed", "gate", "length", "1 m")
                .solved();
        Fault fault = answers.fault("cam", "class_granted");
        assertEquals(Fault.Kind.NOT_APPLICABLE, fault.kind());
        assertTrue(fault.text().contains("cam") && fault.text().contains("class 1"), fault.text());
        assertEquals("no", answers.words("cam", "powered"));
        assertTrue(answers.words("cam", "powered_why").contains("class 1"));
        assertEquals("no", answers.words("gate", "powered"));
        assertEquals(0, answers.number("gate", "available"));
        assertEquals("right", answers.words("gate", "bound_by"));
        assertEquals(
                Fault.Kind.ARITHMETIC, answers.fault("gate", "reserve_share").kind());
        assertEquals("2", answers.words("r1", "pairs"));
    }

    @Test
    void aPassiveFeedKnowsNoClassAndTypesItsVolts() {
        Answers empty = hung("draw 8 W", "type", "passive").solved();
        assertEquals(
                new Place("sources", "feed", "volts"),
                empty.fault("feed", "volts").origin());
        assertEquals(Fault.Kind.EMPTY, empty.fault("feed", "sent").kind());
        assertEquals(Fault.Kind.NOT_FED, empty.fault("cam", "volts").kind());
        assertTrue(empty.fault("cam", "volts").text().contains("volts is empty"));

        Answers answers = Draft.cold()
                .source("feed", "type", "passive", "volts", "24 V")
                .device("cam", "draw", "8 W", "volts_floor", "12 V")
                .device("bare", "draw", "8 W")
                .run("cable", "feed", "cam", "length", "10 m")
                .run("other", "feed", "bare", "length", "10 m")
                .solved();
        assertEquals("2", answers.words("cable", "pairs"));
        assertEquals(
                Fault.Kind.NOT_APPLICABLE, answers.fault("cam", "class_granted").kind());
        assertEquals("yes", answers.words("cam", "powered"));
        assertEquals(answers.number("cam", "volts") - 12, answers.number("cam", "headroom"));
        // a class's floor means nothing to a feed that knows no classes
        assertEquals(
                new Place("devices", "bare", "volts_floor"),
                answers.fault("bare", "headroom").origin());
        assertEquals(Fault.Kind.EMPTY, answers.fault("bare", "volts_floor").kind());
        assertTrue(answers.number("bare", "volts") > 20);
        // without a limit typed there is none, and nothing is reckoned as reserve
        assertEquals(
                Fault.Kind.NOT_APPLICABLE, answers.fault("feed", "available").kind());
        assertEquals(
                Fault.Kind.NOT_APPLICABLE,
                answers.fault("feed", "reserve_share").kind());
    }

    @Test
    void aSwitchOnAPassiveFeedMustSayItsFloor() {
        Draft draft = Draft.cold()
                .source("feed", "type", "passive", "volts", "48 V")
                .edge("gate", "own_draw", "2 W", "efficiency", "100 %")
                .run("cable", "feed", "gate", "length", "0 m", "joints", "0");
        assertEquals(
                new Place("switches", "gate", "volts_floor"),
                draft.solved().fault("gate", "volts_in").origin());
        draft.cell(Table.SWITCHES, "gate", "volts_floor", farwatt.plan.Cell.text("20 V"));
        Answers answers = draft.solved();
        assertEquals(48, answers.number("gate", "volts_in"));
        // neither class nor limit: nothing bounds it
        assertEquals(
                Fault.Kind.NOT_APPLICABLE, answers.fault("gate", "available").kind());
        draft.cell(Table.SOURCES, "feed", "budget", farwatt.plan.Cell.text("50 W"));
        assertEquals(48, draft.solved().number("gate", "available"), 1e-12);
    }

    @Test
    void defaultsOfASwitch() {
        Answers answers = Draft.cold()
                .source("feed", "type", "4")
                .edge("gate")
                .run("trunk", "feed", "gate", "length", "10 m")
                .solved();
        assertEquals("regulated", answers.words("gate", "mode"));
        assertEquals("2", answers.words("gate", "type"));
        assertEquals(8, answers.number("gate", "ports"));
        assertEquals(5, answers.number("gate", "own_draw"));
        assertEquals(0.92, answers.number("gate", "efficiency"), 1e-15);
        assertEquals("8", answers.words("gate", "uplink_class"));
        assertEquals("class", answers.words("gate", "uplink_right"));
        assertEquals(1, answers.number("gate", "through_drop"));
        assertEquals(2, answers.number("gate", "priority"));
        assertEquals("4", answers.words("trunk", "pairs"));
        assertEquals(1e9, answers.number("gate", "link"));
        assertEquals(5, answers.number("trunk", "received"), 1e-9);
        assertEquals("yes", answers.words("gate", "in_use"));
        assertEquals(0, answers.number("gate", "sent"));
    }
}
