package farwatt.study;

import farwatt.catalogue.edit.Copy;
import farwatt.engine.Calculation;
import farwatt.engine.Value;
import farwatt.language.Type;
import farwatt.plan.Change;
import farwatt.plan.Naming;
import farwatt.plan.Plan;
import farwatt.plan.Rows;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.quantity.Unit;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/** Adds copies of a device or switch with its run, one after the other, until a condition is met. */
public final class Grow {
    /** Copies that are tried at most, unless said otherwise. */
    public static final int USUAL_MOST = 50;

    private static final int MOST = 10_000;

    private final Ground ground;
    private final String until;
    private final List<String> reads;
    private final int most;
    private final Effort effort;
    private final Points points;
    private final List<List<Step>> added = new ArrayList<>();
    private Optional<Integer> firstDark = Optional.empty();
    private String darkId = "";

    private Grow(Ground ground, String until, List<String> reads, int most, Effort effort) throws Refusal {
        this.ground = ground;
        this.until = until;
        this.reads = List.copyOf(reads);
        this.most = most;
        this.effort = effort;
        Heading copies = new Heading("copies", Type.of(Unit.ONE), Unit.ONE);
        Heading condition = new Heading(until.strip(), Type.Plain.YES_NO, Unit.ONE);
        List<Heading> columns = new ArrayList<>(List.of(copies, condition));
        columns.add(new Heading("dark", Type.of(Unit.ONE), Unit.ONE));
        columns.addAll(ground.headings(reads));
        points = new Points(columns, 16);
    }

    /**
     * Adds until it is met.
     *
     * @param id of a device or switch
     * @param until a condition that ends it
     * @param most copies to try at most
     * @throws Refusal if there is no such row or run, or the condition cannot be understood
     * @throws CancellationException if that was asked for
     */
    public static Grown until(Ground ground, String id, String until, int most, Effort effort) throws Refusal {
        return until(ground, id, until, most, List.of(), effort);
    }

    /**
     * The same, with more that is read after each copy.
     *
     * @param reads expressions, each a column from {@link Grown#READS} on
     * @throws Refusal as above, or if one of them cannot be understood
     */
    public static Grown until(Ground ground, String id, String until, int most, List<String> reads, Effort effort)
            throws Refusal {
        ground.condition(until);
        if (most < 1 || most > MOST) {
            throw Refusal.of(StudyCode.BAD_MOST, most, MOST);
        }
        Plan.Spot spot = spot(ground.plan(), id);
        return new Grow(ground, until, reads, most, effort).run(spot);
    }

    private static Plan.Spot spot(Plan plan, String id) throws Refusal {
        Optional<Plan.Spot> spot = plan.find(id).filter(s -> s.table() == Table.SWITCHES || s.table() == Table.DEVICES);
        if (spot.isEmpty()) {
            throw Refusal.of(StudyCode.NO_NODE, id);
        }
        for (var run : plan.rows(Table.RUNS)) {
            if (Rows.fold(run.text("to")).equals(Rows.fold(id))) {
                return spot.get();
            }
        }
        throw Refusal.of(StudyCode.NO_RUN_THERE, id);
    }

    private Grown run(Plan.Spot spot) {
        Plan plan = ground.plan();
        Naming naming = Naming.in(plan);
        Calculation calculation = ground.calculation();
        Effort.Meter meter = effort.meter(most);
        Plan grown = plan;
        for (int copies = 0; ; copies++) {
            Value met = calculation.ask(until).value().orElseThrow();
            int dark = dark(calculation, copies);
            points.add(point(calculation, copies, met, dark));
            if (!met.isPresent() || met.inside() == 1) {
                return grown(copies, met);
            }
            if (copies == most) {
                return new Grown(
                        most, Messages.text(StudyCode.STOPPED_BY_MOST, most), false, firstDark, darkId, points, added);
            }
            if (effort.cancel().asked()) {
                throw new CancellationException(Messages.text(StudyCode.CANCELLED));
            }
            grown = grown(grown, Copy.withRun(grown, spot.table(), spot.place(), naming));
            calculation = Calculation.of(grown);
            calculation.look(ground.corner());
            meter.done(copies + 1);
        }
    }

    /** A copy goes behind all other rows, as the steps of a scenario put it. */
    private Plan grown(Plan plan, Copy copy) {
        List<Step> steps = new ArrayList<>();
        Plan now = plan;
        for (Change change : copy.change().changes()) {
            if (change instanceof Change.AddRow add) {
                now = now.and(add.table(), add.row());
                steps.add(new Step.Add(add.table().key(), add.row()));
            }
        }
        added.add(List.copyOf(steps));
        return now;
    }

    private MadePoint point(Calculation calculation, int copies, Value met, int dark) {
        double[] insides = new double[Grown.READS + reads.size()];
        insides[0] = copies;
        insides[2] = dark;
        MadePoint point = MadePoint.of(points.columns(), insides).because(1, met);
        for (int r = 0; r < reads.size(); r++) {
            point.because(Grown.READS + r, calculation.ask(reads.get(r)).value().orElseThrow());
        }
        return point;
    }

    private Grown grown(int copies, Value met) {
        String why = copies == 0
                ? Messages.text(StudyCode.HOLDS_ALREADY, until.strip())
                : met.fault()
                        .map(fault -> Messages.text(StudyCode.STOPPED_BY_FAULT, copies, until.strip(), fault.text()))
                        .orElseGet(() -> Messages.text(StudyCode.STOPPED_BY_CONDITION, copies, until.strip()));
        return new Grown(Math.max(0, copies - 1), why, true, firstDark, darkId, points, added);
    }

    /** How many devices and switches have no power; keeps the first one met. */
    private int dark(Calculation calculation, int copies) {
        int dark = 0;
        for (Table table : List.of(Table.SWITCHES, Table.DEVICES)) {
            for (int place = 0; place < calculation.rows(table); place++) {
                Value powered = calculation.value(table, place, "powered");
                if (powered.isPresent() && powered.inside() == 0) {
                    dark++;
                    if (firstDark.isEmpty()) {
                        firstDark = Optional.of(copies);
                        darkId = calculation.id(table, place);
                    }
                }
            }
        }
        return dark;
    }
}
