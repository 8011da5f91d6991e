package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Table;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expressions in cells, own columns and needs. */
class ExpressionsTest {

    static Draft site() {
        return Draft.cold()
                .zone("quay", "ambient", "24 degC", "sun", "4 K")
                .source("feed", "type", "4", "zone", "quay")
                .edge("gate", "zone", "quay", "type", "3", "grants_by", "measured")
                .edge("pole", "type", "3", "grants_by", "measured")
                .run("trunk", "feed", "gate", "length", "60 m")
                .run("link", "gate", "pole", "length", "20 m")
                .device("cam 1", "draw", "5 W", "zone", "quay", "kind", "fixed camera")
                .device("cam 2", "draw", "7 W", "kind", "fixed camera")
                .device("lamp", "draw", "20 W", "kind", "light")
                .run("r1", "gate", "cam 1", "length", "10 m")
                .run("r2", "pole", "cam 2", "length", "15 m")
                .run("r3", "pole", "lamp", "length", "25 m");
    }

    /** The value of a derived column of switches in two rows. */
    private static void onSwitches(String is, String unit, double gate, double pole) {
        Answers answers = site().column(Table.SWITCHES, "mine", is, unit).solved();
        answers.clean();
        assertEquals(gate, answers.number("gate", "mine"), Math.abs(gate) * 1e-12, is);
        assertEquals(pole, answers.number("pole", "mine"), Math.abs(pole) * 1e-12, is);
        Sound.check(answers.calculation());
    }

    @Test
    void gathersOverAllOnAndUnder() {
        onSwitches("total(draw of devices)", "W", 32, 32);
        onSwitches("total(draw of devices on this)", "W", 5, 27);
        onSwitches("total(draw of devices under this)", "W", 32, 27);
        onSwitches("count(devices under this where kind is \"fixed camera\")", "", 2, 1);
        onSwitches("greatest(length of runs under this)", "m", 25, 25);
        onSwitches("least(length of runs on this)", "m", 10, 15);
        onSwitches("mean(draw of devices under this where draw < 10 W)", "W", 6, 7);
        onSwitches("if every(powered of devices under this) then 1 else 0", "", 1, 1);
        onSwitches("if some(draw > 10 W of devices on this) then 1 else 0", "", 0, 1);
        onSwitches("count(switches under this)", "", 1, 0);
        onSwitches("count(devices where draw > this.own_draw)", "", 2, 2);
        onSwitches("total(draw of devices under feed)", "W", 32, 32);
        onSwitches("total(draw of devices on pole) + own_draw", "W", 32, 32);
        onSwitches("total(total(draw of devices on this) of switches)", "W", 10, 54);
    }

    @Test
    void relationsAndPathsLeadOn() {
        onSwitches("run.length + feeder.ports * 1 m", "m", 61, 28);
        onSwitches("run.from.ports * 1", "", 1, 8);
        Answers answers = site().column(Table.DEVICES, "air", "zone.ambient + zone.sun", "degC")
                .column(Table.RUNS, "asked", "if to.zone.outdoor then 1 else 2", "")
                .column(Table.DEVICES, "chain", "feeder.own_draw + run.loss * 0", "W")
                .solved();
        assertEquals(28, answers.number("cam 1", "air"));
        assertEquals(5, answers.number("cam 2", "chain"));
        assertEquals(2, answers.number("r1", "asked"));
        // no zone to ask
        assertEquals(Fault.Kind.NOT_APPLICABLE, answers.fault("cam 2", "air").kind());
        assertTrue(answers.fault("cam 2", "air").text().contains("cam 2"));
        assertEquals(Fault.Kind.NOT_APPLICABLE, answers.fault("r2", "asked").kind());
    }

