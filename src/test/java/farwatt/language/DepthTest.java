package farwatt.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.quantity.Decimal;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Long and deep texts, on a stack of half the usual size. */
class DepthTest {
    private static final long STACK = 512 * 1024;

    private static <T> T onSmallStack(Supplier<T> work) {
        AtomicReference<T> result = new AtomicReference<>();
        AtomicReference<Throwable> failure = new AtomicReference<>();
        Thread thread = new Thread(null, () -> result.set(work.get()), "small stack", STACK);
        thread.setUncaughtExceptionHandler((t, e) -> failure.set(e));
        thread.start();
        try {
            thread.join();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
        if (failure.get() != null) {
            throw new AssertionError(failure.get());
        }
        return result.get();
    }

    private static Checked check(String text) {
        return Language.check(Language.parse(text, Site.UNITS, Decimal.POINT), new Site().at("-"), Wanted.ANY);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "(",
                "-",
                "- ",
                "not (",
                "2 ^ ",
                "if ",
                "abs(",
                "min(1, ",
                "total(",
                "count(devices on (",
                "((",
                "if yes then ",
                "if (",
                "count(devices where ",
                "not ",
                "x.",
                "1 + (",
                "yes and ("
            })
    void whatIsNestedTooDeeplyGetsASentence(String opening) {
        String text = opening.repeat(Parser.LONGEST / opening.length() - 1) + "1";
        List<Problem> problems = onSmallStack(() -> check(text)).problems();
        assertTrue(!problems.isEmpty() && problems.size() <= Problems.MOST, opening);
        Completion completion = onSmallStack(
                () -> Language.complete(text, text.length(), new Site().at("-"), Wanted.ANY, Decimal.POINT));
        assertTrue(completion.offers().size() <= 200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"(:)", "-:", "not (:)", "1 ^ :", "abs(:)", "if yes then : else 1", "(1 + :)"})
    void whatIsNestedJustDeepEnoughWorks(String around) {
        boolean answer = around.startsWith("not");
        String text = answer ? "yes" : "1";
        for (int i = 1; i < Parser.DEEPEST; i++) {
            text = around.replace(":", text);
        }
        String whole = text;
        double value = onSmallStack(() -> {
            Site site = new Site();
            Checked checked = check(whole);
            assertEquals(List.of(), checked.problems());
            String printed = Language.print(checked.expr());
            assertEquals(List.of(), check(printed).problems());
            return Language.plan(checked, site.at("-"), Hoist.NONE).formula().value(new Frame(site));
        });
        assertTrue(Double.isFinite(value));
    }

    @Test
    void tooDeepIsSaidOnceAndAtThePlace() {
        List<Problem> problems =
                check("(".repeat(10_000) + "1" + ")".repeat(9_999)).problems();
        assertEquals(1, problems.size());
        assertEquals(ProblemCode.TOO_DEEP, problems.get(0).code());
        assertEquals(Parser.DEEPEST, problems.get(0).span().from());
    }

    @Test
    void tooLongIsSaid() {
        List<Problem> problems = check("1 + ".repeat(5_000) + "1").problems();
        assertEquals(1, problems.size());
        assertEquals(ProblemCode.TOO_LONG, problems.get(0).code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 + ", "2 - ", "1 * ", "4 / ", "1+", "1/"})
    void sumsOfThousandsOfTermsWork(String term) {
        String text = term.repeat(Parser.LONGEST / term.length() - 1) + "1";
        double value = onSmallStack(() -> {
            Site site = new Site();
            return Language.plan(check(text), site.at("-"), Hoist.NONE)
                    .formula()
                    .value(new Frame(site));
        });
        int terms = Parser.LONGEST / term.length() - 1;
        double expected = Stream.of("1 + ", "1+").anyMatch(term::equals) ? terms + 1 : value;
        assertEquals(expected, value);
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes and ", "no or ", "yes and not no and "})
    void answersOfThousandsOfPartsWork(String part) {
        String text = part.repeat(Parser.LONGEST / part.length() - 1) + "yes";
        double value = onSmallStack(() -> {
            Site site = new Site();
            return Language.plan(check(text), site.at("-"), Hoist.NONE)
                    .formula()
                    .value(new Frame(site));
        });
        assertEquals(1, value);
    }

    @Test
    void choicesOfManyBranchesWork() {
        String text = "if no then 1 else ".repeat(1_000) + "2";
        double value = onSmallStack(() -> {
            Site site = new Site();
            return Language.plan(check(text), site.at("-"), Hoist.NONE)
                    .formula()
                    .value(new Frame(site));
        });
        assertEquals(2, value);
    }

    @Test
    void pathsOfManyStepsWork() {
        String text = "'cam 1'" + ".feeder".repeat(2_000) + ".sent";
        double value = onSmallStack(() -> {
            Site site = new Site();
            return Language.plan(check(text), site.at("-"), Hoist.NONE)
                    .formula()
                    .value(new Frame(site));
        });
        assertTrue(Double.isNaN(value));
    }

    @Test
    void problemsAreCappedAndQuickToFind() {
        List<Problem> problems = check("drw + ".repeat(3_000) + "lod").problems();
        assertEquals(Problems.MOST, problems.size());
    }
}
