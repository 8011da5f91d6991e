package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import farwatt.plan.Plan;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures that grow beyond all numbers on the way say so, and the first of several faults is the same in any order. */
class BeyondNumbersTest {

    private static Draft site() {
        return new Draft()
                .source("s", "volts", "55 V")
                .device("d", "draw", "5 W")
                .run("run d", "s", "d", "length", "20 m");
    }

    private static void assertTooLarge(Fault fault) {
        assertEquals(Fault.Kind.ARITHMETIC, fault.kind());
        assertEquals(farwatt.report.Messages.text(EngineCode.TOO_LARGE), fault.text());
    }

    @Test
    void aCostBeyondAllNumbersIsAFault() {
        Calculation calculation = site().row(
                        Table.RUNS, "spare", "length", "1e200 m", "price_per_length", "1e200 EUR/m")
                .solved()
                .calculation();
        assertTooLarge(calculation.value(Table.PLAN, 0, "cost").fault().orElseThrow());
    }

    @Test
    void aSumOfCostsBeyondAllNumbersIsAFault() {
        Calculation calculation = site().source("dear", "volts", "55 V", "price", "1e308 EUR")
                .source("as dear", "volts", "55 V", "price", "1e308 EUR")
                .solved()
                .calculation();
        assertTooLarge(calculation.value(Table.PLAN, 0, "cost").fault().orElseThrow());
    }

    @Test
    void aLoopBeyondAllNumbersLeavesItsDeviceOutAndSaysWhy() {
        Answers answers = site().device("far", "draw", "5 W")
                .run("run far", "s", "far", "length", "1e200 m", "basis", "datasheet", "conductor_ohms", "1e200 ohm/m")
                .solved();
        assertTooLarge(answers.fault("run far", "amps"));
        assertEquals(5, answers.number("d", "watts"), 1e-12);
    }

    @Test
    void theFirstOfSeveralFaultsIsTheSameInAnyOrder() {
        Plan plan = site().source("a", "volts", "55 V", "price", "dear", "budget", "much")
                .source("b", "volts", "55 V", "price", "cheap", "budget", "little")
                .plan();
        List<farwatt.plan.Row> rows = new ArrayList<>(plan.rows(Table.SOURCES).list());
        Collections.reverse(rows);
        Calculation turned = Calculation.of(plan.with(Table.SOURCES, Rows.of(rows)));
        Calculation straight = Calculation.of(plan);
        for (String name : List.of("cost", "least_reserve_share")) {
            Fault fault = straight.value(Table.PLAN, 0, name).fault().orElseThrow();
            assertEquals("a", fault.origin().row(), name);
            assertEquals(fault, turned.value(Table.PLAN, 0, name).fault().orElseThrow(), name);
        }
    }
}
