package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Slips in who feeds whom: each is named, spoils what hangs on it and nothing else. */
class SlipsTest {
    private final Draft draft = Draft.cold()
            .source("other", "type", "4")
            .device("far cam", "draw", "6 W")
            .run("apart", "other", "far cam", "length", "20 m")
            .source("feed", "type", "4")
            .edge("gate")
            .run("trunk", "feed", "gate", "length", "50 m")
            .device("cam", "draw", "5 W")
            .run("short", "gate", "cam", "length", "10 m");
    private Answers answers = draft.solved();

    /** Whatever was done to the plan, the other tree stands and everything has a value or a reason. */
    @AfterEach
    void theRestComputes() {
        assertEquals(6, answers.number("far cam", "watts"));
        assertEquals("yes", answers.words("far cam", "powered"));
        Sound.check(answers.calculation());
    }

    private void notice(EngineCode code, Level level, Place place, String... said) {
        answers = draft.solved();
        Notice notice = answers.notice(code);
        assertEquals(level, notice.level());
        assertEquals(place, notice.place());
        for (String word : said) {
            assertTrue(notice.text().contains(word), notice.text());
        }
    }

    private void fault(String id, String name, Fault.Kind kind, Place origin, String... said) {
        Fault fault = answers.fault(id, name);
        assertEquals(kind, fault.kind(), fault.text());
        assertEquals(origin, fault.origin(), fault.text());
        for (String word : said) {
            assertTrue(fault.text().contains(word), fault.text());
        }
    }

    @Test
    void theWholePlanIsSoundToBeginWith() {
        answers.clean();
        assertEquals(5, answers.number("cam", "watts"));
    }

    @Test
    void fedTwice() {
        draft.run("second trunk", "other", "gate", "length", "10 m");
        Place gate = Place.row("switches", "gate");
        notice(EngineCode.FED_TWICE, Level.FAIL, gate, "gate", "trunk", "second trunk");
        assertEquals(1, answers.notices().size());
        for (String id : List.of("gate", "trunk", "second trunk", "cam", "short")) {
            String name = id.equals("gate") ? "volts_in" : id.equals("cam") ? "volts" : "amps";
            fault(id, name, Fault.Kind.NOT_FED, gate, "gate");
        }
        fault("cam", "volts", Fault.Kind.NOT_FED, gate, "cam", "hangs on gate", "twice");
        assertEquals(0, answers.number("feed", "sent"));
        assertEquals(1, answers.number("other", "ports_used"));
    }

    @Test
    void fedThriceIsOneNotice() {
        draft.run("second", "other", "gate", "length", "10 m").run("third", "other", "gate", "length", "10 m");
        notice(EngineCode.FED_TWICE, Level.FAIL, Place.row("switches", "gate"), "second", "third");
        fault("third", "amps", Fault.Kind.NOT_FED, Place.row("switches", "gate"));
    }

    @Test
    void twoFeedsOfWhichOneIsOutOfUseAreNone() {
        draft.run("second trunk", "other", "gate", "length", "10 m", "in_use", "no");
        answers = draft.solved();
        answers.clean();
        assertEquals(5, answers.number("cam", "watts"));
        fault("second trunk", "amps", Fault.Kind.OUT_OF_USE, Place.row("runs", "second trunk"), "second trunk");
    }

    private void ring() {
        draft.edge("sw a")
                .edge("sw b")
                .edge("sw c")
                .run("ab", "sw a", "sw b", "length", "9 m")
                .run("bc", "sw b", "sw c", "length", "9 m")
                .run("ca", "sw c", "sw a", "length", "9 m")
                .device("ring cam", "draw", "5 W")
                .run("to ring cam", "sw c", "ring cam", "length", "9 m");
    }

