package farwatt.script;

import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Scripts on the ferry landing in a warm process of their own: whole runs, as a person waits for them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4)
@Measurement(iterations = 10)
@Fork(value = 1, jvmArgs = "-Xmx512m")
public class ScriptBench {
    private final ScriptHost host = new ScriptHost(Limits.USUAL);
    private final Plan plan = plan();

    private static Plan plan() {
        try {
            return PlanReader.read(Path.of("scenarios/ferry-landing.farwatt.json"))
                    .plan();
        } catch (Refusal e) {
            throw new IllegalStateException(e);
        }
    }

    /** A process that has done nothing yet but warm up. */
    @Setup(Level.Invocation)
    public void warm() {
        run("print('warm')", new Cancel());
    }

    /** Ends the process. */
    @TearDown
    public void end() {
        host.close();
    }

    private Outcome run(String text, Cancel cancel) {
        ScriptListener listener = new ScriptListener() {
            @Override
            public void print(String said) {
                if (said.equals("stop")) {
                    cancel.ask();
                }
            }
        };
        Script script = new Script("bench.js", text, Optional.empty(), Script.Kind.FILE);
        Outcome outcome = host.run(script, plan, "", List.of(), listener, cancel);
        if (outcome.state() != Outcome.State.DONE && outcome.state() != Outcome.State.CANCELLED) {
            throw new IllegalStateException(outcome.said());
        }
        return outcome;
    }

    /** A run that reads one value. */
    @Benchmark
    public Outcome oneValue() {
        return run("print(plan.text('gate.reserve_share'))", new Cancel());
    }

    /** A cell set and a value read that hangs on it, 100,000 times over. */
    @Benchmark
    public Outcome hundredThousandTurns() {
        return run("""
                let sum = 0;
                for (let i = 0; i < 100000; i++) {
                  plan.set('trunk.length', `${50 + i % 50} m`);
                  sum += plan.get('feed.reserve');
                }
                """, new Cancel());
    }

    /** 10,000 points as plain data. */
    @Benchmark
    public Outcome sweepOfTenThousand() {
        return run("""
                sweep({over: {'quay.ambient': span('-20 degC', '79 degC', '1 K'), 'trunk.length': span('1 m', '100 m', '1 m')},
                  read: ['gate.reserve_share']});
                """, new Cancel());
    }

    /** A loop without an end, cancelled at its first word. */
    @Benchmark
    public Outcome cancelled() {
        return run("print('stop'); while (true) {}", new Cancel());
    }
}
