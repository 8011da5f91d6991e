package farwatt.language;

import farwatt.quantity.Decimal;
import farwatt.quantity.Literal;
import farwatt.quantity.Unit;
import farwatt.report.Code;
import farwatt.report.Messages;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Finds out what may stand at a cursor: puts a word nobody knows in its place, reads and checks the text as usual and
 * asks the parser and the checker what they made of that word.
 */
final class Completer {
    private static final int MOST = 200;
    private static final String FILLER = "hole";

    private final String text;
    private final int cursor;
    private final Scope scope;
    private final Wanted wanted;
    private final Decimal decimal;

    Completer(String text, int cursor, Scope scope, Wanted wanted, Decimal decimal) {
        this.text = text;
        this.cursor = Math.max(0, Math.min(cursor, text.length()));
        this.scope = scope;
        this.wanted = wanted;
        this.decimal = decimal;
    }

    Completion completion() {
        Span nothing = new Span(cursor, cursor);
        if (text.length() > Parser.LONGEST) {
            return new Completion(nothing, List.of());
        }
        List<Token> tokens = Language.tokens(text, scope.units(), decimal);
        Optional<Token> touched = tokens.stream()
                .filter(t -> t.span().from() < cursor && cursor <= t.span().to())
                .filter(t -> t.kind() != Token.Kind.SIGN)
                .findFirst();
        if (touched.isEmpty()) {
            return offers(nothing, Token.Kind.NAME, bareNumberBefore(tokens));
        }
        Token token = touched.get();
        if (token.literal().isEmpty()) {
            return offers(token.span(), token.kind(), Optional.empty());
        }
        Literal literal = token.literal().get();
        return literal.units().stream()
                .filter(unit -> unit.from() < cursor && cursor <= unit.to())
                .findFirst()
                .map(unit -> offers(unit, Token.Kind.NAME, Optional.of(literal)))
                .orElse(new Completion(nothing, List.of()));
    }

    /** The number without a unit that stands right before the cursor, spaces aside. */
    private Optional<Literal> bareNumberBefore(List<Token> tokens) {
        Optional<Token> last = tokens.stream()
                .filter(t -> t.span().to() <= cursor && t.kind() != Token.Kind.END)
                .reduce((a, b) -> b);
        return last.flatMap(Token::literal).filter(l -> l.units().isEmpty());
    }

    private Completion offers(Span replace, Token.Kind kind, Optional<Literal> number) {
        String filler = FILLER;
        while (text.contains(filler)) {
            filler += "_";
        }
        String filled = text.substring(0, replace.from()) + " " + filler + " " + text.substring(replace.to());
        int at = replace.from() + 1;
        Hole hole = new Hole(new Span(at, at + filler.length()));
        Parser parser = new Parser(filled, scope.units(), decimal, Optional.of(hole.span()));
        Language.check(parser.parsed(), scope, wanted, hole);
        List<Completion.Offer> all = new ArrayList<>();
        Set<Keyword> possible = parser.possibleInHole();
        boolean value = possible.isEmpty() || possible.equals(Set.of(Keyword.NOT));
        if (value) {
            hole.place().ifPresent(place -> values(place, kind, all));
        } else if (kind == Token.Kind.NAME || kind == Token.Kind.WORD) {
            possible.forEach(keyword -> all.add(word(keyword)));
            number.ifPresent(n -> units(all));
        }
        Type type = hole.place().filter(Hole.Value.class::isInstance).isPresent() && value
                ? ((Hole.Value) hole.place().get()).wanted()
                : wanted.type();
        return new Completion(replace, sorted(all, text.substring(replace.from(), cursor), type));
    }

    private static void values(Hole.Place place, Token.Kind kind, List<Completion.Offer> all) {
        if (place instanceof Hole.Member member) {
            named(member.scope().members(member.kind()), all);
        } else if (place instanceof Hole.OfPlan ofPlan) {
            named(ofPlan.scope().planItems(), all);
        } else if (place instanceof Hole.Table table) {
            named(table.scope().tables(), all);
        } else if (place instanceof Hole.Called) {
            functions("", all);
        } else {
            value((Hole.Value) place, kind, all);
        }
    }

    private static void value(Hole.Value place, Token.Kind kind, List<Completion.Offer> all) {
        if (kind != Token.Kind.ROW && place.wanted() instanceof Type.Choice choice) {
            choice.words().forEach(word -> all.add(choice(word, choice)));
        }
        if (kind == Token.Kind.TEXT) {
            return;
        }
        for (Item item : place.scope().items()) {
            boolean row = item.what() == Item.What.ROW;
            if (row || kind != Token.Kind.ROW) {
                all.add(new Completion.Offer(row ? Language.row(item.name(), place.scope()) : item.name(), item));
            }
        }
        if (kind != Token.Kind.ROW) {
            words(all);
        }
    }

    private static void words(List<Completion.Offer> all) {
        Keyword.startingValues().forEach(keyword -> all.add(word(keyword)));
        functions("(", all);
    }

    private static void functions(String after, List<Completion.Offer> all) {
        for (Keyword keyword : Keyword.values()) {
            if (keyword.gather().isPresent()) {
                all.add(function(keyword.word(), after, keyword));
            }
        }
        for (Function function : Function.values()) {
            all.add(function(function.word(), after, function));
        }
    }

    private static Completion.Offer word(Keyword keyword) {
        Item item = new Item(keyword.word(), Item.What.WORD, Type.Plain.UNKNOWN, "", Messages.text(keyword));
        return new Completion.Offer(keyword.word(), item);
    }

    private static Completion.Offer function(String name, String after, Code sentence) {
        Item item = new Item(name, Item.What.FUNCTION, Type.Plain.UNKNOWN, "", Messages.text(sentence));
        return new Completion.Offer(name + after, item);
    }

    private static Completion.Offer choice(String word, Type.Choice choice) {
        return new Completion.Offer(Printer.quotedText(word), new Item(word, Item.What.CHOICE, choice, "", ""));
    }

    private static void named(Collection<Item> items, List<Completion.Offer> all) {
        items.forEach(item -> all.add(new Completion.Offer(item.name(), item)));
    }

    /** All units, those of the wanted measure first. */
    private void units(List<Completion.Offer> all) {
        for (String spelling : scope.units().spellings()) {
            Unit unit = scope.units().need(spelling);
            Item item = new Item(spelling, Item.What.UNIT, Type.of(unit), spelling, "");
            all.add(new Completion.Offer(spelling, item));
        }
    }

    /** Those that start as typed before those that only contain it, each with the fitting types first. */
    private static List<Completion.Offer> sorted(List<Completion.Offer> all, String typed, Type type) {
        String bare = withoutQuote(typed);
        String start = bare.toLowerCase(Locale.ROOT);
        Comparator<Completion.Offer> order = Comparator.comparing((Completion.Offer o) -> !startsWith(o, start))
                .thenComparing(o -> !o.item().name().startsWith(bare))
                .thenComparing(
                        o -> type == Type.Plain.UNKNOWN || !o.item().type().equals(type))
                .thenComparing(o -> o.item().what());
        return all.stream()
                .filter(o -> folded(o.item().name()).contains(start))
                .sorted(order)
                .limit(MOST)
                .toList();
    }

    private static boolean startsWith(Completion.Offer offer, String start) {
        return folded(offer.item().name()).startsWith(start);
    }

    private static String folded(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private static String withoutQuote(String typed) {
        return typed.startsWith("'") || typed.startsWith("\"") ? typed.substring(1) : typed;
    }
}
