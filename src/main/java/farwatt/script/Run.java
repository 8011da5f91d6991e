package farwatt.script;

import farwatt.plan.Scenario;
import farwatt.quantity.Units;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One run, seen from the program: passes on what the script says until it ends or has to. */
final class Run {
    private static final long LOOK_MILLIS = 20;

    private final Child child;
    private final ScriptListener listener;
    private final Cancel cancel;
    private final Limits limits;
    private final Units units;
    private final List<Scenario> kept = new ArrayList<>();
    private Optional<Scenario> proposed = Optional.empty();
    private boolean spent;

    Run(Child child, ScriptListener listener, Cancel cancel, Limits limits, Units units) {
        this.child = child;
        this.listener = listener;
        this.cancel = cancel;
        this.limits = limits;
        this.units = units;
    }

    /** True if the process can be used no more. */
    boolean isSpent() {
        return spent;
    }

    Outcome go(Order order) {
        try {
            child.send(order.line());
            return listen();
        } catch (IOException e) {
            return spent(Outcome.State.BROKEN, ScriptCode.DIED);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return spent(Outcome.State.CANCELLED, ScriptCode.CANCELLED);
        } catch (Refusal e) {
            throw new IllegalStateException("the process sent what cannot be read", e);
        }
    }

    private Outcome listen() throws InterruptedException, Refusal {
        long start = System.nanoTime();
        while (true) {
            Optional<Line> next = child.next(LOOK_MILLIS);
            if (cancel.asked()) {
                return spent(Outcome.State.CANCELLED, ScriptCode.CANCELLED);
            }
            if (System.nanoTime() - start > limits.longest().toNanos()) {
                return spent(
                        Outcome.State.STOPPED,
                        ScriptCode.TOO_LONG,
                        limits.longest().toSeconds());
            }
            if (next.isPresent()) {
                Optional<Outcome> end = child.isEnd(next.get()) ? Optional.of(died()) : heard(next.get());
                if (end.isPresent()) {
                    return end.get();
                }
            }
        }
    }

    private Outcome died() throws InterruptedException {
        return child.exit() == MemoryWatch.OUT_OF_MEMORY
                ? spent(Outcome.State.STOPPED, ScriptCode.TOO_MUCH_MEMORY, limits.megabytes())
                : spent(Outcome.State.BROKEN, ScriptCode.DIED);
    }

    private Outcome spent(Outcome.State state, ScriptCode code, Object... parts) {
        spent = true;
        return Outcome.of(state, Messages.text(code, parts));
    }

    /** Passes a message on; gives the outcome if it was the last. */
    private Optional<Outcome> heard(Line line) throws Refusal {
        switch (line.kind()) {
            case "print" -> listener.print(line.part(0));
            case "table" -> listener.table(Console.table(line, 0, units));
            case "save" -> listener.save(line.part(0), Console.table(line, 1, units));
            case "picture" -> listener.picture(Console.picture(line, units));
            case "progress" -> listener.progress(Double.parseDouble(line.part(0)), line.part(1));
            case "keep" -> Changes.put(kept, Changes.read(line.part(0)));
            case "propose" -> proposed = Optional.of(Changes.read(line.part(0)));
            case "done" -> {
                return Optional.of(new Outcome(Outcome.State.DONE, "", line.part(0), Optional.empty(), kept, proposed));
            }
            case "failed" -> {
                ScriptError error = error(line);
                return Optional.of(
                        new Outcome(Outcome.State.FAILED, error.lines(), "", Optional.of(error), kept, proposed));
            }
            case "limit" -> {
                return Optional.of(Outcome.of(Outcome.State.STOPPED, line.part(0)));
            }
            case "refused" -> {
                return Optional.of(Outcome.of(Outcome.State.FAILED, line.part(0)));
            }
            default -> {
                // Java itself says a word on standard output when it ends for want of memory
            }
        }
        return Optional.empty();
    }

    private static ScriptError error(Line line) {
        List<ScriptError.Spot> chain = new ArrayList<>();
        for (int at = 1; at + 3 < line.parts().size(); at += 4) {
            chain.add(new ScriptError.Spot(
                    line.part(at),
                    Integer.parseInt(line.part(at + 1)),
                    Integer.parseInt(line.part(at + 2)),
                    line.part(at + 3)));
        }
        return new ScriptError(line.part(0), chain);
    }
}
