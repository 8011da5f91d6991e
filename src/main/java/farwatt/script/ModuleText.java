package farwatt.script;

import java.util.regex.Pattern;

/** Tells modules, which import others or hand something out, from plain scripts. */
final class ModuleText {
    private static final Pattern IMPORT =
            Pattern.compile("^[ \\t]*(?:import[ \\t]*[{*'\"\\w$]|export[ \\t{*])", Pattern.MULTILINE);
    private static final Pattern CALL = Pattern.compile("^[ \\t]*import[ \\t]*\\(", Pattern.MULTILINE);

    private ModuleText() {}

    static boolean isModule(String text) {
        return IMPORT.matcher(text).find() && !CALL.matcher(text).lookingAt();
    }
}
