package farwatt.catalogue.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import farwatt.catalogue.TokenWording;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Place;
import java.util.List;
import org.junit.jupiter.api.Test;

class DropTest {
    @Test
    void aNodeTakesItsRunsWithItAndSaysWhoStillRefers() {
        Plan plan = Ferry.plan();
        Drop drop = drop(plan, Table.SWITCHES, "gate");
        Plan after = Edit.apply(plan, drop.change()).plan();
        assertEquals("Drop gate", drop.change().label());
        assertEquals(0, after.rows(Table.RUNS).size());
        assertEquals(0, after.rows(Table.SWITCHES).size());
        assertEquals(1, after.rows(Table.DEVICES).size(), "what hung on it stays, without a feed");
        assertEquals(
                List.of("trunk", "run cam 1"),
                drop.alsoGone().stream().map(Place::row).toList());
        assertEquals(
                List.of("gate stands · holds", "more", "winter"),
                drop.stillRefer().stream().map(Place::text).toList());
    }

    @Test
    void aDeviceTakesOnlyItsOwnRun() {
        Plan plan = Ferry.plan();
        Drop drop = drop(plan, Table.DEVICES, "cam 1");
        assertEquals(
                List.of("run cam 1"), drop.alsoGone().stream().map(Place::row).toList());
        assertEquals(
                List.of("night_draw · is", "winter", "more"),
                drop.stillRefer().stream().map(Place::text).toList());
        assertEquals(1, Edit.apply(plan, drop.change()).plan().rows(Table.RUNS).size());
    }

    @Test
    void aZoneGoesAloneAndIsMissedByWhatStandsInIt() {
        Drop drop = drop(Ferry.plan(), Table.ZONES, "quay");
        assertEquals(List.of(), drop.alsoGone());
        assertEquals(
                List.of("feed · zone", "gate · zone", "cam 1 · zone", "winter", "more"),
                drop.stillRefer().stream().map(Place::text).toList());
    }

    @Test
    void aValueIsMissedByTheExpressionsThatUseIt() {
        assertEquals(
                List.of("night_draw · is", "winter"),
                drop(Ferry.plan(), Table.VALUES, "dark").stillRefer().stream()
                        .map(Place::text)
                        .toList());
    }

    @Test
    void oneOfTwinsGoesAlone() {
        Plan twins = Ferry.plan().and(Table.DEVICES, Row.of("CAM 1"));
        Drop drop = Drop.of(twins, Table.DEVICES, 1, new TokenWording());
        assertEquals(List.of(), drop.alsoGone());
        assertEquals(List.of(), drop.stillRefer());
    }

    @Test
    void droppingCanBeUndone() {
        Plan plan = Ferry.plan();
        Edit edit = Edit.apply(plan, Drop.change(plan, Table.SWITCHES, 0));
        assertEquals(plan, Edit.apply(edit.plan(), edit.inverse()).plan());
    }

    private static Drop drop(Plan plan, Table table, String id) {
        return Drop.of(plan, table, plan.rows(table).place(id), new TokenWording());
    }
}
