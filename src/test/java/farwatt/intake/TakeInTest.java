package farwatt.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lists taken into plans as one step. */
class TakeInTest {
    private static final Plan LANDING = Plan.EMPTY
            .and(Table.ZONES, Row.of("quay"))
            .and(Table.SWITCHES, Row.of("SW-1").with("zone", "quay"));

    private static Plan after(Plan plan, Taken taken) {
        return Edit.apply(plan, taken.batch().orElseThrow()).plan();
    }

    private static Taken take(Plan plan, String text) throws Exception {
        return TakeIn.into(plan, Lists.paste(text), TakeIn.Policy.SKIP, TakeIn.Known.UPDATE);
    }

    @Test
    void devicesRunsAndZonesComeInAsOneStepThatCanBeUndone() throws Exception {
        Taken taken = take(LANDING, "Name;W;m;Switch;Port;Area\nGate cam;6,5;62,5;sw 1;3;Quay\nHorn;3;20;SW-9;;Hall");
        Edit edit = Edit.apply(LANDING, taken.batch().orElseThrow());
        Plan plan = edit.plan();
        assertEquals(
                List.of("Gate cam", "Horn"), Lists.ids(plan.rows(Table.DEVICES).list()));
        assertEquals(List.of("quay", "Hall"), Lists.ids(plan.rows(Table.ZONES).list()));
        assertEquals(
                List.of("quay", "Hall"), Lists.cells(plan.rows(Table.DEVICES).list(), "zone"));
        Row run = plan.rows(Table.RUNS).at(0);
        assertEquals(
                List.of("run Gate cam", "SW-1", "Gate cam", "62.5 m", "3"),
                List.of(run.id(), run.text("from"), run.text("to"), run.text("length"), run.text("port")));
        assertEquals("", plan.rows(Table.RUNS).at(1).text("from"));
        assertEquals("feeder:SW-9", taken.questions().get(0).key());
        assertEquals(LANDING, Edit.apply(plan, edit.inverse()).plan());
    }

    @Test
    void theSameListTwiceChangesNothing() throws Exception {
        Outcome outcome = Lists.read("quantities/devices.csv");
        Plan once = after(Plan.EMPTY, TakeIn.into(Plan.EMPTY, outcome, TakeIn.Policy.SKIP, TakeIn.Known.UPDATE));
        Taken again = TakeIn.into(once, outcome, TakeIn.Policy.SKIP, TakeIn.Known.UPDATE);
        assertTrue(again.batch().isEmpty());
        assertEquals(8, again.same().size());
        assertEquals(List.of(), again.gone());
    }

    @Test
    void aNewerListAddsChangesAndTellsWhatIsGone() throws Exception {
        Plan first = after(LANDING, take(LANDING, "Name,W,m\ncam,6,20\nhorn,3,10\nlamp,8,12"));
        Taken taken = take(first, "Name,W,m\ncam,7,20\nhorn,3,10\ngate,5,30");
        assertEquals(List.of("gate"), taken.added());
        assertEquals(List.of("cam"), taken.changed());
        assertEquals(List.of("horn"), taken.same());
        assertEquals(List.of("lamp"), taken.gone());
        Plan second = after(first, taken);
        assertEquals("7 W", second.rows(Table.DEVICES).row("cam").orElseThrow().text("draw"));
        assertEquals(4, second.rows(Table.RUNS).size());
    }

    @Test
    void aNameThatMeansSomethingElseInThePlanGetsAFreeNumber() throws Exception {
        Plan plan = LANDING.and(Table.DEVICES, Row.of("Cam").with("zone", "quay"));
        Taken taken = take(plan, "Name,W,Area\ncam,6,Hall\nsw-1,3,Hall");
        assertEquals(List.of("cam 1", "sw-2"), taken.added());
    }

