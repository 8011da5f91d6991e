package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Table;
import farwatt.report.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Values that a person named, and cells that use them. */
class ValuesTest {

    private static Draft using(String draw) {
        return Draft.cold()
                .source("feed", "type", "4")
                .device("cam", "draw", draw)
                .run("cable", "feed", "cam", "length", "10 m");
    }

    @Test
    void cellsUseValuesOfEveryKind() {
        Answers answers = using("if dark then night_draw * scale else 6 W")
                .value("night_draw", "9 W")
                .value("dark", "yes")
                .value("scale", "1.5")
                .value("season", "\"winter\"")
                .value("air", "if season is \"winter\" then -5 degC else 20 degC")
                .value("wire", "22 AWG")
                .zone("quay", "ambient", "air")
                .device("lamp", "draw", "2 * night_draw")
                .run("lamp cable", "feed", "lamp", "length", "10 m")
                .cell(Table.RUNS, "cable", "gauge", Cell.text("wire"))
                .solved();
        answers.clean();
        assertEquals(13.5, answers.number("cam", "draw"));
        assertEquals(18, answers.number("lamp", "draw"));
        assertEquals(-5, answers.number("quay", "ambient"));
        assertEquals(22, answers.number("cable", "gauge"));
        assertEquals("9 W", answers.named(Table.VALUES, "night_draw").text());
        assertEquals("yes", answers.named(Table.VALUES, "dark").text());
        assertEquals("winter", answers.named(Table.VALUES, "season").text());
        assertEquals("1.5", answers.named(Table.VALUES, "scale").text());
    }

    @Test
    void valuesMayStandInAnyOrder() {
        Answers answers = using("a")
                .value("a", "b + c")
                .value("c", "2 * b")
                .value("b", "3 W")
                .solved();
        answers.clean();
        assertEquals(9, answers.number("cam", "draw"));
    }

    @Test
    void aNameThatOnlyLooksLikeAValuesMakesNoLoop() {
        // draw is a device's own name inside the gather, and a value outside of it
        Answers answers = using("4 W")
                .value("draw", "2 * most")
                .value("most", "greatest(draw of devices)")
                .solved();
        assertEquals(8, answers.named(Table.VALUES, "draw").inside());
        assertEquals(4, answers.named(Table.VALUES, "most").inside());
        assertEquals("engine.name_taken", answers.notices().get(0).code());
        assertEquals(1, answers.notices().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5 Wx", "other + 1 W", "5 W + 1 A", "yes +"})
    void whatUsesAValueThatIsNoneSaysWhichOne(String is) {
        Answers answers = using("if 1 > 2 then load_each else 2 * load_each")
                .value("load_each", is)
                .solved();
        Fault fault = answers.fault("cam", "draw");
        assertEquals(new Place("values", "", "load_each"), fault.origin());
        assertEquals(fault, answers.fault("cam", "volts"));
        assertEquals(fault, answers.named(Table.VALUES, "load_each").fault().orElseThrow());
        assertTrue(fault.text().contains("load_each"), fault.text());
    }

    @Test
    void aConditionOnAValueThatIsNoneIsNoEither() {
        Answers answers = using("if dark then 9 W else 6 W").value("dark", "").solved();
        assertEquals(
                new Place("values", "", "dark"), answers.fault("cam", "draw").origin());
        assertEquals(Fault.Kind.EMPTY, answers.fault("cam", "draw").kind());
    }

    @Test
    void aValueThatIsNoneSpoilsAGatherOverRows() {
        Answers answers = using("4 W")
                .value("limit", "5 apples")
                .value("many", "count(devices where draw < limit)")
                .solved();
        assertEquals(
                new Place("values", "", "limit"),
                answers.named(Table.VALUES, "many").fault().orElseThrow().origin());
    }

    @Test
    void valuesThatNeedEachOtherAreALoopAndTheRestIsNot() {
        Answers answers = using("free")
                .value("a", "b + 1 W")
                .value("b", "c + 1 W")
                .value("c", "if free > 1 W then a else 2 W")
                .value("reader", "2 * b")
                .value("free", "4 W")
                .value("self", "self + 1 W")
                .device("other", "draw", "reader")
                .solved();
        assertEquals(4, answers.number("cam", "draw"));
        var loops = answers.notices().stream()
                .filter(n -> n.code().equals(EngineCode.LOOP.key()))
                .toList();
        assertEquals(2, loops.size());
        String three = loops.get(0).text();
        assertTrue(three.contains("values · a → values · b → values · c → values · a"), three);
        assertTrue(loops.get(1).text().contains("values · self → values · self"));
        Fault fault = answers.fault("other", "draw");
        assertEquals(Fault.Kind.LOOP, fault.kind());
        assertEquals(three, fault.text());
        assertEquals(
                Fault.Kind.LOOP,
                answers.named(Table.VALUES, "c").fault().orElseThrow().kind());
    }

    @Test
    void aChainOfManyValuesWorks() {
        int count = Soak.times(10_000, 100_000);
        var rows = new java.util.ArrayList<farwatt.plan.Row>();
        for (int k = count; k > 0; k--) {
            rows.add(farwatt.plan.Row.of("v" + k).with("is", "v" + (k - 1) + " + 1 W"));
        }
        rows.add(farwatt.plan.Row.of("v0").with("is", "0 W"));
        var plan = using("v" + count).plan().with(Table.VALUES, farwatt.plan.Rows.of(rows));
        Answers answers = new Answers(Calculation.of(plan));
        answers.clean();
        assertEquals(count, answers.number("cam", "draw"));
    }

    @Test
    void aLoopOfManyValuesIsOneSentence() {
        int count = Soak.times(10_000, 100_000);
        var rows = new java.util.ArrayList<farwatt.plan.Row>();
        for (int k = 0; k < count; k++) {
            rows.add(farwatt.plan.Row.of("v" + k).with("is", "v" + (k + 1) % count + " + 1 W"));
        }
        var plan = using("v7").plan().with(Table.VALUES, farwatt.plan.Rows.of(rows));
        Answers answers = new Answers(Calculation.of(plan));
        assertEquals(Fault.Kind.LOOP, answers.fault("cam", "draw").kind());
        assertTrue(answers.notice(EngineCode.LOOP).text().length() < 400);
    }

    @Test
    void aValueCannotTakeAnAnswerAndTheNoticeNamesBoth() {
        Answers answers = using("v").value("v", "cable.loss").solved();
        var notice = answers.notice(EngineCode.USES_SOLVED);
        assertTrue(notice.text().contains("v ") && notice.text().contains("loss"), notice.text());
        assertEquals(Fault.Kind.UNREADABLE, answers.fault("cam", "draw").kind());
    }
}
