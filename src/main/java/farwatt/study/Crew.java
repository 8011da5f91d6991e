package farwatt.study;

import farwatt.engine.Trials;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Works out the blocks of a plot on some threads and hands their points on in order on the caller's. Only a few blocks
 * are kept at a time, however many there are. What a point gives does not depend on which thread met it.
 */
final class Crew {
    private static final int BLOCKS_EACH = 3;
    private static final long LOOK = 20;

    private final Plot plot;
    private final int knobs;
    private final List<Heading> reads;
    private final Supplier<Trials> trials;
    private final Effort effort;

    private final Map<Long, Block> done = new HashMap<>();
    private long next;
    private int open;
    private boolean stopped;
    private @Nullable Throwable failure;

    Crew(Plot plot, int knobs, List<Heading> reads, Supplier<Trials> trials, Effort effort) {
        this.plot = plot;
        this.knobs = knobs;
        this.reads = reads;
        this.trials = trials;
        this.effort = effort;
    }

    /**
     * Works everything out.
     *
     * @throws CancellationException if that was asked for; whole blocks may have been handed on before
     */
    void run(Sink sink) throws IOException {
        Effort.Meter meter = effort.meter(plot.size());
        if (effort.threads() == 1) {
            Trials mine = trials.get();
            for (long from = 0; from < plot.size(); ) {
                Block block = block(from);
                block.fill(mine, this::check);
                from = hand(block, sink, meter);
            }
            return;
        }
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i < effort.threads(); i++) {
            Thread thread = new Thread(this::work, "study " + i);
            thread.setDaemon(true);
            thread.start();
            threads.add(thread);
        }
        try {
            for (long from = 0; from < plot.size(); ) {
                from = hand(take(from), sink, meter);
            }
        } finally {
            stop();
            threads.forEach(Crew::join);
        }
    }

    private Block block(long from) {
        return new Block(plot, knobs, reads, from, (int) (plot.blockEnd(from) - from));
    }

    private void check() {
        if (effort.cancel().asked() || Thread.currentThread().isInterrupted()) {
            throw cancelled();
        }
    }

    private static CancellationException cancelled() {
        return new CancellationException(farwatt.report.Messages.text(StudyCode.CANCELLED));
    }

    private long hand(Block block, Sink sink, Effort.Meter meter) throws IOException {
        for (int i = 0; i < block.count; i++) {
            if ((i & 0xff) == 0) {
                check();
            }
            sink.take(block.at(i));
        }
        long end = block.from + block.count;
        meter.done(end);
        return end;
    }

    private void work() {
        try {
            Trials mine = trials.get();
            Runnable check = () -> {
                if (effort.cancel().asked() || isStopped()) {
                    throw cancelled();
                }
            };
            for (Block block = begin(); block != null; block = begin()) {
                block.fill(mine, check);
                finish(block);
            }
        } catch (CancellationException e) {
            stop();
        } catch (RuntimeException | Error e) {
            fail(e);
        }
    }

    private volatile boolean over;

    private boolean isStopped() {
        return over;
    }

    private synchronized @Nullable Block begin() {
        while (!stopped && next < plot.size() && open >= BLOCKS_EACH * effort.threads()) {
            pause();
        }
        if (stopped || next >= plot.size()) {
            return null;
        }
        Block block = block(next);
        next = block.from + block.count;
        open++;
        return block;
    }

    private synchronized void finish(Block block) {
        done.put(block.from, block);
        notifyAll();
    }

    private synchronized void fail(Throwable e) {
        failure = e;
        stop();
    }

    private synchronized void stop() {
        stopped = true;
        over = true;
        notifyAll();
    }

    private synchronized Block take(long from) {
        Block block = done.remove(from);
        while (block == null) {
            if (failure instanceof Error error) {
                throw error;
            }
            if (failure != null) {
                throw new IllegalStateException(failure);
            }
            check();
            pause();
            block = done.remove(from);
        }
        open--;
        notifyAll();
        return block;
    }

    private void pause() {
        try {
            wait(LOOK);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw cancelled();
        }
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