    @Test
    void heldRowsStopStayOutOrComeInNotInUse() throws Exception {
        Outcome outcome = Lists.paste("Name,W\ncam,6\nhorn,13d");
        assertTrue(TakeIn.into(LANDING, outcome, TakeIn.Policy.STOP, TakeIn.Known.UPDATE)
                .batch()
                .isEmpty());
        assertEquals(
                List.of("cam"),
                TakeIn.into(LANDING, outcome, TakeIn.Policy.SKIP, TakeIn.Known.UPDATE)
                        .added());
        Plan kept = after(LANDING, TakeIn.into(LANDING, outcome, TakeIn.Policy.KEEP, TakeIn.Known.UPDATE));
        Row horn = kept.rows(Table.DEVICES).row("horn").orElseThrow();
        assertEquals("no", horn.text("in_use"));
        assertTrue(horn.text("note").contains("13d"), horn.text("note"));
    }

    @Test
    void aNewerListSaysEveryCellThatDiffersAndAsks() throws Exception {
        Plan first = after(LANDING, take(LANDING, "Name,W,m\ncam,6,20\nhorn,3,10\nlamp,8,12"));
        Outcome newer = Lists.paste("Name,W,m\ncam,7,25\nhorn,3,10\ngate,5,30");
        Taken taken = TakeIn.into(first, newer, TakeIn.Manner.USUAL);
        assertEquals(
                List.of(
                        new Difference("cam", "draw", "6 W", "7 W"),
                        new Difference("run cam", "length", "20 m", "25 m")),
                taken.differences());
        assertEquals(
                List.of("known update", "gone leave"),
                taken.questions().stream().map(q -> q.key() + " " + q.used()).toList());
        Plan left = after(first, taken);
        assertEquals(
                List.of("cam", "horn", "lamp", "gate"),
                Lists.ids(left.rows(Table.DEVICES).list()));
    }

    @Test
    void whatTheListNoLongerNamesIsRemovedOrTakenOutOfUseWhereThatIsWished() throws Exception {
        Plan first = after(LANDING, take(LANDING, "Name,W,m\ncam,6,20\nhorn,3,10\nlamp,8,12"));
        Outcome newer = Lists.paste("Name,W,m\nhorn,4,10\ngate,5,30");
        TakeIn.Manner removing = new TakeIn.Manner(TakeIn.Policy.SKIP, TakeIn.Known.SKIP, TakeIn.Gone.REMOVE);
        Edit edit =
                Edit.apply(first, TakeIn.into(first, newer, removing).batch().orElseThrow());
        Plan removed = edit.plan();
        assertEquals(
                List.of("horn", "gate"), Lists.ids(removed.rows(Table.DEVICES).list()));
        assertEquals(
                List.of("run horn", "run gate"),
                Lists.ids(removed.rows(Table.RUNS).list()));
        assertEquals(
                "3 W", removed.rows(Table.DEVICES).row("horn").orElseThrow().text("draw"));
        assertEquals(first, Edit.apply(removed, edit.inverse()).plan());
        TakeIn.Manner resting = new TakeIn.Manner(TakeIn.Policy.SKIP, TakeIn.Known.UPDATE, TakeIn.Gone.OUT_OF_USE);
        Plan rested = after(first, TakeIn.into(first, newer, resting));
        assertEquals("no", rested.rows(Table.DEVICES).row("cam").orElseThrow().text("in_use"));
        assertEquals(4, rested.rows(Table.DEVICES).size());
    }

    @Test
    void whatFeedsIsBegunWhereThePersonSaysSo() throws Exception {
        Mapping answers = Mapping.NONE
                .withAnswer("feeder:pole", "new edge switch")
                .withAnswer("feeder:office", "new source")
                .withAnswer("feeder:quay box", "SW-1");
        Outcome outcome = Lists.paste(
                "Name,W,m,Switch\ncam,6,20,pole\nhorn,3,10,pole\nlamp,8,12,office\nsign,5,9,quay box",
                Wishes.NONE.with(answers));
        Taken taken = TakeIn.into(LANDING, outcome, TakeIn.Manner.USUAL);
        Plan plan = after(LANDING, taken);
        assertEquals(
                List.of("SW-1", "pole"), Lists.ids(plan.rows(Table.SWITCHES).list()));
        assertEquals(List.of("office"), Lists.ids(plan.rows(Table.SOURCES).list()));
        assertEquals(
                List.of("pole", "pole", "office", "SW-1"),
                Lists.cells(plan.rows(Table.RUNS).list(), "from"));
        assertEquals(List.of(), taken.notices());
        assertEquals(3, taken.questions().size());
    }
}
