package farwatt.language;

import farwatt.quantity.Show;
import java.util.List;
import java.util.stream.Collectors;

/** What came out, in the words of the data files. */
final class Said {
    private Said() {}

    /** The text of a field: ␣, ⏎ and ⇥ stand for a space, a line end and a tab, ⍽ for a space that does not break. */
    static String text(String field) {
        return field.replace('␣', ' ').replace('⏎', '\n').replace('⇥', '\t').replace('⍽', '\u00a0');
    }

    /** {@code UNKNOWN_NAME "drw" -> draw}, apart by semicolons. */
    static String problems(String text, List<Problem> problems) {
        return problems.stream().map(p -> problem(text, p)).collect(Collectors.joining(" ; "));
    }

    private static String problem(String text, Problem p) {
        String place = text.substring(p.span().from(), p.span().to());
        String instead = p.instead().map(i -> " -> " + i).orElse("");
        return p.code().name() + " <" + place + ">" + instead;
    }

    static String type(Type type) {
        if (type instanceof Type.Amount amount) {
            String symbol = Site.UNITS.plain(amount.dimension()).symbol();
            return symbol.isEmpty() ? "number" : symbol;
        }
        if (type instanceof Type.Choice choice) {
            return "one of " + String.join(",", choice.words());
        }
        if (type instanceof Type.RowOf row) {
            return "row of " + row.kind();
        }
        return type.toString().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }

    /** A field such as {@code any}, {@code W}, {@code yes/no}, {@code open,tray} or {@code row of run}. */
    static Wanted wanted(String field) {
        if (field.equals("any")) {
            return Wanted.ANY;
        }
        if (field.startsWith("row of ")) {
            return Wanted.a(new Type.RowOf(field.substring("row of ".length())));
        }
        if (field.equals("number")) {
            return Wanted.a(Site.number());
        }
        Type type = Site.type(field);
        return Site.UNITS.of(field).isPresent() ? Wanted.in(Site.UNITS.need(field)) : Wanted.a(type);
    }

    /** A value in its usual unit, a word, an id or the fault. */
    static String value(Site site, Type type, double value) {
        if (Double.isNaN(value)) {
            return fault(site, Site.number(value));
        }
        if (type instanceof Type.Choice choice) {
            return choice.words().get((int) value);
        }
        if (type instanceof Type.RowOf) {
            return "'" + site.ids.get((int) value) + "'";
        }
        if (type == Type.Plain.YES_NO) {
            return value == 1 ? "yes" : value == 0 ? "no" : "neither " + value;
        }
        if (type == Type.Plain.TEXT) {
            return "\"" + site.words.get((int) value) + "\"";
        }
        return Show.text(value, type.unit(Site.UNITS), 10);
    }

    private static String fault(Site site, int number) {
        if (number <= site.raised.size()) {
            Site.Raised raised = site.raised.get(number - 1);
            return "!" + raised.kind() + " " + raised.span().from() + ".."
                    + raised.span().to();
        }
        return "!host " + number;
    }
}
