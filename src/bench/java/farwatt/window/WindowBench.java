package farwatt.window;

import farwatt.engine.PlanWording;
import farwatt.file.PlanReader;
import farwatt.file.PlanWriter;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import javafx.animation.AnimationTimer;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What a person at the window waits for, on a screen that nobody sees: the pixels are worked out as anywhere without
 * a graphics card. A turn of the screen is 17 ms; it is part of every figure.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
@Fork(
        value = 1,
        jvmArgs = {
            "-Xmx1g",
            "-Djava.awt.headless=true",
            "-Dtestfx.robot=glass",
            "-Dtestfx.headless=true",
            "-Dglass.platform=Monocle",
            "-Dmonocle.platform=Headless",
            "-Dheadless.geometry=1600x1000-32",
            "-Dprism.order=sw"
        })
public class WindowBench {
    private static final int PER_SWITCH = 24;
    private static final int COLUMNS = 60;
    private static final int TURNS = 200;

    /** Devices in the plan. */
    @Param({"1000", "10000", "20000"})
    public int devices;

    private Path folder = Path.of("");
    private Path file = Path.of("");
    private WindowRun run;
    private int edits;

    @Setup(Level.Trial)
    public void window() throws IOException, Refusal {
        folder = Files.createTempDirectory("window");
        Plan plan = plan(devices);
        file = folder.resolve("large.farwatt.json");
        Files.write(file, PlanWriter.bytes(plan, PlanWording.canonicalFor(plan)));
        run = new WindowRun(
                folder,
                PlanReader.read(Path.of("scenarios/ferry-landing.farwatt.json")).plan());
        opened();
    }

    /** A person looks at one answer before the next edit. */
    @Setup(Level.Invocation)
    public void settled() {
        run.settle();
    }

    @TearDown(Level.Trial)
    public void close() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                "%nheap in use with the plan open: %d MB%n", (runtime.totalMemory() - runtime.freeMemory()) >> 20);
        run.close();
    }

    /** From choosing the file until it is judged in every corner and on the screen. */
    @Benchmark
    public void opened() {
        Object before = WindowRun.on(
                () -> run.frame.desk().still().<Object>map(now -> now).orElse(""));
        WindowRun.on(() -> {
            run.frame.open(file);
            return true;
        });
        WindowRun.until(
                "open",
                () -> run.frame.desk().still().filter(now -> now != before).isPresent());
        run.settle();
    }

    /** From an edit of one length until the screen shows what follows from it in the corner looked at; after forty others. */
    @Benchmark
    @Warmup(iterations = 40)
    @Measurement(iterations = 20)
    public void edited() throws InterruptedException {
        CountDownLatch drawn = new CountDownLatch(1);
        String length = 20 + ++edits % 9 + " m";
        WindowRun.on(() -> {
            Object before = run.frame.desk().still().orElseThrow();
            run.frame
                    .desk()
                    .apply(new Change.SetCell(Table.RUNS, "run cam 1.1", "length", Optional.of(Cell.text(length))));
            AnimationTimer timer = new AnimationTimer() {
                private boolean fresh;

                @Override
                public void handle(long now) {
                    if (fresh) {
                        stop();
                        drawn.countDown();
                    }
                    fresh = run.frame.desk().still().orElseThrow() != before;
                }
            };
            timer.start();
            return true;
        });
        drawn.await();
    }

    /** The longest time between two pictures while a page a turn is scrolled, in place of the run's whole time. */
    @Benchmark
    public long scrolled() throws InterruptedException {
        WindowRun.on(() -> {
            run.frame.showTable(Table.DEVICES, "cam 1.1", "draw");
            return true;
        });
        AtomicLong longest = new AtomicLong();
        CountDownLatch done = new CountDownLatch(1);
        WindowRun.on(() -> {
            new AnimationTimer() {
                private long last;
                private int turns;

                @Override
                public void handle(long now) {
                    if (last != 0) {
                        longest.accumulateAndGet(now - last, Math::max);
                    }
                    last = now;
                    if (++turns == TURNS) {
                        stop();
                        done.countDown();
                    } else {
                        press(turns % 4 == 0 ? KeyCode.RIGHT : KeyCode.PAGE_DOWN);
                    }
                }
            }.start();
            return true;
        });
        done.await();
        System.out.printf("longest picture while scrolling: %.1f ms%n", longest.get() / 1e6);
        return longest.get();
    }

    private void press(KeyCode key) {
        run.stage
                .getScene()
                .getFocusOwner()
                .fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", key, false, false, false, false));
    }

    /** From the start of a process until its window shows the demo plan, judged. */
    @Benchmark
    public int started() throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dfarwatt.home=" + folder,
                "-Dglass.platform=Monocle",
                "-Dmonocle.platform=Headless",
                "-Dheadless.geometry=1600x1000-32",
                "-Dprism.order=sw",
                "-cp",
                System.getProperty("java.class.path"),
                Started.class.getName()));
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
    }

    /** Starts the window and ends as soon as it is there. */
    public static final class Started {
        private Started() {}

        public static void main(String[] arguments) throws InterruptedException {
            Thread watch = new Thread(() -> {
                while (Window.getWindows().isEmpty()
                        || !Window.getWindows().get(0).isShowing()) {
                    LockSupport.parkNanos(5_000_000);
                }
                WindowRun.on(() -> true);
                Runtime.getRuntime().halt(0);
            });
            watch.setDaemon(true);
            watch.start();
            WindowStart.run(arguments);
        }
    }

    private static Plan plan(int devices) {
        List<Row> sources = new ArrayList<>();
        List<Row> switches = new ArrayList<>();
        List<Row> runs = new ArrayList<>();
        List<Row> loads = new ArrayList<>();
        for (int i = 0; i < devices; i++) {
            int tree = 1 + i / PER_SWITCH;
            if (i % PER_SWITCH == 0) {
                sources.add(Row.of("feed " + tree).with("type", "4").with("volts", "55 V"));
                switches.add(Row.of("edge " + tree)
                        .with("ports", "24")
                        .with("volts", "54 V")
                        .with("uplink_right", "extended"));
                runs.add(Row.of("trunk " + tree)
                        .with("from", "feed " + tree)
                        .with("to", "edge " + tree)
                        .with("length", "60 m"));
            }
            String id = "cam " + tree + "." + (1 + i % PER_SWITCH);
            loads.add(Row.of(id).with("draw", "1.5 W"));
            runs.add(Row.of("run " + id)
                    .with("from", "edge " + tree)
                    .with("to", id)
                    .with("length", "20 m"));
        }
        Plan plan = Plan.EMPTY
                .with(Table.SOURCES, Rows.of(sources))
                .with(Table.SWITCHES, Rows.of(switches))
                .with(Table.RUNS, Rows.of(runs))
                .with(Table.DEVICES, Rows.of(loads));
        for (int i = 1; i <= COLUMNS / 2; i++) {
            plan = plan.and(
                    Table.COLUMNS,
                    Row.of("share_" + i).with("table", "devices").with("is", "volts / run.volts_near * " + i));
        }
        return plan;
    }
}