    @Test
    void aNameThatOneOfTwoTablesLacksIsAFaultThere() {
        Answers answers =
                site().column(Table.RUNS, "above", "from.own_draw", "W").solved();
        answers.clean();
        Fault fault = answers.fault("trunk", "above");
        assertEquals(Fault.Kind.NOT_APPLICABLE, fault.kind());
        assertTrue(fault.text().contains("feed") && fault.text().contains("own_draw"), fault.text());
        assertEquals(5, answers.number("link", "above"));
    }

    @Test
    void aColumnMayGoDownTheTree() {
        Answers answers = site().column(Table.SOURCES, "path", "0 m", "m")
                .column(Table.SWITCHES, "path", "feeder.path + run.length", "m")
                .column(Table.DEVICES, "path", "feeder.path + run.length", "m")
                .solved();
        answers.clean();
        assertEquals(80, answers.number("pole", "path"));
        assertEquals(105, answers.number("lamp", "path"));
        assertEquals(70, answers.number("cam 1", "path"));
    }

    @Test
    void goingDownTheTreeWithoutAUnitSaysWhatIsMissing() {
        Answers answers = site().column(Table.SWITCHES, "path", "feeder.path + run.length", "")
                .solved();
        Notice notice = answers.notice(EngineCode.UNTYPED);
        assertTrue(notice.text().contains("path") && notice.text().contains("unit"), notice.text());
        assertTrue(answers.value("pole", "path").fault().isPresent());
    }

    @Test
    void ownColumnsUseEachOtherInAnyOrderAndTypesFollow() {
        Answers answers = site().column(Table.RUNS, "c", "b / 2", "")
                .column(Table.RUNS, "b", "a * 3", "")
                .column(Table.RUNS, "a", "loss + stray", "")
                .input(Table.RUNS, "stray", "W")
                .cell(Table.RUNS, "trunk", "stray", Cell.text("2 W"))
                .cell(Table.RUNS, "link", "stray", Cell.text("trunk.length * 0.1 W/m"))
                .solved();
        answers.clean();
        double loss = answers.number("trunk", "loss");
        assertEquals((loss + 2) * 1.5, answers.number("trunk", "c"), 1e-12);
        assertTrue(answers.words("trunk", "c").endsWith(" W"), answers.words("trunk", "c"));
        assertEquals(6, answers.number("link", "stray"));
        assertEquals(Fault.Kind.EMPTY, answers.fault("r1", "c").kind());
        assertEquals(new Place("runs", "r1", "stray"), answers.fault("r1", "c").origin());
    }

    @Test
    void columnsThatNeedEachOtherAreALoopWhereTheyDoAndNowhereElse() {
        Answers answers = site().column(Table.RUNS, "a", "if length > 30 m then b else 1 W", "W")
                .column(Table.RUNS, "b", "a + 1 W", "W")
                .column(Table.RUNS, "reader", "2 * b", "W")
                .column(Table.RUNS, "apart", "2 * loss", "W")
                .solved();
        Fault fault = answers.fault("trunk", "reader");
        assertEquals(Fault.Kind.LOOP, fault.kind());
        assertTrue(fault.text().contains("trunk · a → trunk · b → trunk · a"), fault.text());
        assertEquals(answers.number("trunk", "loss") * 2, answers.number("trunk", "apart"));
        long loops = answers.notices().stream()
                .filter(n -> n.code().equals(EngineCode.LOOP.key()))
                .count();
        // what an expression may look at decides, so that an answer does not come and go with a length
        assertEquals(5, loops);
    }

    @Test
    void aLoopThroughAGatherNamesIt() {
        Answers answers = site().column(Table.DEVICES, "mine", "total(mine of devices) / 2", "W")
                .solved();
        Fault fault = answers.fault("cam 1", "mine");
        assertEquals(Fault.Kind.LOOP, fault.kind());
        assertTrue(fault.text().contains("total(mine of devices)"), fault.text());
    }

