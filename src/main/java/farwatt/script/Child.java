package farwatt.script;

import farwatt.report.Refusal;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;

/** A process that runs scripts, as the program sees it: the same Java, the same classes, a heap of its own. */
final class Child implements AutoCloseable {
    private static final int WAITING = 4096;
    /** Java 24 and later warn of what the language's library does unless it is allowed. */
    private static final int NATIVE_FROM = 24;

    private static final Line END = Line.of("end");

    private final Process process;
    private final BlockingQueue<Line> lines = new ArrayBlockingQueue<>(WAITING);
    private volatile boolean closed;

    private Child(Process process) {
        this.process = process;
        Thread reader = new Thread(this::read, "script answers");
        reader.setDaemon(true);
        reader.start();
    }

    /**
     * Starts a process, which warms up until it is told what to run.
     *
     * @param options further options of its Java
     * @throws Refusal if there is no Java to start
     */
    static Child start(int megabytes, List<String> options) throws Refusal {
        Path java = Path.of(System.getProperty("java.home"), "bin", isWindows() ? "java.exe" : "java");
        if (!Files.isExecutable(java)) {
            throw Refusal.of(ScriptCode.NO_JAVA, java);
        }
        List<String> call = new ArrayList<>(List.of(
                java.toString(),
                "-Xmx" + megabytes + "m",
                "-Xmn" + megabytes / 6 + "m",
                "-Xss4m",
                "-XX:+UseSerialGC",
                "-XX:+ExitOnOutOfMemoryError",
                "-Djava.awt.headless=true",
                "-Dfile.encoding=UTF-8"));
        if (Runtime.version().feature() >= NATIVE_FROM) {
            call.addAll(List.of("--enable-native-access=ALL-UNNAMED", "--sun-misc-unsafe-memory-access=allow"));
        }
        call.addAll(options);
        call.addAll(List.of("-cp", System.getProperty("java.class.path"), ScriptProcess.class.getName()));
        try {
            return new Child(new ProcessBuilder(call)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start());
        } catch (IOException e) {
            throw Refusal.of(ScriptCode.NO_JAVA, java);
        }
    }

    private static boolean isWindows() {
        return System.getProperty("os.name").startsWith("Windows");
    }

    private void read() {
        try (BufferedReader in =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8), 1 << 16)) {
            String line = in.readLine();
            while (line != null && !closed) {
                put(Line.read(line));
                line = in.readLine();
            }
        } catch (IOException e) {
            // a process that was ended leaves its last line unfinished
            closed = true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            putEnd();
        }
    }

    /** Waits while the other side has not taken what was said before. */
    private void put(Line line) throws InterruptedException {
        while (!closed && !lines.offer(line, 100, TimeUnit.MILLISECONDS)) {
            Thread.onSpinWait();
        }
    }

    private void putEnd() {
        try {
            while (!closed && !lines.offer(END, 100, TimeUnit.MILLISECONDS)) {
                Thread.onSpinWait();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    void send(Line line) throws IOException {
        OutputStream out = process.getOutputStream();
        out.write((line.text() + "\n").getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    /** The next message; empty if none came in time. */
    Optional<Line> next(long millis) throws InterruptedException {
        return Optional.ofNullable(lines.poll(millis, TimeUnit.MILLISECONDS));
    }

    boolean isEnd(Line line) {
        return line.equals(END);
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** How the process ended; it has to be over or about to be. */
    int exit() throws InterruptedException {
        return process.waitFor(1, TimeUnit.SECONDS) ? process.exitValue() : -1;
    }

    /** Ends the process at once, whatever it does. */
    void kill() {
        closed = true;
        process.destroyForcibly();
    }

    /** Lets the process end by itself. */
    @Override
    public void close() {
        closed = true;
        try {
            process.getOutputStream().close();
            if (!process.waitFor(1, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (IOException e) {
            process.destroyForcibly();
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
