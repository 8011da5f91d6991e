package farwatt.study;

import farwatt.catalogue.CellReader;
import farwatt.catalogue.PlanCells;
import farwatt.catalogue.Reading;
import farwatt.engine.Knob;
import farwatt.engine.Value;
import farwatt.language.Type;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The numbers that a person typed into a plan and that could be others.
 *
 * @param knob the cell
 * @param heading its path, type and unit
 * @param now inside
 */
record Inputs(Knob knob, Heading heading, double now) {
    private static final Set<String> COUNTS = Set.of("ports", "joints", "others");
    /** Numbers that only tell things apart or stand for money. */
    private static final Set<String> NO_MEASURES = Set.of("port", "priority", "price", "price_per_length");

    static List<Inputs> of(Ground ground) throws Refusal {
        List<Inputs> all = new ArrayList<>();
        Plan plan = ground.plan();
        PlanCells cells = PlanCells.of(plan);
        for (Table table : Table.values()) {
            if (table == Table.COLUMNS || table == Table.NEEDS) {
                continue;
            }
            for (Row row : plan.rows(table)) {
                for (String name : row.names()) {
                    Optional<CellReader> reader = cells.reader(table, row.id(), name);
                    boolean literal = reader.isPresent()
                            && reader.get().read(row.id(), row.cell(name).orElseThrow()) instanceof Reading.Literal;
                    if (literal && !NO_MEASURES.contains(name)) {
                        add(all, ground, new Knob(table, table == Table.PLAN ? "" : row.id(), name));
                    }
                }
            }
        }
        return all;
    }

    private static void add(List<Inputs> all, Ground ground, Knob knob) throws Refusal {
        Value now = Vary.now(ground, knob);
        if (now.isPresent() && now.isNumber()) {
            String path = knob.table().isSite() ? new StepPath(knob.id(), knob.name()).text() : bare(knob);
            all.add(new Inputs(knob, new Heading(path, now.type(), now.unit()), now.inside()));
        }
    }

    private static String bare(Knob knob) {
        return knob.table() == Table.PLAN ? knob.name() : knob.id();
    }

    /** How far a step goes: a share of the value, as many kelvins as the share has per cents, one gauge, one piece. */
    double step(double share) {
        if (heading.type() == Type.Plain.TEMPERATURE) {
            return share * 100;
        }
        boolean whole = heading.type() == Type.Plain.GAUGE || COUNTS.contains(knob.name());
        return whole ? 1 : Math.abs(now) * share;
    }
}
