package farwatt.script;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * One run as it is asked for over the line.
 *
 * @param plan text of a plan file
 * @param scenario the scenario that the script works on, "" for base
 * @param statements the most it may run
 * @param printed the most characters it may print
 */
record Order(Script script, String plan, String scenario, List<String> arguments, long statements, long printed) {
    private static final int FIXED = 8;

    Line line() {
        List<String> parts = new java.util.ArrayList<>(List.of(
                script.name(),
                script.text(),
                script.folder().map(Path::toString).orElse(""),
                script.kind().name(),
                plan,
                scenario,
                Long.toString(statements),
                Long.toString(printed)));
        parts.addAll(arguments);
        return new Line("run", parts);
    }

    static Order of(Line line) {
        Optional<Path> folder =
                Optional.of(line.part(2)).filter(text -> !text.isEmpty()).map(Path::of);
        Script script = new Script(line.part(0), line.part(1), folder, Script.Kind.valueOf(line.part(3)));
        return new Order(
                script,
                line.part(4),
                line.part(5),
                line.parts().subList(FIXED, line.parts().size()),
                Long.parseLong(line.part(6)),
                Long.parseLong(line.part(7)));
    }
}
