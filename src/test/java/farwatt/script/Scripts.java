package farwatt.script;

import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** One warm process for all tests of scripts, and the demo plans. */
final class Scripts {
    static final Path ROOT = Path.of(System.getProperty("farwatt.root", "."));
    static final Limits LIMITS = new Limits(512, 500_000_000L, Duration.ofMinutes(2), 1_000_000);
    /** Ends with the tests' own process. */
    static final ScriptHost HOST = new ScriptHost(LIMITS, coverage());

    /** The outcome and what was said on the way. */
    record Ran(Outcome outcome, Said said) {
        String printed() {
            return String.join("\n", said.printed);
        }

        String error() {
            return outcome.error().map(ScriptError::text).orElse(outcome.said());
        }
    }

    private Scripts() {}

    /** The process counts for coverage as the tests do. */
    static List<String> coverage() {
        return ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(argument -> argument.startsWith("-javaagent:"))
                .toList();
    }

    static Plan plan(String name) {
        try {
            return PlanReader.read(ROOT.resolve("scenarios").resolve(name + ".farwatt.json"))
                    .plan();
        } catch (Refusal e) {
            throw new IllegalStateException(e);
        }
    }

    static Plan ferry() {
        return plan("ferry-landing");
    }

    /** Runs a whole program on the ferry landing. */
    static Ran run(String text) {
        return run(new Script("test.js", text, Optional.empty(), Script.Kind.FILE), ferry());
    }

    static Ran run(Script script, Plan plan, String... arguments) {
        Said said = new Said();
        Outcome outcome = HOST.run(script, plan, "", List.of(arguments), said, new Cancel());
        return new Ran(outcome, said);
    }
}
