package farwatt.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import org.junit.jupiter.api.Test;

/** Readings taken on site come in as a list does, into the cells of the runs they were taken on. */
class ReadingsTest {
    private static final Plan PLAN = Plan.EMPTY
            .and(Table.SOURCES, Row.of("feed"))
            .and(
                    Table.RUNS,
                    Row.of("trunk").with("from", "feed").with("to", "gate").with("seen_amps", "0.9 A"))
            .and(Table.RUNS, Row.of("run cam 1").with("from", "gate").with("to", "cam 1"))
            .and(Table.DEVICES, Row.of("cam 1").with("draw", "6 W"));

    private static Taken taken(Outcome outcome) {
        return TakeIn.into(PLAN, outcome, TakeIn.Policy.SKIP, TakeIn.Known.UPDATE);
    }

    private static Row run(Taken taken, String id) {
        Plan after = Edit.apply(PLAN, taken.batch().orElseThrow()).plan();
        return after.rows(Table.RUNS).row(id).orElseThrow();
    }

    @Test
    void readingsGoIntoTheirRunsByRunOrByDevice() throws Exception {
        Outcome outcome = Lists.paste("""
                Run;Volts near (V);Volts far (V);Measured amps (A);Wire temp (°C)
                trunk;54,6;48,2;0,95;31
                CAM-1;48,1;47,9;120 mA;-4,5
                pole;50;49;;
                """);
        assertEquals(3, outcome.count(RowState.TAKEN), outcome.report().toString() + outcome.columns());
        assertEquals(0, outcome.devices().size());
        Taken taken = taken(outcome);
        assertEquals("54.6 V", run(taken, "trunk").text("seen_volts_near"));
        assertEquals("48.2 V", run(taken, "trunk").text("seen_volts_far"));
        assertEquals("0.95 A", run(taken, "trunk").text("seen_amps"));
        assertEquals("31 degC", run(taken, "trunk").text("seen_temp"));
        assertEquals("0.12 A", run(taken, "run cam 1").text("seen_amps"));
        assertEquals("-4.5 degC", run(taken, "run cam 1").text("seen_temp"));
        assertEquals(java.util.List.of("trunk", "run cam 1"), taken.changed());
        assertEquals(1, taken.notices().size());
        assertTrue(taken.notices().get(0).text().contains("pole"));
        assertEquals(java.util.List.of(), taken.gone(), "a list of readings says nothing about devices");
    }

    @Test
    void whatIsNoReadingHoldsItsRowBack() throws Exception {
        Outcome outcome = Lists.paste("Kabel;Spannung nah;Spannung fern;Strom\ntrunk;54,6;?;0,9\ngate;>50;48;1\nx;;;");
        assertEquals(
                "0.9 A",
                outcome.readings().get(0).text("seen_amps"),
                outcome.columns().toString());
        assertEquals(1, outcome.count(RowState.HELD_BACK), outcome.report().toString());
        assertEquals("intake.reading_not_read", outcome.report().get(2).codes().get(0));
    }

    @Test
    void aListOfDevicesWithAVoltageStaysOne() throws Exception {
        Outcome outcome = Lists.paste("Name;Voltage;Current (mA);Length (m)\ncam 1;48;120;20\ncam 2;48;130;25");
        assertEquals(2, outcome.devices().size(), outcome.columns().toString());
        assertEquals(0, outcome.readings().size());
    }
}
