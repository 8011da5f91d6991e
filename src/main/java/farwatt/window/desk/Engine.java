package farwatt.window.desk;

import farwatt.engine.Calculation;
import farwatt.engine.Explanation;
import farwatt.engine.Still;
import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.review.Remedies;
import farwatt.review.Review;
import farwatt.review.Reviewer;
import farwatt.window.WindowCode;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Works out plans away from the window. Everything that touches the calculation runs on the worker, which must run one
 * task after another; what it finds is handed over on the home executor. Of several wishes that wait only the last is
 * answered, and a review is given up as soon as something newer is wanted.
 */
final class Engine {
    /** Steps of a derivation from a figure down to what was typed. */
    private static final int DEEPEST = 6;

    private final Executor worker;
    private final Executor home;
    private final Consumer<Still> stills;
    private final Consumer<Review> reviews;
    private final DoubleConsumer sought;
    private final Consumer<Notice> failures;
    private final AtomicLong newest = new AtomicLong();
    /** Stops the review as soon as something newer is wanted. */
    private volatile Cancel judging = new Cancel();
    /** Stops the search for remedies, for that and for questions between. */
    private volatile Cancel seeking = new Cancel();
    /** The wish for which a person stopped the search. */
    private volatile long stopped = -1;

    private final AtomicInteger questions = new AtomicInteger();
    /** Only on the worker. */
    private @Nullable Calculation calculation;

    /** @param sought told how far the search for remedies is, 1 at its end */
    Engine(
            Executor worker,
            Executor home,
            Consumer<Still> stills,
            Consumer<Review> reviews,
            DoubleConsumer sought,
            Consumer<Notice> failures) {
        this.worker = worker;
        this.home = home;
        this.stills = stills;
        this.reviews = reviews;
        this.sought = sought;
        this.failures = failures;
    }

    /** Asks for a plan to be worked out; returns at once. */
    void want(Wanted wanted) {
        long number = newest.incrementAndGet();
        judging.ask();
        seeking.ask();
        later(() -> guarded(() -> {
            Calculation calc = brought(wanted);
            if (number == newest.get()) {
                Still still = calc.still();
                home.execute(() -> install(number, () -> stills.accept(still)));
                later(() -> guarded(() -> judge(number, calc)));
            }
        }));
    }

    private void judge(long number, Calculation calc) {
        Cancel cancel = new Cancel();
        judging = cancel;
        if (number != newest.get()) {
            return;
        }
        try {
            Review review = Reviewer.review(calc, cancel);
            home.execute(() -> install(number, () -> reviews.accept(review)));
            if (review.fails() > 0) {
                later(() -> guarded(() -> mend(number, calc, review)));
            }
        } catch (CancellationException e) {
            // something newer is wanted, and will be answered instead
            return;
        }
    }

    private void mend(long number, Calculation calc, Review review) {
        Cancel cancel = new Cancel();
        seeking = cancel;
        if (number != newest.get() || number == stopped) {
            return;
        }
        if (questions.get() > 0) {
            later(() -> guarded(() -> mend(number, calc, review)));
            return;
        }
        try {
            tell(number, 0);
            Review mended = Remedies.of(calc, review, (share, what) -> tell(number, share), cancel);
            home.execute(() -> install(number, () -> reviews.accept(mended)));
        } catch (CancellationException e) {
            // as above, or a person has stopped it, or it makes room for a question
            later(() -> guarded(() -> mend(number, calc, review)));
        } finally {
            tell(number, 1);
        }
    }

    private void tell(long number, double share) {
        home.execute(() -> install(number, () -> sought.accept(share)));
    }

    /** Gives up the search for remedies. */
    void stopSeeking() {
        stopped = newest.get();
        seeking.ask();
    }

    private void install(long number, Runnable step) {
        if (number == newest.get()) {
            step.run();
        }
    }

    private Calculation brought(Wanted wanted) {
        Calculation calc = calculation;
        if (calc == null) {
            calc = Calculation.of(wanted.plan());
        } else {
            step(calc, wanted);
        }
        calculation = calc;
        calc.look(wanted.corner());
        return calc;
    }

    private static void step(Calculation calc, Wanted wanted) {
        if (wanted.step().isPresent()) {
            calc.apply(wanted.step().get());
        } else if (!calc.plan().equals(wanted.plan())) {
            calc.replace(wanted.plan());
        }
    }

    /** Something short that a person waits for: the search for remedies makes room and begins anew after it. */
    private void between(Runnable question) {
        questions.incrementAndGet();
        seeking.ask();
        later(() -> {
            questions.decrementAndGet();
            guarded(question);
        });
    }

    /** Tells how an expression's value came about in the plan worked out last; empty if it cannot be understood. */
    void explain(String expression, Consumer<Optional<Explanation>> answer) {
        between(() -> {
            Calculation calc = calculation;
            Optional<Explanation> found = calc == null ? Optional.empty() : calc.explain(expression, DEEPEST);
            home.execute(() -> answer.accept(found));
        });
    }

    /** Works something out between the plans that are wanted. */
    <T> void ask(Supplier<T> question, Consumer<T> answer) {
        between(() -> {
            T found = question.get();
            home.execute(() -> answer.accept(found));
        });
    }

    private void later(Runnable task) {
        try {
            worker.execute(task);
        } catch (RejectedExecutionException e) {
            // the window is closing: nobody waits for the answer
            return;
        }
    }

    /** Whatever goes wrong inside becomes a sentence, and the next wish starts from the whole plan. */
    private void guarded(Runnable task) {
        try {
            task.run();
        } catch (OutOfMemoryError | RuntimeException e) {
            calculation = null;
            String what = e.getClass().getSimpleName();
            Notice notice = e instanceof OutOfMemoryError
                    ? Notice.of(Level.FAIL, WindowCode.OUT_OF_MEMORY, Place.NONE)
                    : new Notice(
                            Level.FAIL,
                            WindowCode.NOT_WORKED_OUT.key(),
                            Place.NONE,
                            Messages.text(WindowCode.NOT_WORKED_OUT, what));
            home.execute(() -> failures.accept(notice));
        }
    }
}