    @Test
    void givenCellsLookAtGivenCellsOfOtherRowsAndGathers() {
        Answers answers = site().input(Table.DEVICES, "share", "")
                .cell(Table.DEVICES, "lamp", "share", Cell.text("lamp.draw / 40 W"))
                .cell(Table.DEVICES, "cam 1", "share", Cell.text("1"))
                .device(
                        "sum",
                        "draw",
                        "total(share of devices where kind is not \"\") * 1 W",
                        "class",
                        "3",
                        "share",
                        "9")
                .run("rs", "gate", "sum", "length", "longest - 5 m")
                .value("longest", "greatest(length of runs where from is gate)")
                .solved();
        // the longest run on the gate would be this one, whose length needs it
        assertEquals(Fault.Kind.LOOP, answers.fault("rs", "length").kind());
        assertEquals(Fault.Kind.EMPTY, answers.fault("sum", "draw").kind());
    }

    @ParameterizedTest
    @ValueSource(strings = {"run.loss", "powered", "feeder.available", "total(loss of runs) * 1", "plan.sent"})
    void aGivenCellCannotTakeAnAnswer(String is) {
        Answers answers = site().cell(
                        Table.DEVICES, "cam 1", "draw", Cell.text("if 1 W < 2 W then 5 W else 0 W + " + is))
                .solved();
        List<Notice> said = answers.notices();
        assertEquals(1, said.size(), said.toString());
        assertEquals(new Place("devices", "cam 1", "draw"), said.get(0).place());
        if (said.get(0).code().equals(EngineCode.USES_SOLVED.key())) {
            String name = is.replaceAll(".*\\.|total\\(| of runs.*", "");
            assertTrue(said.get(0).text().contains("draw") && said.get(0).text().contains(name), said.toString());
        }
        assertEquals(Fault.Kind.UNREADABLE, answers.fault("cam 1", "draw").kind());
        assertEquals(7, answers.number("cam 2", "draw"));
    }

    @Test
    void aFaultSaysWhereItBegan() {
        Answers answers = site().value("none", "0 W")
                .cell(Table.DEVICES, "cam 1", "draw", Cell.text("5 W * (1 W / none)"))
                .column(Table.DEVICES, "twice", "2 * draw", "W")
                .column(Table.SWITCHES, "below", "total(twice of devices under this)", "W")
                .solved();
        Place origin = new Place("devices", "cam 1", "draw");
        Fault fault = answers.fault("cam 1", "draw");
        assertEquals(Fault.Kind.ARITHMETIC, fault.kind());
        assertEquals(origin, fault.origin());
        assertEquals(fault, answers.fault("gate", "below"));
        assertEquals(fault, answers.fault("cam 1", "volts"));
        assertEquals(54, answers.number("pole", "below"));
    }

    @ParameterizedTest
    @CsvSource({
        "total(5 W / (draw - 7 W) of devices), 0, cam 2",
        "total(sqrt(6 - draw / 1 W) of devices), 0, cam 2",
        "'least(1 / (draw - 20 W) of devices where draw > 10 W)', 0, lamp"
    })
    void aFaultInsideAGatherNamesTheRow(String is, String unused, String row) {
        for (int round = 0; round < 2; round++) {
            Answers answers = site().value("sum", "1 * " + is)
                    .column(Table.RUNS, "zz", "1 / (length - length) * " + round, "1/m")
                    .solved();
            Fault fault = answers.named(Table.VALUES, "sum").fault().orElseThrow();
            assertEquals(Fault.Kind.ARITHMETIC, fault.kind());
            assertEquals(Place.row("devices", row), fault.origin());
        }
    }

    @Test
    void sumsTooLargeForANumberAreNone() {
        String huge = "1e308 W";
        Answers answers = site().input(Table.DEVICES, "huge", "W")
                .cell(Table.DEVICES, "cam 1", "huge", Cell.text(huge))
                .cell(Table.DEVICES, "cam 2", "huge", Cell.text(huge))
                .cell(Table.DEVICES, "lamp", "huge", Cell.text(huge))
                .value("sum", "total(huge of devices)")
                .value("middle", "mean(huge of devices)")
                .value("product", "1e200 W * 1e200")
                .column(Table.SWITCHES, "below", "total(huge of devices under this)", "W")
                .solved();
        for (String value : List.of("sum", "middle", "product")) {
            assertEquals(
                    Fault.Kind.ARITHMETIC,
                    answers.named(Table.VALUES, value).fault().orElseThrow().kind(),
                    value);
        }
        assertEquals(Fault.Kind.ARITHMETIC, answers.fault("gate", "below").kind());
        Sound.check(answers.calculation());
    }

