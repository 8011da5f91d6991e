package farwatt.window.takeoff;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.review.TakeOff;
import farwatt.window.desk.Desk;
import farwatt.window.desk.UnitsShown;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What to order as lines of texts, for the plan or the scenario looked at. For the window's thread. */
public final class TakeOffModel {
    private static final int DIGITS = 4;

    private final Desk desk;
    private final Supplier<UnitsShown> units;

    /**
     * What to order.
     *
     * @param title of what it is
     * @param lines the order, then what of it differs from the plan as it is
     * @param cost what all that has a price costs, "" where nothing has one
     * @param caution that goes with it on paper
     */
    public record Order(String title, List<Line> lines, String cost, String caution) {
        public Order {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One kind of thing.
     *
     * @param part what it is
     * @param kind what tells it from others
     * @param planned as the plan has it, with unit
     * @param order with slack
     * @param boxes that hold its runs whole, "" for what comes in none
     * @param change how the order differs from that of the plan as it is, "" where it does not
     * @param cost "" without a price
     * @param notes what is to be known of it
     */
    public record Line(
            String part,
            String kind,
            String planned,
            String order,
            String boxes,
            String change,
            String cost,
            String notes) {
        List<String> texts() {
            return List.of(part, kind, planned, order, boxes, change, cost, notes);
        }
    }

    public TakeOffModel(Desk desk, Supplier<UnitsShown> units) {
        this.desk = desk;
        this.units = units;
    }

    /** Counts it anew; the answer comes later. */
    public void count(Consumer<Order> answer) {
        Plan shown = desk.shown();
        Plan base = desk.base();
        String scenario = desk.scenario();
        Units known = new Units(shown.currency());
        Unit length = units.get().shown(known.need("m"), known);
        String caution = desk.review().map(review -> review.cautions().get(0)).orElse("");
        desk.ask(
                () -> {
                    TakeOff all = TakeOff.of(Calculation.of(shown));
                    TakeOff before = scenario.isEmpty() ? all : TakeOff.of(Calculation.of(base));
                    return order(shown, scenario, all, before.to(all), length, caution);
                },
                answer);
    }

    private static Order order(
            Plan plan,
            String scenario,
            TakeOff all,
            List<TakeOff.Difference> differences,
            Unit length,
            String caution) {
        String currency = plan.currency();
        List<Line> lines = new ArrayList<>();
        for (TakeOff.Line line : all.lines()) {
            String change = differences.stream()
                    .filter(d -> d.part() == line.part() && d.kind().equals(line.kind()))
                    .map(d -> change(d, length))
                    .findFirst()
                    .orElse("");
            lines.add(new Line(
                    line.part().word(),
                    line.kind(),
                    amount(line.part(), line.planned(), length),
                    amount(line.part(), line.order(), length),
                    line.boxes() == 0 ? "" : String.valueOf(line.boxes()),
                    change,
                    line.cost().map(cost -> money(cost, currency)).orElse(""),
                    notes(line)));
        }
        for (TakeOff.Difference gone : differences) {
            if (gone.after() == 0) {
                String none = amount(gone.part(), 0, length);
                lines.add(new Line(
                        gone.part().word(), gone.kind(), none, none, "", change(gone, length), "", "no more needed"));
            }
        }
        String name = plan.name().isEmpty() ? "Plan" : plan.name();
        String cost = all.cost() == 0 ? "" : money(all.cost(), currency);
        return new Order(scenario.isEmpty() ? name : name + ", " + scenario, lines, cost, caution);
    }

    private static String change(TakeOff.Difference difference, Unit length) {
        double more = difference.after() - difference.before();
        String sign = more > 0 ? "+" : more < 0 ? "−" : "";
        String boxes = difference.boxesAfter() == difference.boxesBefore()
                ? ""
                : ", boxes " + difference.boxesBefore() + " → " + difference.boxesAfter();
        return sign + amount(difference.part(), Math.abs(more), length) + boxes;
    }

    private static String amount(TakeOff.Part part, double value, Unit length) {
        return part.isLength() ? Show.text(value, length, DIGITS) : Show.number(value, DIGITS);
    }

    private static String money(double cost, String currency) {
        return Show.number(Math.rint(cost * 100) / 100, 12) + " " + currency;
    }

    private static String notes(TakeOff.Line line) {
        List<String> notes = new ArrayList<>();
        if (!line.unmeasured().isEmpty()) {
            notes.add("without a length: " + String.join(", ", line.unmeasured()));
        }
        if (!line.overlong().isEmpty()) {
            notes.add("longer than a box: " + String.join(", ", line.overlong()));
        }
        if (line.cost().isEmpty()) {
            notes.add("a price is missing");
        }
        return String.join("; ", notes);
    }
}
