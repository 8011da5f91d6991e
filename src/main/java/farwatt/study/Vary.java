package farwatt.study;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.PlanCells;
import farwatt.engine.Knob;
import farwatt.engine.Value;
import farwatt.plan.Plan;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.util.Optional;

/**
 * A cell and the values it takes. The small syntax of values: {@code a, b, c} · {@code a .. b by c} ·
 * {@code x ± 5 %} or {@code x +- 5 %} (all alike) · {@code x ~ 5 %} (bell curve, standard deviation).
 *
 * @param knob the cell
 * @param heading its path, type and unit
 * @param now what it holds in the plan
 * @param values what it takes on
 */
public record Vary(Knob knob, Heading heading, Value now, Values values) {
    /**
     * Reads {@code trunk.gauge = 22 AWG, 23 AWG}.
     *
     * @throws Refusal if it cannot be understood
     */
    public static Vary of(Ground ground, String text) throws Refusal {
        int is = equalsSign(text);
        if (is < 0) {
            throw Refusal.of(StudyCode.NO_IS, text.strip());
        }
        return of(ground, text.substring(0, is).strip(), text.substring(is + 1).strip());
    }

    /**
     * Reads a path and values apart.
     *
     * @throws Refusal if one of them cannot be understood
     */
    public static Vary of(Ground ground, String path, String values) throws Refusal {
        Knob knob = knob(ground.plan(), path);
        Optional<?> reader = PlanCells.of(ground.plan()).reader(knob.table(), knob.id(), knob.name());
        if (reader.isEmpty() && !isConstant(knob)) {
            throw Refusal.of(StudyCode.NO_CELL, path);
        }
        Value now = now(ground, knob);
        Heading heading = new Heading(path, now.type(), now.unit());
        return new Vary(knob, heading, now, new Spans(ground, heading, now).read(values));
    }

    private static boolean isConstant(Knob knob) {
        return knob.table() == Table.PRACTICE;
    }

    private static int equalsSign(String text) {
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            quoted ^= c == '\'';
            if (c == '=' && !quoted) {
                return i;
            }
        }
        return -1;
    }

    static Knob knob(Plan plan, String text) throws Refusal {
        Optional<StepPath> path = StepPath.of(text);
        Optional<Knob> knob = path.flatMap(p -> p.row().isEmpty() ? bare(plan, p.name()) : ofRow(plan, p));
        if (knob.isEmpty()) {
            throw Refusal.of(StudyCode.NO_PATH, text.strip());
        }
        return knob.get();
    }

    private static Optional<Knob> ofRow(Plan plan, StepPath path) {
        return plan.find(path.row())
                .map(spot -> new Knob(
                        spot.table(), plan.rows(spot.table()).at(spot.place()).id(), path.name()));
    }

    private static Optional<Knob> bare(Plan plan, String name) {
        int value = plan.rows(Table.VALUES).place(name);
        if (value >= 0) {
            return Optional.of(
                    new Knob(Table.VALUES, plan.rows(Table.VALUES).at(value).id(), "is"));
        }
        if (Catalogue.find(Table.PLAN, name).isPresent()) {
            return Optional.of(new Knob(Table.PLAN, "", name));
        }
        return Catalogue.find(Table.PRACTICE, name).map(constant -> new Knob(Table.PRACTICE, name, "is"));
    }

    static Value now(Ground ground, Knob knob) throws Refusal {
        var calculation = ground.calculation();
        boolean known = false;
        for (var name : calculation.names(knob.table())) {
            known |= name.key().equals(knob.name());
        }
        for (int i = 0; known && i < calculation.rows(knob.table()); i++) {
            if (knob.table() == Table.PLAN || calculation.id(knob.table(), i).equals(knob.id())) {
                return calculation.value(knob.table(), i, knob.name());
            }
        }
        throw Refusal.of(StudyCode.NO_PATH, knob.id().isEmpty() ? knob.name() : knob.id() + "." + knob.name());
    }
}
