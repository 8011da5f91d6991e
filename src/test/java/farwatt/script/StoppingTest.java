package farwatt.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.report.Cancel;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StoppingTest {
    private static final boolean SOAK = Boolean.getBoolean("farwatt.soak");

    /** What is different in kind. */
    private static final List<String> ENDLESS = List.of(
            "for (;;) { try { for (;;) {} } catch (e) {} finally {} }",
            "Array.from({length: 4e9}, () => 0)",
            "while (true) { try { plan.get('trunk.length') } catch (e) {} }",
            "while (true) { print('again and again') }",
            "sweep({over: {'quay.ambient': span('-20 degC', '60 degC', '0.001 K'), 'trunk.length': span('1 m', '300 m', '0.01 m')}, read: ['gate.reserve_share']})",
            "for (;;) { room() }");

    private static final List<String> MORE_ENDLESS = List.of(
            "while (true) {}",
            "for (;;) { try { throw 1 } finally { continue } }",
            "(function again() { Promise.resolve().then(again) })()",
            "/^(a+)+\\1$/.test('a'.repeat(60) + 'b'); while (true) {}",
            "for (let i = 2n; ; i *= i) {}",
            "[1, 2, 3].sort(() => { while (true) {} })",
            "JSON.stringify({toJSON() { while (true) {} }})",
            "plan.findings({get level() { while (true) {} }})",
            "spread({vary: {'trunk.length': '95 m ± 5 %'}, runs: 5e6, read: ['gate.reserve_share']})",
            "grow({copy: 'cam 1', until: 'dark and not dark', most: 10000})",
            "for (;;) { limit({vary: {'trunk.length': ['1 m', '300 m']}, holds: 'dark'}) }",
            "Array.prototype.indexOf.call({length: 2 ** 53 - 1}, 1)");

    private static final List<String> BOMBS = List.of(
            "Array.from({length: 4e9}, (_, at) => [at])",
            "const all = []; while (true) { all.push(new Array(1000).fill(1.5)); }",
            "const a = []; while (true) { try { a.push(new Array(1000).fill(a.length)); } catch (e) {} }",
            "let text = 'x'; const all = []; while (true) { all.push((text += 'y').repeat(1e6).split('').join('.')); }",
            "const all = new Map(); for (let i = 0; ; i++) { all.set(i, new Float64Array(1e5)); }");

    /** Each of them costs a process, so the usual tests have the few that differ most. */
    static List<String> aCancelEndsAnythingAndTheNextRunWorks() {
        List<String> all = new ArrayList<>(ENDLESS);
        all.addAll(SOAK ? MORE_ENDLESS : List.of());
        return all;
    }

    static List<String> aHeapBombHitsItsOwnLimitAndNotOurs() {
        return SOAK ? BOMBS : BOMBS.subList(0, 1);
    }

    private static Outcome cancelled(ScriptHost host, String text) throws InterruptedException {
        Cancel cancel = new Cancel();
        CountDownLatch begun = new CountDownLatch(1);
        Thread canceller = new Thread(() -> {
            try {
                begun.await();
                Thread.sleep(100);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            cancel.ask();
        });
        canceller.start();
        ScriptListener listener = new ScriptListener() {
            @Override
            public void print(String said) {
                begun.countDown();
            }
        };
        Script script = new Script("a.js", "print('begun');" + text, Optional.empty(), Script.Kind.FILE);
        Outcome outcome = host.run(script, Scripts.ferry(), "", List.of(), listener, cancel);
        canceller.join();
        return outcome;
    }

    @ParameterizedTest
    @MethodSource
    void aCancelEndsAnythingAndTheNextRunWorks(String text) throws InterruptedException {
        Outcome outcome = cancelled(Scripts.HOST, text);
        assertEquals(Outcome.State.CANCELLED, outcome.state(), outcome.said());
        assertEquals(List.of(), outcome.kept());
        assertEquals("2", Scripts.run("print(1 + 1)").printed());
    }

    @ParameterizedTest
    @MethodSource
    void aHeapBombHitsItsOwnLimitAndNotOurs(String text) {
        Scripts.Ran ran = Scripts.run(text);
        assertEquals(Outcome.State.STOPPED, ran.outcome().state(), ran.outcome().said());
        assertTrue(ran.outcome().said().contains("512 MB"), ran.outcome().said());
        assertEquals("2", Scripts.run("print(1 + 1)").printed());
    }

    @Test
    void callingOneselfWithoutAnEndIsSaidAtOnce() {
        Scripts.Ran ran = Scripts.run("function f(n) { return f(n + 1) + 1; }\nf(0);\n");
        assertEquals(Outcome.State.FAILED, ran.outcome().state(), ran.outcome().said());
        assertEquals("The script calls itself without an end.", ran.error());
        assertEquals("2", Scripts.run("print(1 + 1)").printed());
    }

    @Test
    void statementsTimeAndPrintingHaveLimits() {
        Limits tight = new Limits(256, 100_000, Duration.ofSeconds(60), 1000);
        try (ScriptHost host = new ScriptHost(tight, Scripts.coverage())) {
            assertTrue(said(host, "while (true) { 1; }").contains("ran more statements"));
            assertTrue(said(host, "for (let i = 0; i < 1000; i++) { print('many words'); }")
                    .contains("printed more than 1000 characters"));
        }
        Limits hasty = new Limits(256, Long.MAX_VALUE, Duration.ofSeconds(3), 1000);
        try (ScriptHost host = new ScriptHost(hasty, Scripts.coverage())) {
            assertEquals(
                    "The script was stopped after 3 s, the longest that one may run.", said(host, "while (true) {}"));
        }
    }

    private static String said(ScriptHost host, String text) {
        Script script = new Script("a.js", text, Optional.empty(), Script.Kind.FILE);
        return host.run(script, Scripts.ferry(), "", List.of(), new ScriptListener() {}, new Cancel())
                .said();
    }
}
