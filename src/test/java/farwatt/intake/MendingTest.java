package farwatt.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rows held back are put right one by one and come in; that is the same as reading everything anew. */
class MendingTest {
    private static final String LIST = """
            Name;Power (W);Length (m);Serial
            cam 1;6.5;18;A1
            cam 2;about what the old one took;31;A2
            sign;;12;A3
            radio;14;far;A1
            Total;20.5;61;
            """;

    @Test
    void aHeldRowIsPutRightAndTaken() throws Exception {
        OpenList list = Intake.openPaste(LIST, Wishes.NONE, new Cancel());
        assertEquals(
                3,
                list.outcome().count(RowState.HELD_BACK),
                list.outcome().report().toString());
        list.mend("line 3", "Power (W)", "7");
        list.mend("line 4", "Power (W)", "9 W");
        Outcome mended = list.mend("line 5", "Length (m)", "24");
        assertEquals(0, mended.count(RowState.HELD_BACK), mended.report().toString());
        assertEquals(List.of("6.5 W", "7 W", "9 W", "14 W"), Lists.cells(mended.devices(), "draw"));
        assertEquals(List.of("18 m", "31 m", "12 m", "24 m"), Lists.cells(mended.runs(), "length"));
        assertEquals(RowState.CHANGED, Lists.line(mended, "line 3").state());
        assertTrue(
                Lists.line(mended, "line 3").said().contains("put right by hand: 7"),
                mended.report().toString());
        assertEquals(
                4,
                TakeIn.into(Plan.EMPTY, mended, TakeIn.Policy.STOP, TakeIn.Known.UPDATE)
                        .added()
                        .size());
    }

    @Test
    void remarksThatDependOnOtherRowsFollow() throws Exception {
        OpenList list = Intake.openPaste(LIST, Wishes.NONE, new Cancel());
        assertTrue(Lists.line(list.outcome(), "line 2").codes().contains("intake.same_identifier"));
        Outcome mended = list.mend("line 5", "Serial", "A4");
        assertEquals(List.of(), Lists.line(mended, "line 2").codes());
        list.mend("line 2", "Name", "sign");
        Outcome twice = list.mend("line 4", "Power (W)", "9");
        assertEquals(
                2,
                twice.devices().stream().filter(d -> d.id().startsWith("sign")).count());
    }

    @Test
    void aPlaceThatIsNotThereIsRefused() throws Exception {
        OpenList list = Intake.openPaste(LIST, Wishes.NONE, new Cancel());
        assertThrows(Refusal.class, () -> list.mend("line 50", "Power (W)", "7"));
        assertThrows(Refusal.class, () -> list.mend("line 3", "Colour", "7"));
    }

    @Test
    void mendingRowByRowIsReadingEverythingAnew() throws Exception {
        long seed = 4100;
        System.out.println("mending seed " + seed);
        Random random = new Random(seed);
        String[] texts = {"8", "9,5 W", "12 m", "cam 1", "", "3-5 W", "?", "gate", "A1"};
        String[] headings = {"Name", "Power (W)", "Length (m)", "Serial"};
        for (int round = 0; round < 60; round++) {
            OpenList list = Intake.openPaste(LIST, Wishes.NONE, new Cancel());
            for (int mend = 0; mend < 4; mend++) {
                String place = "line " + (2 + random.nextInt(4));
                String heading = headings[random.nextInt(headings.length)];
                Outcome quick = list.mend(place, heading, texts[random.nextInt(texts.length)]);
                Outcome anew = Intake.paste(LIST, list.wishes(), new Cancel());
                assertEquals(anew.devices(), quick.devices(), "round " + round + list.wishes());
                assertEquals(anew.runs(), quick.runs());
                assertEquals(Lists.states(anew), Lists.states(quick));
                assertEquals(
                        anew.report().stream().map(ReportLine::codes).toList(),
                        quick.report().stream().map(ReportLine::codes).toList());
                assertEquals(anew.totals(), quick.totals());
            }
        }
    }
}
