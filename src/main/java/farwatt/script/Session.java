package farwatt.script;

import farwatt.plan.Plan;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.graalvm.polyglot.PolyglotException;

/** Runs scripts, one after the other, and remembers what was typed at the console. Confined to one thread. */
final class Session {
    private final Console.Sender sender;
    private Optional<Typed> typed = Optional.empty();

    Session(Console.Sender sender) {
        this.sender = sender;
    }

    /**
     * What lines at the console work in.
     *
     * @param plan the plan that they work on, with the scenario
     */
    private record Typed(Sandbox sandbox, Console console, String plan) {}

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
        if (!typed.map(Typed::plan).equals(Optional.of(plan))) {
            forget();
            Console console = new Console(sender, order.printed());
            typed = Optional.of(new Typed(sandbox(order, console), console, plan));
        }
        Typed now = typed.get();
        now.console().again();
        Line end = evaluate(now.sandbox(), order.script());
        if (end.kind().equals("limit")) {
            forget();
        }
        return end;
    }

    private void forget() {
        typed.ifPresent(t -> t.sandbox().close());
        typed = Optional.empty();
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
            if (e.isCancelled()) {
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
