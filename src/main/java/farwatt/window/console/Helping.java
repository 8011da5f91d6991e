package farwatt.window.console;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Name;
import farwatt.plan.Plan;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.script.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What there is to know about a word, each with an example. Any thread. */
final class Helping {
    /**
     * One word.
     *
     * @param word as it is looked up
     * @param call how it is written
     * @param sentence what it is or does
     * @param example a line that can be run
     */
    record Help(String word, String call, String sentence, String example) {
        /** True if any part of it has this in it, without regard to case. */
        boolean has(String part) {
            String all = word + " " + call + " " + sentence;
            return all.toLowerCase(Locale.ROOT).contains(part.strip().toLowerCase(Locale.ROOT));
        }
    }

    private Helping() {}

    /** Everything there is to know: the words of scripts, then the names of the plan. */
    static List<Help> all(Plan plan) {
        List<Help> all = new ArrayList<>();
        Words.all().forEach(word -> all.add(of(word)));
        for (Name name : Catalogue.all()) {
            if (name.table().isSite() || name.table() == Table.PLAN) {
                all.add(of(name, plan));
            }
        }
        return all;
    }

    private static Help of(Words.Word word) {
        return new Help(word.name(), word.call(), word.sentence(), word.example());
    }

    private static Help of(Name name, Plan plan) {
        return new Help(name.key(), name.path(), name.sentence(), example(name, plan));
    }

    private static String example(Name name, Plan plan) {
        String path = name.table() == Table.PLAN ? "plan." + name.key() : name.key();
        if (name.table().isSite()) {
            String row = plan.rows(name.table()).size() == 0
                    ? "name"
                    : plan.rows(name.table()).at(0).id();
            path = new StepPath(row, name.key()).text();
        }
        return "plan.text('" + Unquoted.quoted(path, '\'') + "')";
    }

    /** About the word that the caret is in or behind. */
    static Optional<Help> at(String text, int caret, Plan plan) {
        int from = caret;
        while (from > 0 && (Character.isJavaIdentifierPart(text.charAt(from - 1)) || text.charAt(from - 1) == '.')) {
            from--;
        }
        int to = caret;
        while (to < text.length() && Character.isJavaIdentifierPart(text.charAt(to))) {
            to++;
        }
        String word = text.substring(from, to);
        if (Tint.quotedAt(text, caret) >= 0) {
            String last = word.substring(word.lastIndexOf('.') + 1);
            return Catalogue.all().stream()
                    .filter(name -> name.key().equals(last))
                    .filter(name -> name.table().isSite() || name.table() == Table.PLAN)
                    .findFirst()
                    .map(name -> of(name, plan))
                    .or(() -> callAround(text, Tint.quotedAt(text, caret)).map(Helping::of));
        }
        return Words.find(word).or(() -> callAround(text, caret)).map(Helping::of);
    }

    /** The word whose brackets the caret stands in. */
    private static Optional<Words.Word> callAround(String text, int caret) {
        int depth = 0;
        for (int at = caret - 1; at >= 0 && text.charAt(at) != ';'; at--) {
            char c = text.charAt(at);
            if (c == ')') {
                depth++;
            } else if (c == '(' && depth-- == 0) {
                int from = at;
                while (from > 0
                        && (Character.isJavaIdentifierPart(text.charAt(from - 1)) || text.charAt(from - 1) == '.')) {
                    from--;
                }
                return Words.find(text.substring(from, at));
            }
        }
        return Optional.empty();
    }
}
