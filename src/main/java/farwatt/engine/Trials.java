package farwatt.engine;

import farwatt.language.Type;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A plan tried again and again with other values in a few cells, in one corner. What is read is the same to the last
 * bit as in a calculation of the plan with these values typed. Confined to one thread at a time.
 */
public final class Trials {
    private final List<Knob> knobs;
    private final List<String> reads;
    private final Calculation calculation;
    private final List<Unit> units = new ArrayList<>();
    private final List<Change> due = new ArrayList<>();
    private final Value[] values;

    private Trials(Plan plan, Corner corner, List<Knob> knobs, List<String> reads) {
        this.knobs = List.copyOf(knobs);
        this.reads = List.copyOf(reads);
        Plan ready = plan;
        for (Knob knob : knobs) {
            if (knob.table() == Table.PRACTICE && ready.rows(Table.PRACTICE).place(knob.id()) < 0) {
                ready = ready.and(Table.PRACTICE, Row.of(knob.id()));
            }
        }
        calculation = Calculation.of(ready);
        calculation.look(corner);
        knobs.forEach(knob -> units.add(now(knob).unit()));
        values = new Value[reads.size()];
        work();
    }

    /**
     * Makes a plan ready.
     *
     * @param reads expressions that can be understood in the plan
     * @throws IllegalArgumentException if a knob is no cell of the plan or an expression cannot be understood
     */
    public static Trials of(Plan plan, Corner corner, List<Knob> knobs, List<String> reads) {
        return new Trials(plan, corner, knobs, reads);
    }

    private Value now(Knob knob) {
        int place = knob.table() == Table.PLAN ? 0 : -1;
        for (int i = 0; place < 0 && i < calculation.rows(knob.table()); i++) {
            place = calculation.id(knob.table(), i).equals(knob.id()) ? i : -1;
        }
        if (place < 0) {
            throw new IllegalArgumentException("no row " + knob.id());
        }
        return calculation.value(knob.table(), place, knob.name());
    }

    /** Puts an inside value: SI, a gauge, 1 or 0, the place of a word. */
    public void put(int knob, double inside) {
        Value now = now(knobs.get(knob));
        String text;
        if (now.type() == Type.Plain.YES_NO) {
            text = inside == 0 ? "no" : "yes";
        } else if (now.type() instanceof Type.Choice choice) {
            text = choice.words().get((int) inside);
        } else {
            text = Show.exact(inside, units.get(knob));
        }
        put(knob, Cell.text(text));
    }

    /** Puts a cell as typed. */
    public void put(int knob, Cell cell) {
        Knob which = knobs.get(knob);
        due.add(new Change.SetCell(which.table(), which.id(), which.name(), Optional.of(cell)));
    }

    /** How dear it is to move a knob, to compare knobs by. */
    public int cost(int knob) {
        return 1;
    }

    /** Forgets what was only said of trials gone by; to be called now and then, when nothing of them is needed. */
    public void tidy() {}

    /** Brings what is read up to date with what was put. */
    public void work() {
        due.forEach(calculation::apply);
        due.clear();
        for (int i = 0; i < values.length; i++) {
            values[i] = calculation
                    .ask(reads.get(i))
                    .value()
                    .orElseThrow(() -> new IllegalArgumentException("expression not understood"));
        }
    }

    /** The inside value of an expression; a NaN where it has none. */
    public double inside(int read) {
        Value value = values[read];
        return value.isPresent() ? value.inside() : Double.NaN;
    }

    /** The value of an expression, as people read it. */
    public Value value(int read) {
        return values[read];
    }
}
