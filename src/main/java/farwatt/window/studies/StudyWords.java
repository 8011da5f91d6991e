package farwatt.window.studies;

import farwatt.catalogue.PlanCells;
import farwatt.engine.Terms;
import farwatt.language.Completion;
import farwatt.language.Item;
import farwatt.language.Type;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.report.Span;
import farwatt.window.desk.Desk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What may stand at the caret of a field. For the window's thread. */
final class StudyWords {
    private static final int MOST = 60;

    private final Desk desk;
    private @Nullable Terms terms;

    StudyWords(Desk desk) {
        this.desk = desk;
    }

    private Terms terms() {
        Terms known = terms;
        if (known == null || !known.cover(desk.shown())) {
            known = Terms.of(desk.shown());
            terms = known;
        }
        return known;
    }

    /** What may stand at the caret, best first. */
    Completion at(StudyField field, String text, int caret) {
        if (field == StudyField.COPY) {
            return copied(text);
        }
        if (field.isVaried()) {
            return varied(text, caret);
        }
        return field.isExpression() ? expression(text, caret) : none();
    }

    private static Completion none() {
        return new Completion(new Span(0, 0), List.of());
    }

    private Completion expression(String text, int caret) {
        Completion all = terms().complete(Table.VALUES, "", "is", text, caret, Decimal.POINT);
        return new Completion(all.replace(), all.offers().stream().limit(MOST).toList());
    }

    private Completion copied(String text) {
        List<Completion.Offer> offers = new ArrayList<>();
        String wanted = text.strip().toLowerCase(java.util.Locale.ROOT);
        for (Table table : List.of(Table.DEVICES, Table.SWITCHES)) {
            for (Row row : desk.shown().rows(table)) {
                if (row.id().toLowerCase(java.util.Locale.ROOT).contains(wanted) && offers.size() < MOST) {
                    offers.add(offer(row.id(), Item.What.ROW));
                }
            }
        }
        return new Completion(new Span(0, text.length()), offers);
    }

    private static Completion.Offer offer(String text, Item.What what) {
        return new Completion.Offer(text, new Item(text, what, Type.Plain.TEXT, "", ""));
    }

    /** Before the equals sign a cell that is filled in by hand, after it the words that such a cell can hold. */
    private Completion varied(String text, int caret) {
        int is = text.indexOf('=');
        if (is < 0 || caret <= is) {
            String path = is < 0 ? text : text.substring(0, is);
            Completion all = terms().complete(Table.VALUES, "", "is", path, caret, Decimal.POINT);
            String before = path.substring(0, all.replace().from());
            List<Completion.Offer> offers = all.offers().stream()
                    .filter(offer -> leads(before + offer.text()))
                    .limit(MOST)
                    .toList();
            return new Completion(all.replace(), offers);
        }
        return values(text, is, caret);
    }

    private Completion values(String text, int is, int caret) {
        Optional<StepPath> path =
                StepPath.of(text.substring(0, is)).filter(p -> !p.row().isEmpty());
        Optional<Plan.Spot> spot = path.flatMap(p -> desk.shown().find(p.row()));
        int from = Math.max(text.lastIndexOf(',', caret - 1), is) + 1;
        while (from < caret && text.charAt(from) == ' ') {
            from++;
        }
        if (spot.isEmpty()) {
            return none();
        }
        Table table = spot.get().table();
        String id = desk.shown().rows(table).at(spot.get().place()).id();
        String part = text.substring(from, caret);
        Completion words = terms().complete(table, id, path.get().name(), part, part.length(), Decimal.POINT);
        List<Completion.Offer> offers = words.offers().stream()
                .filter(offer -> offer.item().what() == Item.What.CHOICE
                        || (offer.item().what() == Item.What.ROW && offer.text().startsWith(part)))
                .filter(offer -> !offer.text().equals(part))
                .toList();
        return new Completion(new Span(from, caret), offers);
    }

    /** True for what names a cell that is filled in by hand, or a row whose cells follow. */
    private boolean leads(String text) {
        Plan plan = desk.shown();
        Optional<StepPath> path = StepPath.of(text);
        if (path.isEmpty()) {
            return plan.find(unquoted(text)).isPresent();
        }
        String name = path.get().name();
        if (path.get().row().isEmpty()) {
            return plan.rows(Table.VALUES).place(name) >= 0
                    || plan.find(name).isPresent()
                    || PlanCells.of(plan).reader(Table.PLAN, "", name).isPresent();
        }
        return plan.find(path.get().row())
                .flatMap(spot -> PlanCells.of(plan)
                        .reader(
                                spot.table(),
                                plan.rows(spot.table()).at(spot.place()).id(),
                                name))
                .isPresent();
    }

    private static String unquoted(String text) {
        boolean quoted = text.length() > 1 && text.startsWith("'") && text.endsWith("'");
        return quoted ? text.substring(1, text.length() - 1).replace("''", "'") : text;
    }
}
