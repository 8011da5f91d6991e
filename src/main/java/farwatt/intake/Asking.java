package farwatt.intake;

import farwatt.report.Messages;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Gathers the questions that rows and columns leave open. */
final class Asking {
    private static final String ROW = "the whole row";
    private static final String ONE = "one device";

    private final List<Assembler.Item> items;
    private final Mapping mapping;

    Asking(List<Assembler.Item> items, Mapping mapping) {
        this.items = items;
        this.mapping = mapping;
    }

    /** Questions that rows raised, each once. */
    List<Question> questions() {
        List<Question> questions = new ArrayList<>();
        Set<String> ambiguous = new LinkedHashSet<>();
        int alone = 0;
        for (Assembler.Item item : items) {
            for (Remark remark : item.draft().remarks()) {
                if (remark.code() == IntakeSays.AMBIGUOUS) {
                    item.listing().columns().stream()
                            .filter(c -> c.decimal().isEmpty() && c.meaning().isMeasured())
                            .filter(c -> !item.sorted().row().cell(c.at()).isBlank())
                            .forEach(c -> ambiguous.add(c.shown()));
                }
                boolean lone = remark.code() == IntakeSays.NO_POWER
                        && item.sorted().row().full() == 1;
                alone += lone ? 1 : 0;
            }
        }
        for (String heading : ambiguous) {
            String text = Messages.text(IntakeSays.ASK_DECIMAL, heading);
            questions.add(new Question("decimal:" + heading, text, List.of("hold", "point", "comma"), "hold"));
        }
        String sections = mapping.answer("sections", "devices");
        if (alone > 0 || !sections.equals("devices")) {
            String text = Messages.text(IntakeSays.ASK_SECTIONS, alone);
            questions.add(new Question("sections", text, List.of("devices", "groups"), sections));
        }
        return questions;
    }

    /** Questions that columns raise by themselves. */
    static List<Question> columns(Listing listing) {
        List<Question> questions = new ArrayList<>();
        for (Meaning meaning : List.of(Meaning.LENGTH, Meaning.FIXED_LENGTH, Meaning.CORD_LENGTH)) {
            Optional<Column> column = listing.column(meaning);
            if (column.isPresent() && isBare(listing, column.get())) {
                String key = "unit:" + column.get().shown();
                questions.add(new Question(
                        key, Messages.text(IntakeSays.ASK_UNIT, column.get().shown()), List.of("m", "ft"), "m"));
            }
        }
        wattsAt(listing).ifPresent(questions::add);
        if (isTotalHeaded(listing)) {
            String used = isRowTotal(listing) ? ROW : ONE;
            String heading = listing.column(Meaning.WATTS).map(Column::shown).orElse("");
            questions.add(
                    new Question("watts_of", Messages.text(IntakeSays.ASK_WATTS_OF, heading), List.of(ROW, ONE), used));
        }
        return questions;
    }

    /** Watts whose heading says total, beside a quantity. */
    private static boolean isTotalHeaded(Listing listing) {
        boolean total = listing.column(Meaning.WATTS).stream()
                .flatMap(c -> List.of(c.heading().words().split(" ", -1)).stream())
                .anyMatch(word -> Words.isRemark("total", word));
        return total && listing.has(Meaning.QUANTITY);
    }

    /** Whether the watts are those of all devices of a row. */
    static boolean isRowTotal(Listing listing) {
        return isTotalHeaded(listing)
                && listing.answers().answer("watts_of", ROW).equals(ROW);
    }

    /** Neither the heading nor any cell of a length names a unit. */
    private static boolean isBare(Listing listing, Column column) {
        if (column.heading().unit().isPresent()) {
            return false;
        }
        int after = listing.heading().map(Heading::after).orElse(0);
        List<RawRow> rows = listing.sheet().rows();
        for (RawRow row : rows.subList(after, rows.size())) {
            String text = row.cell(column.at()).text();
            if (text.chars().anyMatch(Character::isLetter)) {
                return false;
            }
        }
        return true;
    }

    /** Where watts stand beside a converter's efficiency, or are called a load, they may be those behind it. */
    private static Optional<Question> wattsAt(Listing listing) {
        boolean load = listing.has(Meaning.LOAD);
        boolean beside = listing.has(Meaning.WATTS) && listing.has(Meaning.EFFICIENCY);
        boolean answered = !listing.answers().answer("watts_at", "").isEmpty();
        if (!load && !beside && !answered) {
            return Optional.empty();
        }
        String usual = load ? "behind the converter" : "network input";
        String heading = listing.column(load ? Meaning.LOAD : Meaning.WATTS)
                .map(Column::shown)
                .orElse("");
        return Optional.of(new Question(
                "watts_at",
                Messages.text(IntakeSays.ASK_WATTS_AT, heading),
                List.of("network input", "behind the converter"),
                listing.answers().answer("watts_at", usual)));
    }
}
