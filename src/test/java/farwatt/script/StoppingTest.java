package farwatt.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.report.Cancel;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StoppingTest {
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
    @ValueSource(
            strings = {
                "while (true) {}",
                "Array.from({length: 4e9}, () => 0)",
                "Array.prototype.indexOf.call({length: 2 ** 53 - 1}, 1)",
                "while (true) { try { plan.get('trunk.length') } catch (e) {} }",
                "while (true) { print('again and again') }",
                "sweep({over: {'quay.ambient': span('-20 degC', '60 degC', '0.001 K'), 'trunk.length': span('1 m', '300 m', '0.01 m')}, read: ['gate.reserve_share']})"
            })
    void aCancelEndsAnythingAndTheNextRunWorks(String text) throws InterruptedException {
        Outcome outcome = cancelled(Scripts.HOST, text);
        assertEquals(Outcome.State.CANCELLED, outcome.state(), outcome.said());
        assertEquals(List.of(), outcome.kept());
        assertEquals("2", Scripts.run("print(1 + 1)").printed());
    }

    @Test
    void aHeapBombHitsItsOwnLimitAndNotOurs() {
        Scripts.Ran ran = Scripts.run("const all = []; while (true) { all.push(new Array(1000).fill(1.5)); }");
        assertEquals(Outcome.State.STOPPED, ran.outcome().state(), ran.outcome().said());
        assertTrue(ran.outcome().said().contains("512 MB"), ran.outcome().said());
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
