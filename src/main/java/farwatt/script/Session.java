package farwatt.script;

import farwatt.plan.Plan;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.graalvm.polyglot.PolyglotException;

/** Runs scripts, one after the other, and remembers what was typed at the console. Confined to one thread. */
final class Session {
    /** What the objects of the prelude are called: not members of the global object that anyone can list. */
    private final Console.Sender sender;

    private String consolePlan = "";
    private java.util.Optional<Sandbox> console = java.util.Optional.empty();
    private Console words;

    Session(Console.Sender sender) {
        this.sender = sender;
        this.words = new Console(sender, 0);
    }

    /** Runs what a message asks for and says what came of it. */
    Line run(Order order) {
        try {
            return order.script().kind() == Script.Kind.LINE ? line(order) : file(order);
        } catch (Refusal e) {
            return Line.of("refused", e.notice().line());
        }
    }

    private Line file(Order order) throws Refusal {
        Console out = new Console(sender, order.printed());
        try (Sandbox sandbox = sandbox(order, out)) {
            return evaluate(sandbox, order.script());
        }
    }

    /** Lines see what those before them named, as long as the plan is the same. */
    private Line line(Order order) throws Refusal {
        String plan = order.scenario() + "\n" + order.plan();
        if (console.isEmpty() || !consolePlan.equals(plan)) {
            forget();
            words = new Console(sender, order.printed());
            console = java.util.Optional.of(sandbox(order, words));
            consolePlan = plan;
        }
        return evaluate(console.get(), order.script());
    }

    /** Forgets what was typed at the console. */
    void forget() {
        console.ifPresent(Sandbox::close);
        console = java.util.Optional.empty();
    }

    private static Sandbox sandbox(Order order, Console out) throws Refusal {
        Plan plan = Changes.plan(order.plan());
        WorkingPlan working = WorkingPlan.of(plan, order.scenario());
        return new Sandbox(working, order.script(), order.arguments(), order.statements(), out);
    }

    private static Line evaluate(Sandbox sandbox, Script script) {
        try {
            return Line.of("done", sandbox.run(script));
        } catch (PolyglotException e) {
            if (e.isCancelled() || (e.isResourceExhausted() && e.isCancelled())) {
                return Line.of("limit", Messages.text(ScriptCode.TOO_MANY_STATEMENTS));
            }
            return failed(e);
        } catch (IOException e) {
            return Line.of("refused", Messages.text(ScriptCode.NO_SCRIPT, script.name()));
        }
    }

    private static Line failed(PolyglotException e) {
        ScriptError error = Mistakes.of(e, Words.globals());
        List<String> parts = new ArrayList<>(List.of(error.text()));
        for (ScriptError.Spot spot : error.chain()) {
            parts.add(spot.source());
            parts.add(Integer.toString(spot.line()));
            parts.add(Integer.toString(spot.column()));
            parts.add(spot.function());
        }
        return new Line("failed", parts);
    }
}
