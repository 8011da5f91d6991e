package farwatt.engine;

import farwatt.language.Type;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A plan tried again and again with other values in a few cells, in one corner. What is read is the same to the last
 * bit as in a calculation of the plan with these values typed, but only what hangs on the cells is worked out, and
 * nothing is allocated while everything has a value. Confined to one thread at a time.
 *
 * <p>Where a cell decides what feeds what or what is in use, every value of it gets a model of its own; some are kept.
 */
public final class Trials {
    private static final int MOST_MODELS = 64;
    private static final int MOST_ROWS = 400_000;
    private static final int DEAREST = 1_000_000;

    private final Plan plan;
    private final Corner corner;
    private final List<Knob> knobs;
    private final List<String> reads;
    private final Type[] types;
    private final Unit[] units;
    /** By knob: what was put last; empty for a number that was put as such, or nothing. */
    private final Optional<Cell>[] cells;

    private final double[] insides;
    private final boolean[] touched;
    private final boolean[] rebuilds;
    private final boolean[] tested;
    private final Map<List<Cell>, Rig> rigs = new LinkedHashMap<>(16, 0.75f, true);
    private @Nullable Rig rig;
    private boolean stale = true;

    private Trials(Plan plan, Corner corner, List<Knob> knobs, List<String> reads) {
        this.corner = corner;
        this.knobs = List.copyOf(knobs);
        this.reads = List.copyOf(reads);
        Plan ready = plan;
        for (Knob knob : knobs) {
            if (knob.table() == Table.PRACTICE && ready.rows(Table.PRACTICE).place(knob.id()) < 0) {
                ready = ready.and(Table.PRACTICE, Row.of(knob.id()));
            }
        }
        this.plan = ready;
        int n = knobs.size();
        types = new Type[n];
        units = new Unit[n];
        cells = noCells(n);
        insides = new double[n];
        touched = new boolean[n];
        rebuilds = new boolean[n];
        tested = new boolean[n];
        Calculation calculation = Calculation.of(ready);
        for (int k = 0; k < n; k++) {
            Knob knob = knobs.get(k);
            int place = calculation.place(knob.table(), knob.id());
            if (place < 0) {
                throw new IllegalArgumentException("no row " + knob.id());
            }
            Value now = calculation.value(knob.table(), place, knob.name());
            types[k] = now.type();
            units[k] = now.unit();
        }
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Optional<Cell>[] noCells(int size) {
        Optional<Cell>[] none = new Optional[size];
        Arrays.fill(none, Optional.empty());
        return none;
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

    /** Puts an inside value: SI, a gauge, 1 or 0, the place of a word. */
    public void put(int knob, double inside) {
        if (touched[knob] && Double.doubleToRawLongBits(insides[knob]) == Double.doubleToRawLongBits(inside)) {
            return;
        }
        insides[knob] = inside;
        Rig now = rig;
        if (now != null && !stale && touched[knob] && tested[knob] && !rebuilds[knob]) {
            now.put(knob, now.holds(knob, inside) ? inside : now.broken(knob, text(knob)));
        } else {
            cells[knob] = Optional.empty();
            touched[knob] = true;
            stale = true;
        }
    }

    /** Puts a cell as typed: a text, the id of a row. */
    public void put(int knob, Cell cell) {
        if (cells[knob].isPresent() && cells[knob].get().equals(cell)) {
            return;
        }
        cells[knob] = Optional.of(cell);
        insides[knob] = Double.NaN;
        touched[knob] = true;
        stale = true;
    }

    /** The text of what stands in a number's cell. */
    private Cell text(int knob) {
        double inside = insides[knob];
        if (types[knob] == Type.Plain.YES_NO) {
            return Cell.text(inside == 0 ? "no" : "yes");
        }
        return Cell.text(
                types[knob] instanceof Type.Choice choice
                        ? choice.words().get((int) inside)
                        : Show.exact(inside, units[knob]));
    }

    private Cell cell(int knob) {
        return cells[knob].orElseGet(() -> text(knob));
    }

    /** Brings what is read up to date with what was put. */
    public void work() {
        ready().work();
    }

    /** How dear it is to move a knob, to compare knobs by. */
    public int cost(int knob) {
        Rig now = ready();
        return rebuilds[knob] || !now.turns(knob) ? DEAREST : now.cost(knob);
    }

    /** Forgets reasons that were given in trials gone by; to be called now and then between trials. */
    public void tidy() {
        Iterator<Rig> each = rigs.values().iterator();
        while (each.hasNext()) {
            Rig one = each.next();
            if (one.isFull()) {
                each.remove();
                stale |= one.equals(rig);
            }
        }
    }

    private Rig ready() {
        Rig now = rig;
        if (now == null || stale) {
            now = choose();
            rig = now;
            stale = false;
            for (int k = 0; k < insides.length; k++) {
                if (touched[k] && !rebuilds[k] && now.turns(k)) {
                    now.put(k, now.holds(k, insides[k]) ? insides[k] : now.broken(k, text(k)));
                }
            }
        }
        return now;
    }

    /** The model for the values of the knobs that decide which one there must be. */
    private Rig choose() {
        List<Cell> key = key();
        Rig known = rigs.get(key);
        if (known != null) {
            return known;
        }
        Rig made = new Rig(planNow(), corner, knobs, reads);
        boolean learnt = false;
        for (int k = 0; k < insides.length; k++) {
            if (touched[k] && !tested[k]) {
                tested[k] = true;
                learnt = true;
                rebuilds[k] = cells[k].isPresent() || made.rebuilds(k);
            }
        }
        rigs.put(learnt ? key() : key, made);
        int most = Math.max(1, Math.min(MOST_MODELS, MOST_ROWS / Math.max(1, made.rows())));
        while (rigs.size() > most) {
            Iterator<Rig> eldest = rigs.values().iterator();
            eldest.next();
            eldest.remove();
        }
        return made;
    }

    private List<Cell> key() {
        List<Cell> key = new ArrayList<>();
        for (int k = 0; k < insides.length; k++) {
            boolean fixed = touched[k] && (cells[k].isPresent() || rebuilds[k] || !tested[k]);
            key.add(fixed ? cell(k) : touched[k] ? Cell.YES : Cell.NO);
        }
        return key;
    }

    private Plan planNow() {
        Plan now = plan;
        for (int k = 0; k < insides.length; k++) {
            if (touched[k]) {
                Knob knob = knobs.get(k);
                now = Edit.apply(now, new Change.SetCell(knob.table(), knob.id(), knob.name(), Optional.of(cell(k))))
                        .plan();
            }
        }
        return now;
    }

    /** The inside value of an expression; a NaN where it has none. */
    public double inside(int read) {
        return ready().inside(read);
    }

    /** The value of an expression, as people read it. */
    public Value value(int read) {
        return ready().value(read);
    }
}
