package farwatt.study;

import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** 10,000 points of the ferry landing with heat: ambient, gauge of the trunk, watts of the cameras. Points a second. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgs = "-Xmx512m")
public class StudyBench {
    private static final int POINTS = 10_000;

    /** How many threads work. */
    @Param({"1", "2"})
    private int threads;

    private Sweep sweep = sweep();
    private Sweep million = sweep("trunk.length = 1 m .. 100 m by 1 m");
    private Walk walk = new Walk(sweep);

    /** Fresh for each count of threads. */
    @Setup
    public void fresh() {
        sweep = sweep();
        million = sweep("trunk.length = 1 m .. 100 m by 1 m");
        walk = new Walk(sweep);
    }

    private static Sweep sweep(String... more) {
        try {
            Plan plan = PlanReader.read(Path.of("scenarios/ferry-landing.farwatt.json"))
                    .plan();
            Ground ground = Ground.of(plan);
            List<Vary> varies = new ArrayList<>(List.of(
                    Vary.of(ground, "quay.ambient = -20 degC .. 79 degC by 1 K"),
                    Vary.of(ground, "camera_day = 3 W .. 6.8 W by 0.2 W"),
                    Vary.of(ground, "trunk.gauge = 20 AWG, 21 AWG, 22 AWG, 23 AWG, 24 AWG")));
            for (String each : more) {
                varies.add(Vary.of(ground, each));
            }
            return Sweep.of(ground, varies, List.of("gate.reserve_share", "least(volts of devices)", "plan.lost"));
        } catch (Refusal e) {
            throw new IllegalStateException(e);
        }
    }

    /** With everything around it: trials made, threads begun, points handed on. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double whole() throws IOException {
        double[] sum = {0};
        sweep.run(Effort.of(threads), point -> sum[0] += point.inside(3));
        return sum[0];
    }

    /** A hundred times as many: what making trials and threads takes no longer counts. */
    @Benchmark
    @OperationsPerInvocation(100 * POINTS)
    public double million() throws IOException {
        double[] sum = {0};
        million.run(Effort.of(threads), point -> sum[0] += point.inside(4));
        return sum[0];
    }

    /** The loop alone. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double loop() {
        return walk.sum();
    }
}
