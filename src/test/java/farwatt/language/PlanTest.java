package farwatt.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import farwatt.quantity.Decimal;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a planned formula tells the host about itself. */
class PlanTest {
    private final Site site = new Site();

    private Planned plan(String row, String text, Hoist hoist) {
        Scope scope = site.at(row);
        Checked checked = Language.check(Language.parse(text, Site.UNITS, Decimal.POINT), scope, Wanted.ANY);
        assertEquals(List.of(), checked.problems());
        return Language.plan(checked, scope, hoist);
    }

    private String reads(Uses uses) {
        return uses.reads().stream().map(this::read).collect(Collectors.joining(" "));
    }

    private String read(Read read) {
        return way(read.way()) + "/" + ((Site.Col) read.column()).name;
    }

    private String way(Way way) {
        String start = way.start() == Way.Start.FIXED
                ? way.row() < site.ids.size() && !way.links().isEmpty() ? site.ids.get(way.row()) : "" + way.row()
                : way.start().name();
        return start + way.links().stream().map(l -> ">" + ((Site.Col) l).name).collect(Collectors.joining());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '§',
            value = {
                "cam 1 § draw + load § HERE/draw HERE/load",
                "cam 1 § draw + spare § HERE/draw 0/spare",
                "cam 1 § feeder.run.loss § HERE>feeder>run/loss",
                "cam 1 § this.zone.ambient § SELF>zone/ambient",
                "cam 1 § 'edge 1'.sent § 5/sent",
                "cam 1 § 'edge 1'.zone.sun § edge 1>zone/sun",
                "cam 1 § plan.lost § 0/lost",
                "cam 1 § (if dark then feeder else gate).sent § 0/dark HERE>feeder/sent 3/sent",
                "cam 1 § favourite.sent § 0/favourite ANY/sent",
                "cam 1 § favourite.zone.sun § 0/favourite ANY>zone/sun",
                "cam 1 § if dark then draw else load § 0/dark HERE/draw HERE/load",
                "cam 1 § feeder is gate § ''",
            })
    void saysEveryColumnItMayRead(String row, String text, String expected) {
        assertEquals(expected, reads(plan(row, text, Hoist.NONE).uses()));
    }

    @Test
    void saysWhichRowsItGoesToWithoutReadingThere() {
        Uses uses = plan("cam 1", "feeder.feeder is gate", Hoist.NONE).uses();
        assertEquals(
                List.of("HERE>feeder", "HERE>feeder>feeder", "3"),
                uses.ways().stream().map(this::way).toList());
    }

    @Test
    void aReadCarriesItsPathForExplanation() {
        Uses uses = plan("cam 1", "feeder.run.loss + draw", Hoist.NONE).uses();
        assertEquals(
                List.of("feeder.run.loss", "draw"),
                uses.reads().stream().map(r -> Language.print(r.expr())).toList());
    }

    @Test
    void aGatherKeepsWhatItReadsToItself() {
        Uses uses = plan(
                        "gate", "own_draw + total(draw * this.efficiency of devices on this where powered)", Hoist.NONE)
                .uses();
        assertEquals("HERE/own_draw", reads(uses));
        assertEquals(
                List.of("HERE", "SELF"), uses.ways().stream().map(this::way).toList());
        GatherPlan gather = uses.gathers().get(0);
        assertEquals(Reach.ON, gather.reach());
        assertEquals(List.of("SELF"), gather.baseWays().stream().map(this::way).toList());
        assertEquals("HERE/powered HERE/draw SELF/efficiency", reads(gather.uses()));
        assertFalse(gather.standsAlone());
    }

    @Test
    void innerGathersStandWithTheOuterOne() {
        Uses uses = plan("-", "total(total(load of devices on feeder) + draw of devices)", Hoist.NONE)
                .uses();
        assertEquals("", reads(uses));
        GatherPlan outer = uses.gathers().get(0);
        assertEquals("HERE/draw", reads(outer.uses()));
        assertEquals("HERE/load", reads(outer.uses().gathers().get(0).uses()));
        assertEquals(
                List.of("HERE>feeder"),
                outer.uses().gathers().get(0).baseWays().stream().map(this::way).toList());
        assertTrue(outer.standsAlone());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '§',
            value = {
                "total(draw of devices) § total(draw of devices)",
                "draw + total( draw of devices ) § total(draw of devices)",
                "count(devices where draw > 5 W) § count(devices where draw > 5 W)",
                "count(devices where draw > this.draw) § ''",
                "count(devices on gate) § ''",
                "count(devices on feeder where count(runs) > 2) § count(runs)",
                "total(count(runs on feeder) of devices) § total(count(runs on feeder) of devices)",
                "count(devices where count(runs where this.draw > 1 W) > 1) § ''",
                "total(spare of devices) § total(spare of devices)",
            })
    void gathersThatAreTheSameEverywhereAreOffered(String text, String expected) {
        List<String> offered = new ArrayList<>();
        plan("cam 1", text, gather -> {
            offered.add(gather.key());
            return Optional.empty();
        });
        assertEquals(expected, String.join(" ", offered));
    }

