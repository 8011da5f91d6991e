package farwatt.script;

import farwatt.report.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.SourceSection;

/** Turns what the language says of a mistake into plain words at the script's own line. */
final class Mistakes {
    private static final int LONGEST_CHAIN = 12;
    private static final Pattern UNDECLARED = Pattern.compile("ReferenceError: \"?([^\" ]+)\"? is not defined");
    private static final Pattern NOT_A_FUNCTION = Pattern.compile("TypeError: (.+) is not a function");
    private static final Pattern OF_NOTHING = Pattern.compile(
            "TypeError: Cannot (?:read|set) propert(?:y|ies) (?:of (?:undefined|null) )?.*?[\"']([^\"']+)[\"'].*");
    private static final Pattern CONSTANT =
            Pattern.compile("TypeError: Assignment to constant(?: variable)? ?\"?([^\" ]*)\"?.*");
    private static final Pattern TWICE =
            Pattern.compile("SyntaxError: .*?[\"']([^\"'\\n]+)[\"'] has already been declared.*", Pattern.DOTALL);
    private static final Pattern SYNTAX = Pattern.compile("SyntaxError: \\S*?:\\d+:\\d+ ([^\\n]+).*", Pattern.DOTALL);
    private static final Pattern MODULE = Pattern.compile(
            "(?:Error|TypeError): (?:Cannot (?:find|access) module|Operation is not allowed for:?|Access denied:?)[^\\w./]*([^'\\n]*).*",
            Pattern.DOTALL);
    private static final Pattern NAMED = Pattern.compile("(?:PlanError|\\w*Error): (.*)", Pattern.DOTALL);

    private Mistakes() {}

    /** @param names that are known in the script, for near ones */
    static ScriptError of(PolyglotException e, List<String> names) {
        return new ScriptError(text(e, names), chain(e));
    }

    private static String text(PolyglotException e, List<String> names) {
        String said = String.valueOf(e.getMessage());
        if (e.isHostException()) {
            return Messages.text(ScriptCode.BUG, e.asHostException().getClass().getSimpleName());
        }
        if (e.isResourceExhausted() || said.contains("Maximum call stack size exceeded")) {
            return Messages.text(ScriptCode.DEPTH);
        }
        return known(said, names).orElseGet(() -> {
            Matcher named = NAMED.matcher(said);
            return named.matches() ? named.group(1) : said;
        });
    }

    private static Optional<String> known(String said, List<String> names) {
        Matcher m = UNDECLARED.matcher(said);
        if (m.matches()) {
            return Optional.of(Messages.text(ScriptCode.NOT_DECLARED, m.group(1), Near.hint(m.group(1), names)));
        }
        m = NOT_A_FUNCTION.matcher(said);
        if (m.matches()) {
            return Optional.of(Messages.text(ScriptCode.NOT_CALLABLE, m.group(1)));
        }
        m = OF_NOTHING.matcher(said);
        if (m.matches()) {
            return Optional.of(Messages.text(ScriptCode.OF_NOTHING, m.group(1)));
        }
        m = CONSTANT.matcher(said);
        if (m.matches()) {
            return Optional.of(Messages.text(ScriptCode.CONSTANT, m.group(1)));
        }
        m = TWICE.matcher(said);
        if (m.matches()) {
            return Optional.of(Messages.text(ScriptCode.TWICE, m.group(1)));
        }
        m = MODULE.matcher(said);
        if (m.matches()) {
            return Optional.of(Messages.text(
                    ScriptCode.MODULE, m.group(1).substring(m.group(1).lastIndexOf('/') + 1)));
        }
        m = SYNTAX.matcher(said);
        return m.matches()
                ? Optional.of(Messages.text(ScriptCode.SYNTAX, m.group(1).replaceAll("\\beof\\b", "the end")))
                : Optional.empty();
    }

    private static List<ScriptError.Spot> chain(PolyglotException e) {
        List<ScriptError.Spot> chain = new ArrayList<>();
        for (PolyglotException.StackFrame frame : e.getPolyglotStackTrace()) {
            SourceSection section = frame.isGuestFrame() ? frame.getSourceLocation() : null;
            if (section != null && isTheirs(section) && chain.size() < LONGEST_CHAIN) {
                chain.add(spot(section, function(frame.getRootName())));
            }
        }
        SourceSection own = e.getSourceLocation();
        if (chain.isEmpty() && own != null && isTheirs(own)) {
            chain.add(spot(own, ""));
        }
        return chain;
    }

    private static boolean isTheirs(SourceSection section) {
        return section.isAvailable() && !section.getSource().getName().startsWith(Sandbox.OURS);
    }

    private static ScriptError.Spot spot(SourceSection section, String function) {
        String name = section.getSource().getName();
        return new ScriptError.Spot(
                name.startsWith("./") ? name.substring(2) : name,
                section.getStartLine(),
                section.getStartColumn(),
                function);
    }

    /** Whole scripts and functions without a name have none that anyone knows. */
    private static String function(String root) {
        return root.startsWith(":") || root.startsWith("(") || root.equals("anonymous") ? "" : root;
    }
}