    @Test
    void aRingNamesItsMembersInOrder() {
        ring();
        Place head = Place.row("switches", "sw a");
        notice(EngineCode.RING, Level.FAIL, head, "sw a → sw b → sw c → sw a");
        assertEquals(1, answers.notices().size());
        for (String id : List.of("sw a", "sw b", "sw c")) {
            fault(id, "sent", Fault.Kind.NOT_FED, head, "ring");
        }
        fault("ab", "amps", Fault.Kind.NOT_FED, head);
        fault("ring cam", "volts", Fault.Kind.NOT_FED, head, "ring cam", "sw c", "ring");
        fault("to ring cam", "amps", Fault.Kind.NOT_FED, head);
        fault("ring cam", "powered", Fault.Kind.NOT_FED, head);
        assertEquals(5, answers.number("cam", "watts"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ab", "bc", "ca"})
    void aRingThatAnInUseOpensIsNone(String open) {
        ring();
        draft.value("spring", "no").cell(Table.RUNS, open, "in_use", Cell.text("spring"));
        answers = draft.solved();
        assertTrue(answers.notices().stream().noneMatch(n -> n.code().equals(EngineCode.RING.key())));
        // nothing else feeds what is left
        answers.notice(EngineCode.LEFT_OUT);
        draft.run("in", "feed", open.equals("ab") ? "sw b" : open.equals("bc") ? "sw c" : "sw a", "length", "5 m");
        answers = draft.solved();
        answers.clean();
        assertEquals(5, answers.number("ring cam", "watts"));
    }

    @Test
    void aRingOfOne() {
        draft.edge("sw a").run("loop", "sw a", "sw a", "length", "9 m");
        notice(EngineCode.RING, Level.FAIL, Place.row("switches", "sw a"), "sw a → sw a");
        fault("sw a", "sent", Fault.Kind.NOT_FED, Place.row("switches", "sw a"));
        fault("loop", "amps", Fault.Kind.NOT_FED, Place.row("switches", "sw a"));
    }

    @Test
    void aRingThatIsFedFromOutsideAsWellIsFedTwice() {
        ring();
        draft.run("in", "feed", "sw a", "length", "9 m");
        notice(EngineCode.FED_TWICE, Level.FAIL, Place.row("switches", "sw a"), "ca", "in");
        fault("ring cam", "volts", Fault.Kind.NOT_FED, Place.row("switches", "sw a"), "sw a");
    }

    @Test
    void nothingFeedsIt() {
        draft.edge("pole").device("pole cam", "draw", "5 W").run("drop", "pole", "pole cam", "length", "3 m");
        Place pole = Place.row("switches", "pole");
        notice(EngineCode.NOT_FED, Level.FAIL, pole, "pole");
        assertEquals(1, answers.notices().size());
        fault("pole", "volts_in", Fault.Kind.NOT_FED, pole, "No run feeds pole");
        fault("drop", "amps", Fault.Kind.NOT_FED, pole, "pole");
        fault("pole cam", "volts", Fault.Kind.NOT_FED, pole, "hangs on pole", "No run feeds pole");
        fault("pole cam", "class_granted", Fault.Kind.NOT_FED, pole);
        fault("pole", "traffic", Fault.Kind.NOT_FED, pole);
        fault("pole", "hop", Fault.Kind.NOT_FED, pole);
        fault("pole", "ports_used", Fault.Kind.NOT_FED, pole);
    }

    @ParameterizedTest
    @CsvSource({
        "from, nowhere, no_such_row",
        "from, cam, wrong_table",
        "from, duct, wrong_table",
        "from, '', run_end_empty"
    })
    void aRunThatComesFromNowhere(String end, String id, String code) {
        draft.bundle("duct").cell(Table.RUNS, "trunk", end, Cell.text(id));
        Place place = new Place("runs", "trunk", end);
        answers = draft.solved();
        List<Notice> here = answers.notices().stream()
                .filter(n -> n.place().equals(place) && n.level() == Level.FAIL)
                .toList();
        assertEquals(List.of("engine." + code), here.stream().map(Notice::code).toList());
        fault("trunk", "amps", id.isEmpty() ? Fault.Kind.NOT_FED : Fault.Kind.UNREADABLE, place, "trunk");
        fault("gate", "volts_in", Fault.Kind.NOT_FED, place, "gate", "trunk");
        fault("cam", "volts", Fault.Kind.NOT_FED, place, "cam", "trunk");
        assertEquals(1, answers.notices().size(), answers.notices().toString());
    }

    @ParameterizedTest
    @CsvSource({"nowhere, no_such_row", "feed, wrong_table", "'', run_end_empty"})
    void aRunThatLeadsNowhere(String id, String code) {
        draft.cell(Table.RUNS, "short", "to", Cell.text(id));
        Place place = new Place("runs", "short", "to");
        answers = draft.solved();
        assertEquals(
                List.of("engine." + code),
                answers.notices().stream()
                        .filter(n -> n.place().equals(place))
                        .map(Notice::code)
                        .toList());
        fault("short", "amps", id.isEmpty() ? Fault.Kind.NOT_FED : Fault.Kind.UNREADABLE, place, "short");
        assertEquals(0, answers.number("gate", "sent"));
        // what it should have fed is fed by nothing now
        answers.notice(EngineCode.NOT_FED);
    }

    @Test
    void whatLeadsToARowOutOfUseIsOutOfUseItself() {
        draft.cell(Table.SWITCHES, "gate", "in_use", Cell.NO);
        answers = draft.solved();
        Place gate = Place.row("switches", "gate");
        fault("trunk", "amps", Fault.Kind.OUT_OF_USE, gate, "gate");
        fault("short", "amps", Fault.Kind.OUT_OF_USE, gate, "gate");
        // nobody said that the camera is out of use, and nothing feeds it
        fault("cam", "volts", Fault.Kind.OUT_OF_USE, gate, "cam", "gate");
        assertEquals(0, answers.number("feed", "sent"));
        // who may not have thought of the camera is told
        notice(EngineCode.LEFT_OUT, Level.WARN, gate, "gate", "cam");
        assertEquals(1, answers.notices().size());
        assertEquals(6, answers.ofPlan("sent"), 0.1);
    }

    @Test
    void aRunToADeviceOutOfUseGoesWithIt() {
        draft.cell(Table.DEVICES, "cam", "in_use", Cell.NO).need("cables", "count(runs) is 2");
        answers = draft.solved();
        assertEquals(List.of(), answers.notices());
        fault("short", "amps", Fault.Kind.OUT_OF_USE, Place.row("devices", "cam"), "cam");
        assertTrue(answers.ofPlan("lost") > 0);
        assertEquals(70, answers.ofPlan("cable_length"));
        assertEquals(1, answers.named(Table.NEEDS, "cables").inside());
        assertTrue(answers.ofPlan("least_headroom") > 0);
    }

    @Test
    void whatHangsOnARunOutOfUseIsLeftOut() {
        draft.cell(Table.RUNS, "trunk", "in_use", Cell.NO);
        Place trunk = Place.row("runs", "trunk");
        notice(EngineCode.LEFT_OUT, Level.WARN, trunk, "trunk", "cam, gate");
        assertEquals(1, answers.notices().size());
        fault("cam", "volts", Fault.Kind.OUT_OF_USE, trunk, "cam", "trunk");
        fault("gate", "sent", Fault.Kind.OUT_OF_USE, trunk, "gate", "trunk");
        assertTrue(answers.ofPlan("least_headroom") > 0);
        assertTrue(answers.ofPlan("least_reserve_share") > 0);
    }

    @Test
    void anIdThatIsThereTwice() {
        draft.device("Cam", "draw", "3 W");
        answers = draft.solved();
        Notice notice = answers.notice(EngineCode.DUPLICATE_ID);
        assertEquals(Place.row("devices", "Cam"), notice.place());
        assertEquals(Level.FAIL, notice.level());
        assertEquals(5, answers.number("cam", "watts"));
        // the second one cannot be fed, which goes without saying
        assertEquals(1, answers.notices().size(), answers.notices().toString());
        Value second = answers.calculation().value(Table.DEVICES, 2, "volts");
        assertEquals(Place.row("devices", "Cam"), second.fault().orElseThrow().origin());
    }

    @Test
    void twoTablesShareTheirIds() {
        draft.zone("gate", "ambient", "30 degC");
        answers = draft.solved();
        // the zone comes first, and the runs that name the switch now name a zone
        Notice notice = answers.notice(EngineCode.DUPLICATE_ID);
        assertEquals(Place.row("switches", "gate"), notice.place());
        assertTrue(notice.text().contains("zones"), notice.text());
    }

    @ParameterizedTest
    @CsvSource({"nowhere, no_such_row", "cam, wrong_table"})
    void aZoneThatIsNone(String id, String code) {
        draft.cell(Table.RUNS, "trunk", "zone", Cell.text(id));
        Place place = new Place("runs", "trunk", "zone");
        answers = draft.solved();
        assertEquals(1, answers.notices().size(), answers.notices().toString());
        assertEquals("engine." + code, answers.notices().get(0).code());
        assertEquals(place, answers.notices().get(0).place());
        fault("trunk", "amps", Fault.Kind.UNREADABLE, place, "trunk", id);
        fault("cam", "volts", Fault.Kind.NOT_FED, place, "cam");
        assertEquals(0, answers.number("feed", "sent"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"feed", "gate", "cam"})
    void theZoneOfANodeThatIsNone(String node) {
        Table table = draft.plan().find(node).orElseThrow().table();
        draft.cell(table, node, "zone", Cell.text("nowhere"));
        Place place = new Place(table.key(), node, "zone");
        notice(EngineCode.NO_SUCH_ROW, Level.FAIL, place, "nowhere");
        assertEquals(place, answers.fault("cam", "volts").origin());
        assertEquals(
                place, answers.fault(node, node.equals("cam") ? "amps" : "sent").origin());
    }

    @Test
    void aBundleThatIsNone() {
        draft.cell(Table.RUNS, "short", "bundle", Cell.text("nowhere"));
        Place place = new Place("runs", "short", "bundle");
        notice(EngineCode.NO_SUCH_ROW, Level.FAIL, place, "nowhere");
        fault("short", "amps", Fault.Kind.UNREADABLE, place, "short", "nowhere");
        assertEquals(5, answers.number("gate", "received"));
    }

    @Test
    void aCellThatNoColumnCanHold() {
        draft.cell(Table.DEVICES, "cam", "draw", new Cell(Cell.Form.OTHER, "[1]"));
        answers = draft.solved();
        Place place = new Place("devices", "cam", "draw");
        assertEquals(place, answers.notices().get(0).place());
        fault("cam", "volts", Fault.Kind.UNREADABLE, place, "cam");
        draft.cell(Table.RUNS, "short", "to", new Cell(Cell.Form.OTHER, "null"));
        answers = draft.solved();
        fault("short", "amps", Fault.Kind.UNREADABLE, new Place("runs", "short", "to"));
    }

    @Test
    void aNumberWithoutAUnitInAFileIsAMistakeAndATextIsAQuestion() {
        draft.cell(Table.RUNS, "short", "length", Cell.number("12"));
        answers = draft.solved();
        fault("short", "amps", Fault.Kind.UNREADABLE, new Place("runs", "short", "length"));
        draft.cell(Table.RUNS, "short", "length", Cell.text("12"));
        answers = draft.solved();
        assertEquals(12, answers.number("short", "length"));
        assertEquals(Level.NOTE, answers.notices().get(0).level());
    }

    @ParameterizedTest
    @CsvSource({"values, wind", "practice, joint_ohms", "columns, tag", "needs, enough"})
    void namesThatAreThereTwice(String key, String name) {
        Table table = Table.of(key).orElseThrow();
        for (String is : List.of("1", "2")) {
            switch (table) {
                case VALUES -> draft.value(name, is);
                case PRACTICE -> draft.practice(name, "0." + is + " ohm");
                case COLUMNS -> draft.column(Table.DEVICES, name, is, "");
                default -> draft.need(name, is + " > 0");
            }
        }
        answers = draft.solved();
        Notice notice = answers.notice(EngineCode.DUPLICATE_ID);
        assertEquals(name, notice.place().row() + notice.place().name());
        assertEquals(1, answers.notices().size(), answers.notices().toString());
        if (table == Table.COLUMNS) {
            assertEquals(1, answers.number("cam", name));
        }
    }

    @Test
    void aConstantThatNobodyKnows() {
        draft.practice("joint_ohm", "0.05 ohm");
        answers = draft.solved();
        answers.clean();
        // the review asks about it; an edit of it is no reason to fall over
        answers.calculation()
                .apply(new farwatt.plan.Change.SetCell(
                        Table.PRACTICE, "joint_ohm", "is", java.util.Optional.of(Cell.text("1 ohm"))));
        assertEquals(5, answers.number("cam", "watts"));
    }
}
