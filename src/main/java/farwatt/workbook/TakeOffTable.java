package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.plan.Table;
import farwatt.review.TakeOff;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What to order: cable and cord by their kind with slack, what goes onto cables, gear by its kind. */
public final class TakeOffTable {
    private static final int MOST_NAMED = 12;

    private TakeOffTable() {}

    static Schedule of(Calculation calc) {
        double typed = calc.value(Table.PLAN, 0, "slack").inside();
        double slack = Double.isFinite(typed) ? typed : 0;
        List<List<Entry>> lines = new ArrayList<>();
        TakeOff.of(calc).lines().forEach(line -> lines.add(line(line)));
        return Schedule.trimmed(
                Titles.TAKE_OFF,
                "What to order. Cable without its cords; slack is added to lengths only.",
                List.of(new Schedule.Fact("slack", "slack", Form.SHARE, Entry.number(slack), "Added to every length.")),
                List.of(
                        Column.of("what", "what", Form.WORD),
                        Column.of("kind", "kind", Form.SENTENCE),
                        Column.of("rows", "for", Form.WHOLE),
                        Column.of("quantity", "planned", Form.ONE),
                        Column.of("order", "with slack", Form.ONE),
                        Column.of("unit", "unit", Form.WORD),
                        Column.of("boxes", "boxes", Form.WHOLE),
                        Column.of("cost", "cost", Form.TWO)
                                .in(calc.plan().currency().toUpperCase(Locale.ROOT))
                                .summed(),
                        Column.of("note", "note", Form.SENTENCE)),
                lines);
    }

    private static List<Entry> line(TakeOff.Line line) {
        boolean length = line.part().isLength();
        Form form = length ? Form.ONE : Form.WHOLE;
        Entry order = length
                ? Entry.live("{quantity}*(1+{#slack})", line.order())
                : Entry.live("{quantity}", line.order()).as(form);
        return List.of(
                Entry.words(line.part().word()),
                Entry.words(line.kind()),
                Entry.number(line.rows().size()),
                Entry.number(line.planned()).as(form),
                order,
                Entry.words(length ? "m" : "pcs"),
                line.boxes() > 0 ? Entry.number(line.boxes()) : Entry.NONE,
                price(line.cost()),
                Entry.words(note(line)));
    }

    private static Entry price(Optional<Double> cost) {
        return cost.map(Entry::number).orElse(Entry.NONE);
    }

    private static String note(TakeOff.Line line) {
        List<String> said = new ArrayList<>();
        if (line.boxes() > 0) {
            said.add("boxes of " + (int) TakeOff.BOX + " m, no run in two pieces");
        }
        if (!line.overlong().isEmpty()) {
            said.add("from a reel: " + named(line.overlong()));
        }
        if (!line.unmeasured().isEmpty()) {
            said.add("no length yet: " + named(line.unmeasured()));
        }
        return String.join("; ", said);
    }

    private static String named(List<String> ids) {
        String some = String.join(", ", ids.subList(0, Math.min(MOST_NAMED, ids.size())));
        return ids.size() > MOST_NAMED ? some + " and " + (ids.size() - MOST_NAMED) + " more" : some;
    }

    /**
     * What other plans need more or less than the first; without lines where they need the same.
     *
     * @param sides at least one; the first is what the others are held against
     */
    public static Schedule differences(List<ScenarioTable.Side> sides) {
        TakeOff base = TakeOff.of(sides.get(0).calc());
        List<List<Entry>> lines = new ArrayList<>();
        for (ScenarioTable.Side side : sides.subList(1, sides.size())) {
            base.to(TakeOff.of(side.calc())).forEach(one -> lines.add(difference(side.id(), one)));
        }
        String currency = sides.get(0).calc().plan().currency().toUpperCase(Locale.ROOT);
        return new Schedule(
                Titles.ORDERS,
                "What each scenario needs more or less than " + sides.get(0).id() + ", with slack.",
                List.of(
                        Column.of("scenario", "scenario", Form.WORD),
                        Column.of("what", "what", Form.WORD),
                        Column.of("kind", "kind", Form.SENTENCE),
                        Column.of("before", sides.get(0).id(), Form.ONE),
                        Column.of("after", "scenario needs", Form.ONE),
                        Column.of("more", "more", Form.ONE),
                        Column.of("unit", "unit", Form.WORD),
                        Column.of("boxes_before", "boxes before", Form.WHOLE),
                        Column.of("boxes_after", "boxes after", Form.WHOLE),
                        Column.of("cost", "costs more", Form.TWO).in(currency)),
                Schedule.Lines.of(lines));
    }

    private static List<Entry> difference(String scenario, TakeOff.Difference one) {
        boolean length = one.part().isLength();
        Form form = length ? Form.ONE : Form.WHOLE;
        boolean boxed = one.boxesBefore() > 0 || one.boxesAfter() > 0;
        return List.of(
                Entry.words(scenario),
                Entry.words(one.part().word()),
                Entry.words(one.kind()),
                Entry.number(one.before()).as(form),
                Entry.number(one.after()).as(form),
                Entry.live("{after}-{before}", one.after() - one.before()).as(form),
                Entry.words(length ? "m" : "pcs"),
                boxed ? Entry.number(one.boxesBefore()) : Entry.NONE,
                boxed ? Entry.number(one.boxesAfter()) : Entry.NONE,
                price(one.cost()));
    }
}