    @Test
    void gathersOverNoRowsHaveASumAndNoMean() {
        Answers answers = Draft.cold()
                .value("sum", "total(draw of devices)")
                .value("many", "count(devices)")
                .value("all", "every(draw > 1 W of devices)")
                .value("any", "some(draw > 1 W of devices)")
                .value("middle", "mean(draw of devices)")
                .value("least_draw", "least(draw of devices)")
                .solved();
        assertEquals(0, answers.named(Table.VALUES, "sum").inside());
        assertEquals(0, answers.named(Table.VALUES, "many").inside());
        assertEquals(1, answers.named(Table.VALUES, "all").inside());
        assertEquals(0, answers.named(Table.VALUES, "any").inside());
        for (String value : List.of("middle", "least_draw")) {
            Fault fault = answers.named(Table.VALUES, value).fault().orElseThrow();
            assertEquals(Fault.Kind.ARITHMETIC, fault.kind());
            assertTrue(fault.text().contains("devices"), fault.text());
        }
    }

    @Test
    void aGatherThatIsDecidedDoesNotMindAFaultBehind() {
        // the same over all rows as over the rows below a node
        Draft draft = site().device("zz", "draw", "what ever", "class", "3").run("rz", "gate", "zz", "length", "5 m");
        draft.value("all", "every(draw > 6 W of devices)").value("below", "every(draw > 6 W of devices under feed)");
        draft.value("any", "some(draw < 6 W of devices)").value("any_below", "some(draw < 6 W of devices under feed)");
        Answers answers = draft.solved();
        assertEquals(0, answers.named(Table.VALUES, "below").inside());
        assertEquals(0, answers.named(Table.VALUES, "all").inside());
        assertEquals(1, answers.named(Table.VALUES, "any_below").inside());
        assertEquals(1, answers.named(Table.VALUES, "any").inside());
    }

    @Test
    void needs() {
        Answers answers = site().need("reserve", "least(reserve_share of switches) >= reserve_target")
                .need("tight", "gate.reserve_share > 99 %")
                .need("broken", "gate.reserve_share >")
                .need("no answer", "gate.ports")
                .need("empty", "")
                .row(Table.NEEDS, "soft", "holds", "plan.lost < 1 kW", "level", "warn")
                .solved();
        assertEquals(1, answers.named(Table.NEEDS, "reserve").inside());
        assertEquals(0, answers.named(Table.NEEDS, "tight").inside());
        assertEquals(
                new Place("needs", "", "broken"),
                answers.named(Table.NEEDS, "broken").fault().orElseThrow().origin());
        assertEquals(
                Fault.Kind.UNREADABLE,
                answers.named(Table.NEEDS, "no answer").fault().orElseThrow().kind());
        assertEquals(
                Fault.Kind.EMPTY,
                answers.named(Table.NEEDS, "empty").fault().orElseThrow().kind());
        int soft = answers.calculation().plan().rows(Table.NEEDS).place("soft");
        assertEquals(
                "warn", answers.calculation().value(Table.NEEDS, soft, "level").text());
        assertEquals(
                "fail", answers.calculation().value(Table.NEEDS, 0, "level").text());
        assertEquals(2, answers.notices().size());
    }