    @Test
    void aLiftedGatherIsReadFromItsCell() {
        Site.Col cell = new Site.Col("lifted", Site.number(), "", "");
        cell.values[2] = 42;
        List<GatherPlan> lifted = new ArrayList<>();
        Planned planned = plan("cam 1", "draw + total(draw of devices)", gather -> {
            lifted.add(gather);
            return Optional.of(new Ref.Cell("lifted", cell, 2, gather.type()));
        });
        assertEquals(54, planned.formula().value(new Frame(site).at(site.row("cam 1"))));
        assertEquals("HERE/draw 2/lifted", reads(planned.uses()));
        assertEquals(List.of(), planned.uses().gathers());
        assertEquals(27, lifted.get(0).formula().value(new Frame(site).at(-1)));
    }

    @Test
    void whatHasProblemsCannotBePlanned() {
        Scope scope = site.at("cam 1");
        Checked checked = Language.check(Language.parse("drw", Site.UNITS, Decimal.POINT), scope, Wanted.ANY);
        assertThrows(IllegalArgumentException.class, () -> Language.plan(checked, scope, Hoist.NONE));
    }

    /** Faults reach the host exactly as they were raised, whatever stands around them. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "broken",
                "-broken",
                "broken + 1 W",
                "1 W - broken",
                "broken * 2",
                "2 * broken",
                "broken / 1 W",
                "1 W / broken",
                "1 W + 2 W + broken + 3 W",
                "2 * 3 * broken * 4",
                "abs(broken)",
                "min(1 W, broken)",
                "max(broken, 1 W)",
                "round(broken, 1 W)",
                "up(1 W, broken)",
                "broken > 1 W",
                "1 W < broken",
                "not (broken > 1 W)",
                "yes and broken > 1 W",
                "no or broken > 1 W",
                "if broken > 1 W then 1 else 2",
                "if yes then broken else 1 W",
                "total(broken of devices)",
                "mean(broken of devices)",
                "least(broken of devices)",
                "count(devices where broken > 1 W)",
                "every(broken > 1 W of devices)",
                "some(broken > 1 W of devices)",
                "sqrt(broken / 1 W)",
                "(broken / 1 W) ^ 2",
                "2 ^ (broken / 1 W)",
                "broken is 1 W"
            })
    void faultsAreHandedOnUntouched(String text) {
        double value = plan("-", text, Hoist.NONE).formula().value(new Frame(site).at(-1));
        assertEquals(Double.doubleToRawLongBits(Site.nan(7)), Double.doubleToRawLongBits(value), text);
        assertEquals(List.of(), site.raised);
    }

    @Test
    void workingOutAllocatesNothing() {
        Planned planned = plan(
                "gate",
                "if least(volts of devices under this where powered) - 42.5 V > 1 V and zone.ambient < 40 degC "
                        + "then total(draw / load_efficiency ^ 2 of devices on this) + max(own_draw, 5 W, spare) "
                        + "else round(own_draw, 2 W) + count(devices where kind is \"sign\") * abs(-1 W)",
                Hoist.NONE);
        Frame frame = new Frame(site).at(site.row("gate"));
        RowSet fixed = site.set("device");
        assertTrue(fixed.rows().length > 0);
        double sum = 0;
        for (int i = 0; i < 20_000; i++) {
            sum += planned.formula().value(frame);
        }
        assertTrue(Double.isFinite(sum));
        Planned small = plan("gate", "(own_draw + 5 W) * efficiency - total(draw of devices) / 3", Hoist.NONE);
        long grown = allocated(small, frame);
        assertTrue(grown < 10_000, "20,000 rounds took " + grown + " bytes");
    }

    private static long allocated(Planned planned, Frame frame) {
        ThreadMXBean bean = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double sum = 0;
        for (int i = 0; i < 20_000; i++) {
            sum += planned.formula().value(frame);
        }
        long before = bean.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < 20_000; i++) {
            sum += planned.formula().value(frame);
        }
        long grown = bean.getCurrentThreadAllocatedBytes() - before;
        assertTrue(Double.isFinite(sum));
        return grown;
    }
}
