package farwatt.engine;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A large plan: worked out whole, after one cell, after a cell that every run depends on. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgs = "-Xmx2g")
public class EngineBench {
    private final Plan plan = LargePlan.plan();
    private Calculation calculation = Calculation.of(plan);
    private int turn;

    /** Prints what the calculation keeps for each row, once. */
    @Setup
    public void memory() {
        calculation = Calculation.of(plan);
        long with = used();
        int rows = calculation.rows(Table.RUNS) + calculation.rows(Table.DEVICES);
        calculation = Calculation.of(Plan.EMPTY);
        long without = used();
        calculation = Calculation.of(plan);
        System.out.println("kept bytes a row: " + (with - without) / rows);
    }

    private static long used() {
        for (int i = 0; i < 4; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    @Benchmark
    public Object full() {
        return Calculation.of(plan);
    }

    @Benchmark
    public double oneDraw() {
        set(Table.DEVICES, "cam 200.7", "draw", turn++ % 2 == 0 ? "1.3 W" : "1.7 W");
        return calculation.figures(Table.PLAN, "lost").at(0);
    }

    @Benchmark
    public double ambientOfAll() {
        set(Table.ZONES, "site", "ambient", 20 + turn++ % 7 + " degC");
        return calculation.figures(Table.PLAN, "lost").at(0);
    }

    private void set(Table table, String id, String name, String text) {
        calculation.apply(new Change.SetCell(table, id, name, Optional.of(Cell.text(text))));
    }
}
