package farwatt.command;

import farwatt.report.Cancel;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.workbook.StudyTable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;

/** A study as it is called on the command line, in one text: {@code sweep --over 'a = 1, 2' --read b}. */
final class StudyCall {
    private static final Map<String, Supplier<StudyVerb>> VERBS = Map.of(
            "sweep", SweepVerb::new,
            "grow", GrowVerb::new,
            "limit", LimitVerb::new,
            "spread", SpreadVerb::new,
            "sensitivity", SensitivityVerb::new,
            "room", RoomVerb::new);

    private final StudyVerb verb;

    private StudyCall(StudyVerb verb) {
        this.verb = verb;
    }

    /**
     * Reads a call.
     *
     * @param usual what holds unless the call says otherwise: the plan first, then options
     * @throws Refusal if it names no study or its options cannot be understood
     */
    static StudyCall of(String text, List<String> usual) throws Refusal {
        List<String> words = words(text);
        Supplier<StudyVerb> found = words.isEmpty() ? null : VERBS.get(words.get(0));
        if (found == null) {
            String verbs = String.join(", ", VERBS.keySet().stream().sorted().toList());
            throw Refusal.of(CommandCode.NO_STUDY, text.strip(), verbs);
        }
        StudyVerb verb = found.get();
        List<String> all = new ArrayList<>(usual);
        all.addAll(words.subList(1, words.size()));
        try {
            new CommandLine(verb).setOverwrittenOptionsAllowed(true).parseArgs(all.toArray(new String[0]));
        } catch (CommandLine.ParameterException e) {
            throw Refusal.of(CommandCode.BAD_STUDY, text.strip(), String.valueOf(e.getMessage()));
        }
        return new StudyCall(verb);
    }

    List<StudyTable> sheets(Progress progress, Cancel cancel) throws Refusal, IOException {
        return verb.sheets(progress, cancel);
    }

    /** Words apart by blanks; what stands in quotes of either kind is one, and the other kind may stand inside. */
    static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        boolean begun = false;
        char quote = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quote != 0 && c == quote) {
                quote = 0;
            } else if (quote == 0 && (c == '\'' || c == '"')) {
                quote = c;
                begun = true;
            } else if (quote == 0 && Character.isWhitespace(c)) {
                if (begun) {
                    words.add(word.toString());
                }
                word.setLength(0);
                begun = false;
            } else {
                word.append(c);
                begun = true;
            }
        }
        if (begun) {
            words.add(word.toString());
        }
        return words;
    }
}
