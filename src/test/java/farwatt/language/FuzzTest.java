package farwatt.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.quantity.Decimal;
import farwatt.report.Span;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Texts of all sorts, sound and spoiled: nothing makes the language fail, and what it says has its place. */
class FuzzTest {
    private static final boolean SOAK = Boolean.getBoolean("farwatt.soak");
    private static final int ROUNDS = SOAK ? 1_000_000 : 20_000;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final long SLOWEST_NANOS = 50_000_000L;
    private static final String[] PIECES = {
        "if",
        "then",
        "else",
        "and",
        "or",
        "not",
        "is",
        "yes",
        "no",
        "this",
        "plan",
        "of",
        "on",
        "under",
        "where",
        "total",
        "count",
        "least",
        "every",
        "some",
        "mean",
        "(",
        ")",
        ",",
        ".",
        "+",
        "-",
        "*",
        "/",
        "^",
        "<",
        "<=",
        ">",
        "=",
        "==",
        "..",
        "'",
        "\"",
        "'edge 1'",
        "\"sign\"",
        "5",
        "5 W",
        "-5 degC",
        "1,5",
        "1.5",
        "5 ft 3 in",
        "20 %",
        "24 AWG",
        "5 foo",
        "1e400",
        "draw",
        "load",
        "kind",
        "zone",
        "feeder",
        "run",
        "ambient",
        "sent",
        "dark",
        "spare",
        "gate",
        "devices",
        "runs",
        "switches",
        "min(",
        "max(",
        "round(",
        "sqrt(",
        "abs(",
        " ",
        "  ",
        "\t",
        "\n",
        "\u00a0",
        "é",
        "Ω",
        "°",
        "𝒳",
        "\ud800",
        "#",
        "{",
        "±",
        "~",
        "\u0000",
        "’",
        "“",
        "_",
        "e",
        "E5"
    };

    private final Site site = new Site();
    private final List<String> sound = sound();

    private static List<String> sound() {
        List<String> all = new ArrayList<>();
        for (String line : Table.lines("/language/evaluate.txt")) {
            all.add(line.split("§", -1)[1]);
        }
        for (String line : Table.lines("/language/check.txt")) {
            all.add(line.split("§", -1)[1]);
        }
        return all;
    }

    @Test
    void noTextMakesTheLanguageFail() {
        for (int seed = 0; seed < ROUNDS; seed++) {
            long taken = attempt(seed);
            // the first rounds warm up; a slow one may be the machine's fault, three in a row are not
            if (SOAK && seed > ROUNDS / 10 && taken > SLOWEST_NANOS) {
                long again = Math.min(attempt(seed), attempt(seed));
                assertTrue(again < SLOWEST_NANOS, "seed " + seed + " takes " + again + " ns");
            }
        }
    }

    /** Processor time that one text takes. */
    private long attempt(int seed) {
        Random random = new Random(seed);
        String text = random.nextBoolean() ? pieces(random) : spoiled(random);
        long before = THREADS.getCurrentThreadCpuTime();
        try {
            examine(text, random);
        } catch (RuntimeException | Error e) {
            throw new AssertionError("seed " + seed + ": " + text, e);
        }
        return THREADS.getCurrentThreadCpuTime() - before;
    }

    private static String pieces(Random random) {
        StringBuilder out = new StringBuilder();
        for (int i = random.nextInt(random.nextInt(20) == 0 ? 200 : 12); i >= 0; i--) {
            out.append(PIECES[random.nextInt(PIECES.length)]).append(random.nextBoolean() ? " " : "");
        }
        return out.toString();
    }

    private String spoiled(Random random) {
        StringBuilder out = new StringBuilder(sound.get(random.nextInt(sound.size())));
        for (int i = random.nextInt(4); i > 0; i--) {
            int at = random.nextInt(out.length() + 1);
            switch (random.nextInt(4)) {
                case 0 -> out.insert(at, PIECES[random.nextInt(PIECES.length)]);
                case 1 -> out.delete(at, Math.min(out.length(), at + 1 + random.nextInt(4)));
                case 2 -> out.insert(at, sound.get(random.nextInt(sound.size())));
                default -> out.setLength(at);
            }
        }
        return out.toString();
    }

    private void examine(String text, Random random) {
        Decimal decimal = Decimal.values()[random.nextInt(2)];
        String row = List.of("-", "cam 1", "gate", "trunk", "quay").get(random.nextInt(5));
        Scope scope = site.at(row);
        Parsed parsed = Language.parse(text, Site.UNITS, decimal);
        places(parsed);
        Checked checked = Language.check(parsed, scope, Wanted.ANY);
        for (Problem problem : checked.problems()) {
            assertTrue(problem.span().to() <= text.length(), "place of " + problem);
            assertFalse(problem.text().matches("(?s).*\\{[0-9]}.*"), problem.text());
            assertFalse(problem.text().contains("\n"), problem.text());
            Marked.show(text, problem.span());
        }
        assertTrue(!checked.problems().isEmpty() || checked.type() != Type.Plain.UNKNOWN, "no type and no reason");
        if (checked.problems().isEmpty()) {
            evaluate(checked, scope, row);
            String canonical = Language.print(checked.expr());
            assertEquals(canonical, Language.canonical(canonical, Wanted.ANY, Site.UNITS, decimal));
        }
        if (random.nextInt(10) == 0) {
            Language.complete(text, random.nextInt(text.length() + 1), scope, Wanted.ANY, decimal);
            Language.rename(text, scope, "gate", "east gate");
            Language.references(parsed);
        }
    }

    /** Parts stand in order, apart from each other and inside the text. */
    private static void places(Parsed parsed) {
        int reached = 0;
        for (Coloured part : parsed.colours()) {
            Span span = part.span();
            assertTrue(span.from() >= reached && span.to() > span.from(), "order of " + parsed.colours());
            reached = span.to();
        }
        assertTrue(reached <= parsed.text().length(), "end of " + parsed.colours());
    }

    private void evaluate(Checked checked, Scope scope, String row) {
        site.raised.clear();
        Planned planned = Language.plan(checked, scope, Hoist.NONE);
        double value = planned.formula().value(new Frame(site).at(site.row(row)));
        assertFalse(Double.isInfinite(value), "infinite");
        if (Double.isNaN(value)) {
            assertTrue(Site.number(value) > 0, "a fault keeps its origin");
        } else {
            Said.value(site, planned.type(), value);
        }
    }
}