    @Test
    void namesOfThePlanAndConstantsCanBeUsed() {
        Answers answers = site().settings("heat_margin", "0", "slack", "25 %")
                .practice("joint_ohms", "0.05 ohm")
                .value("with_slack", "trunk.length * (1 + slack)")
                .value("joints_of_trunk", "trunk.joints * joint_ohms")
                .value("target", "plan.reserve_target")
                .solved();
        answers.clean();
        assertEquals(75, answers.named(Table.VALUES, "with_slack").inside());
        assertEquals(0.1, answers.named(Table.VALUES, "joints_of_trunk").inside(), 1e-15);
        assertEquals(
                "20 %", "" + Math.round(answers.named(Table.VALUES, "target").inside() * 100) + " %");
    }

    @Test
    void constantsMayLookAtValues() {
        Answers answers = site().value("salty", "yes")
                .practice("joint_ohms", "if salty then 0.1 ohm else 0.03 ohm")
                .solved();
        answers.clean();
        assertEquals(
                site().practice("joint_ohms", "0.1 ohm").solved().number("trunk", "loop"),
                answers.number("trunk", "loop"));
    }

    @Test
    void ownColumnsThatCannotBe() {
        Answers answers = site().row(Table.COLUMNS, "mine", "table", "cables", "is", "1")
                .column(Table.RUNS, "length", "1 m", "m")
                .column(Table.DEVICES, "feeder", "1", "")
                .column(Table.RUNS, "odd", "1 m", "furlong")
                .column(Table.RUNS, "bad", "nothing + 1", "")
                .column(Table.RUNS, "reader", "bad * 2", "")
                .solved();
        answers.notice(EngineCode.UNKNOWN_TABLE);
        answers.notice(EngineCode.UNKNOWN_UNIT);
        assertEquals(
                2,
                answers.notices().stream()
                        .filter(n -> n.code().equals(EngineCode.COLUMN_TAKEN.key()))
                        .count());
        assertEquals(60, answers.number("trunk", "length"));
        assertEquals(
                new Place("columns", "", "bad"),
                answers.fault("trunk", "reader").origin());
        assertEquals(5, answers.notices().size(), answers.notices().toString());
        Sound.check(answers.calculation());
    }

    /** What a column cannot hold is refused as well where an expression makes it. */
    @ParameterizedTest
    @CsvSource({
        "devices, cam 1, draw, 1 W - 5 W",
        "runs, trunk, length, 5 m - 10 m",
        "switches, gate, efficiency, 1 - 1",
        "switches, gate, efficiency, 3 * 50 %",
        "switches, gate, volts, 5 V - 5 V",
        "sources, feed, volts, -1 * 50 V",
        "runs, trunk, cable_diameter, 1 mm - 1 mm",
        "runs, trunk, joints, 1 / 2",
        "zones, quay, ambient, 5 degC - 400 K",
        "bundles, duct, others, 3 - 5"
    })
    void anExpressionCannotMakeWhatACellCannotHold(String table, String id, String name, String is) {
        Draft draft = site().bundle("duct");
        draft.cell(Table.RUNS, "trunk", "bundle", Cell.text("duct"))
                .cell(Table.RUNS, "trunk", "zone", Cell.text("quay"));
        draft.cell(Table.of(table).orElseThrow(), id, name, Cell.text(is));
        Answers answers = draft.solved();
        Place place = new Place(table, id, name);
        Fault fault = answers.fault(id, name);
        assertEquals(place, fault.origin());
        assertEquals(Fault.Kind.UNREADABLE, fault.kind());
        assertEquals(place, answers.fault("cam 1", "volts").origin());
        Sound.check(answers.calculation());
    }

    @ParameterizedTest
    @ValueSource(strings = {"-273 degC", "-250 degC", "-240 degC"})
    void coldBeyondAllFormulasIsNoTemperature(String air) {
        Answers answers = site().cell(Table.ZONES, "quay", "ambient", Cell.text(air))
                .cell(Table.RUNS, "r1", "zone", Cell.text("quay"))
                .solved();
        Fault fault = answers.fault("cam 1", "volts");
        assertTrue(fault.text().contains("so cold"), fault.text());
        Sound.check(answers.calculation());
    }
}
