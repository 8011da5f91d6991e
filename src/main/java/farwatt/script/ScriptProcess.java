package farwatt.script;

import farwatt.plan.Plan;
import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * The process that runs scripts: reads messages, one a line, and answers on standard output. It ends as soon as its
 * input does, in the midst of a script too. Started by {@link ScriptHost} only.
 */
public final class ScriptProcess {
    private static final String WARM_UP = """
            const list = [3, 1, 2].map((n) => ({n, half: n / 2})).sort((a, b) => a.n - b.n);
            const {n, ...rest} = list[0];
            let sum = 0;
            for (const each of list) { sum += each.half; }
            try { plan.get('nothing'); } catch (e) { print(`${e.message} ${JSON.stringify(rest)}`); }
            plan.add('zones', {id: 'here', ambient: '20 degC'});
            plan.set('here.ambient', '21 degC');
            print(sum, plan.get('here.ambient'), plan.text('plan.lost'), plan.rows('zones'));
            plan.findings({level: 'fail'});
            """;

    private final PrintStream out;
    private final BlockingQueue<String> orders = new LinkedBlockingQueue<>();

    private ScriptProcess(PrintStream out) {
        this.out = out;
    }

    /** Runs until standard input ends. */
    public static void main(String[] arguments) throws InterruptedException {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        // whatever a library prints must not look like a message
        System.setOut(System.err);
        new ScriptProcess(out).serve();
    }

    private void serve() throws InterruptedException {
        Thread reader = new Thread(this::read, "orders");
        reader.setDaemon(true);
        reader.start();
        if (orders.isEmpty()) {
            warmUp();
        }
        MemoryWatch.start();
        Session session = new Session(this::send);
        while (true) {
            send(session.run(Order.of(Line.read(orders.take()))));
        }
    }

    private void read() {
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(new FileInputStream(FileDescriptor.in), StandardCharsets.UTF_8), 1 << 16)) {
            String line = in.readLine();
            while (line != null) {
                orders.add(line);
                line = in.readLine();
            }
            Runtime.getRuntime().halt(0);
        } catch (IOException e) {
            Runtime.getRuntime().halt(1);
        }
    }

    /** Loads what the first run would have to wait for. */
    private static void warmUp() {
        Order order = new Order(
                new Script("warm-up", WARM_UP, Optional.empty(), Script.Kind.FILE),
                Changes.text(Plan.EMPTY),
                "",
                List.of(),
                Limits.USUAL.statements(),
                Limits.USUAL.printed());
        new Session(line -> {}).run(Order.of(Line.read(order.line().text())));
    }

    /** Studies tell how far they are from other threads. */
    private synchronized void send(Line line) {
        out.print(line.text() + "\n");
        out.flush();
    }
}
