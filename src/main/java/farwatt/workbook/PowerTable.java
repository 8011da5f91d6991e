package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What each node can give, gives and keeps, corner by corner, with what is kept worked out by the workbook itself. */
final class PowerTable {
    private static final String SHORT = "short";
    private static final String BELOW = "below target";
    private static final String HOLDS = "holds";

    private PowerTable() {}

    static Schedule of(Calculation calc, List<NodePower> all) {
        double target = target(calc);
        List<Schedule.Fact> facts = List.of(new Schedule.Fact(
                "target",
                "reserve to keep",
                Form.SHARE,
                Entry.number(target),
                "The share of what a node can give that should stay unused."));
        Map<String, List<NodePower>> byNode = new LinkedHashMap<>();
        for (NodePower one : all) {
            byNode.computeIfAbsent(one.table() + "/" + one.id(), k -> new ArrayList<>())
                    .add(one);
        }
        List<List<Entry>> lines = new ArrayList<>();
        byNode.values().forEach(corners -> corners.forEach(one -> lines.add(line(one, target))));
        return Schedule.trimmed(
                Titles.POWER,
                "What each source and switch can give in each corner, what is asked of it, and which limit binds.",
                facts,
                columns(),
                lines);
    }

    static double target(Calculation calc) {
        var value = calc.value(Table.PLAN, 0, "reserve_target");
        return value.isPresent() ? value.inside() : Double.NaN;
    }

    private static List<Column> columns() {
        return List.of(
                Column.of("node", "node", Form.WORD),
                Column.of("kind", "kind", Form.WORD),
                Column.of("corner", "corner", Form.WORD),
                Column.of("available", "can give", Form.ONE).in("W"),
                Column.of("sent", "gives", Form.ONE).in("W"),
                Column.of("reserve", "left", Form.ONE).in("W"),
                Column.of("share", "share left", Form.SHARE),
                Column.of("bound", "bound by", Form.WORD),
                Column.of("verdict", "verdict", Form.WORD),
                Column.of("why", "why a figure is missing", Form.SENTENCE));
    }

    private static List<Entry> line(NodePower one, double target) {
        boolean known = !Double.isNaN(one.share());
        String verdict = verdict(one.share(), target);
        return List.of(
                Entry.words(one.id()),
                Entry.words(one.kind()),
                Entry.words(one.corner().word()),
                Entry.number(one.available()),
                Entry.number(one.sent()),
                Double.isNaN(one.reserve()) ? Entry.NONE : Entry.live("{available}-{sent}", one.reserve()),
                known ? Entry.live("{reserve}/{available}", one.share()) : Entry.NONE,
                Entry.words(one.bound()),
                known
                        ? Entry.live(
                                        "IF({share}<0,\"" + SHORT + "\",IF({share}<{#target},\"" + BELOW + "\",\""
                                                + HOLDS + "\"))",
                                        verdict)
                                .in(tone(verdict))
                        : Entry.words("no figure").in(Tone.BAD),
                Entry.words(one.why()));
    }

    /** How a share of reserve is called. */
    static String verdict(double share, double target) {
        return share < 0 ? SHORT : share < target ? BELOW : HOLDS;
    }

    static Tone tone(String verdict) {
        return verdict.equals(HOLDS) ? Tone.GOOD : verdict.equals(BELOW) ? Tone.POOR : Tone.BAD;
    }
}
