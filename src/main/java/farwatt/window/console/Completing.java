package farwatt.window.console;

import farwatt.language.Completion;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.script.Members;
import farwatt.script.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Ways to go on at the caret of a script: the words of scripts, and inside quotes the names of the plan, its tables,
 * rows and scenarios. For the window's thread.
 */
final class Completing {
    private static final Pattern CALL = Pattern.compile("(?:plan\\.)?(\\w+)\\s*\\(\\s*$");
    private static final Pattern MEMBER = Pattern.compile("(\\w+)\\s*:\\s*$");
    private static final int MOST = 60;

    /** Knows the names that expressions can use. */
    @FunctionalInterface
    interface Names {
        Completion at(String expression, int caret);
    }

    /**
     * One way to go on.
     *
     * @param text what is put in
     * @param word what a person reads
     * @param about what it is
     */
    record Offer(String text, String word, String about) {}

    /**
     * What can be put in.
     *
     * @param from the first place that an offer replaces
     * @param to the place after the last
     */
    record Offers(int from, int to, List<Offer> all) {
        static final Offers NONE = new Offers(0, 0, List.of());

        Offers {
            all = List.copyOf(all);
        }
    }

    private final Supplier<Plan> plan;
    private final Names names;
    private final Supplier<List<String>> before;

    /** @param before what was run before, oldest first: names may have been made there */
    Completing(Supplier<Plan> plan, Names names, Supplier<List<String>> before) {
        this.plan = plan;
        this.names = names;
        this.before = before;
    }

    /** The ways to go on. */
    Offers at(String text, int caret) {
        if (Tint.isRemark(text, caret)) {
            return Offers.NONE;
        }
        int quote = Tint.quotedAt(text, caret);
        return quote < 0 ? word(text, caret) : quoted(text, quote, caret);
    }

    private Offers word(String text, int caret) {
        int from = caret;
        while (from > 0 && (Character.isJavaIdentifierPart(text.charAt(from - 1)) || text.charAt(from - 1) == '.')) {
            from--;
        }
        String begun = text.substring(from, caret);
        if (begun.isEmpty() || Character.isDigit(begun.charAt(0))) {
            return Offers.NONE;
        }
        int dot = begun.indexOf('.');
        if (dot > 0 && dot == begun.lastIndexOf('.')) {
            Optional<String> kind = kind(text.substring(0, from), begun.substring(0, dot));
            if (kind.isPresent()) {
                return new Offers(from, caret, members(kind.get(), begun, dot + 1));
            }
        }
        List<Offer> all = new ArrayList<>();
        for (Words.Word word : Words.complete(begun)) {
            if (!word.name().equals(begun)) {
                all.add(new Offer(word.name(), word.call(), word.sentence()));
            }
        }
        return new Offers(from, caret, all);
    }

    /** What a name holds the result of, looked for in the text before the caret and in what was run before. */
    private Optional<String> kind(String text, String name) {
        Optional<String> here = Members.kind(text, name);
        return here.isPresent() ? here : Members.kind(String.join("\n", before.get()), name);
    }

    private static List<Offer> members(String kind, String begun, int from) {
        String name = begun.substring(0, from);
        String start = begun.substring(from);
        return Members.of(kind).stream()
                .filter(word -> word.name().startsWith(start) && !word.name().equals(start))
                .map(word -> new Offer(name + word.name(), name + word.call(), word.sentence()))
                .toList();
    }

    private Offers quoted(String text, int quote, int caret) {
        Unquoted inside = Unquoted.of(text, quote + 1, caret);
        String before = text.substring(Math.max(0, quote - 60), quote);
        List<String> whole = whole(before);
        char sign = text.charAt(quote);
        if (!whole.isEmpty()) {
            String begun = inside.text().toLowerCase(Locale.ROOT);
            List<Offer> all = whole.stream()
                    .filter(each -> each.toLowerCase(Locale.ROOT).contains(begun) && !each.equals(inside.text()))
                    .limit(MOST)
                    .map(each -> new Offer(Unquoted.quoted(each, sign), each, ""))
                    .toList();
            return new Offers(quote + 1, caret, all);
        }
        Completion found = names.at(inside.text(), inside.text().length());
        List<Offer> all = found.offers().stream()
                .limit(MOST)
                .map(offer -> new Offer(Unquoted.quoted(offer.text(), sign), offer.text(), about(offer)))
                .toList();
        return new Offers(inside.place(found.replace().from()), caret, all);
    }

    private static String about(Completion.Offer offer) {
        String unit = offer.item().unit();
        return unit.isEmpty()
                ? offer.item().sentence()
                : unit + " · " + offer.item().sentence();
    }

    /** The texts that may stand there as a whole; empty where an expression stands. */
    private List<String> whole(String before) {
        Matcher call = CALL.matcher(before);
        if (call.find()) {
            return switch (call.group(1)) {
                case "rows", "add" -> tables();
                case "scenario" ->
                    plan.get().scenarios().stream().map(s -> s.id()).toList();
                case "drop" -> ids(Table.values());
                default -> List.of();
            };
        }
        Matcher member = MEMBER.matcher(before);
        if (member.find()) {
            return switch (member.group(1)) {
                case "copy" -> ids(Table.DEVICES);
                case "from" -> ids(Table.SOURCES, Table.SWITCHES);
                case "zone" -> ids(Table.ZONES);
                case "level" -> List.of("fail", "warn", "note");
                default -> List.of();
            };
        }
        return List.of();
    }

    private static List<String> tables() {
        return Arrays.stream(Table.values()).map(Table::key).toList();
    }

    private List<String> ids(Table... tables) {
        List<String> all = new ArrayList<>();
        for (Table table : tables) {
            if (table.isSite()) {
                for (Row row : plan.get().rows(table)) {
                    all.add(row.id());
                }
            }
        }
        return all;
    }
}
