package farwatt.window.work;

import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.window.WindowCode;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Long work away from the window, with progress and cancel. However it ends – done, refused, stopped, failed – the
 * finishing step runs once, on the home executor. One at a time: who starts another stops the one before.
 */
public final class Work {
    private final Executor worker;
    private final Executor home;
    private final Consumer<State> watcher;
    private @Nullable Cancel running;

    /**
     * How far it is.
     *
     * @param what the work's name, "" when nothing runs
     * @param step what it is at
     * @param share 0..1
     */
    public record State(String what, String step, double share) {
        public static final State IDLE = new State("", "", 0);

        public boolean isBusy() {
            return !what.isEmpty();
        }
    }

    /** Something that takes long. */
    @FunctionalInterface
    public interface Task<T> {
        /** Does it, off the window's thread; files that cannot be written and the like are exceptions. */
        T run(Progress progress, Cancel cancel) throws Exception;
    }

    /** How it ended. */
    public sealed interface End<T> {
        /** With a result. */
        record Done<T>(T result) implements End<T> {}

        /** Without one, and why. */
        record Not<T>(Notice notice) implements End<T> {}
    }

    /**
     * Work for one window.
     *
     * @param worker runs the tasks
     * @param home the window's thread, where the watcher and the finishing steps run
     */
    public Work(Executor worker, Executor home, Consumer<State> watcher) {
        this.worker = worker;
        this.home = home;
        this.watcher = watcher;
    }

    /** Starts a task; to be called on the window's thread. */
    public <T> void start(String what, Task<T> task, Consumer<End<T>> finish) {
        cancel();
        Cancel cancel = new Cancel();
        running = cancel;
        watcher.accept(new State(what, "", 0));
        Progress progress = (share, step) -> home.execute(() -> tell(cancel, new State(what, step, share)));
        worker.execute(() -> {
            End<T> end = ended(what, task, progress, cancel);
            home.execute(() -> {
                if (running == cancel) {
                    running = null;
                    watcher.accept(State.IDLE);
                }
                finish.accept(end);
            });
        });
    }

    /** Asks the running task to stop; its finishing step still comes. */
    public void cancel() {
        Cancel now = running;
        if (now != null) {
            now.ask();
        }
    }

    private void tell(Cancel of, State state) {
        if (running == of) {
            watcher.accept(state);
        }
    }

    private static <T> End<T> ended(String what, Task<T> task, Progress progress, Cancel cancel) {
        try {
            return new End.Done<>(task.run(progress, cancel));
        } catch (Refusal e) {
            return new End.Not<>(e.notice());
        } catch (CancellationException e) {
            return new End.Not<>(Notice.of(Level.NOTE, WindowCode.STOPPED, Place.NONE));
        } catch (OutOfMemoryError e) {
            return new End.Not<>(Notice.of(Level.FAIL, WindowCode.OUT_OF_MEMORY, Place.NONE));
        } catch (Exception e) {
            String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            return new End.Not<>(Notice.of(Level.FAIL, WindowCode.WORK_FAILED, Place.NONE, what, why));
        }
    }
}
