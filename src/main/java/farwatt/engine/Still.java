package farwatt.engine;

import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.language.Type;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Unit;
import farwatt.report.Notice;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * All values of a calculation as they stood at one moment in the corner looked at, for whoever shows them while the
 * calculation goes on elsewhere. Immutable, safe for any thread; taking one costs a copy of the columns.
 */
public final class Still {
    private final Plan plan;
    private final Corner corner;
    private final List<Notice> notices;
    private final Map<Table, Map<String, Part>> parts;
    private final Faults.Frozen faults;
    private final List<String> texts;
    /** Never changes: a change of who feeds whom makes a new model. */
    private final Ways ways;

    /** Where the relations of rows lead. */
    private interface Ways {
        Optional<Plan.Spot> from(Table table, int place, String relation);
    }

    /** One column; {@code ready} has values that do not follow from a number alone, and is null where all do. */
    private static final class Part {
        final Name name;
        final Type type;
        final Unit unit;
        final double[] inside;
        final Value @Nullable [] ready;

        Part(Name name, Type type, Unit unit, double[] inside, Value @Nullable [] ready) {
            this.name = name;
            this.type = type;
            this.unit = unit;
            this.inside = inside;
            this.ready = ready;
        }
    }

    private Still(
            Plan plan,
            Corner corner,
            List<Notice> notices,
            Map<Table, Map<String, Part>> parts,
            Faults.Frozen faults,
            List<String> texts,
            Ways ways) {
        this.plan = plan;
        this.corner = corner;
        this.notices = notices;
        this.parts = parts;
        this.faults = faults;
        this.texts = texts;
        this.ways = ways;
    }

    /** Takes one of a calculation; to be called on the calculation's thread. */
    static Still of(Calculation calculation, Map<Col, Value[]> rowWords) {
        Model model = calculation.model();
        Types types = new Types(model.units);
        Map<Table, Map<String, Part>> parts = new EnumMap<>(Table.class);
        for (Table table : Table.values()) {
            Map<String, Part> some = new LinkedHashMap<>();
            for (Col col : model.columns.of(table)) {
                Type type = types.of(col.name.kind());
                Value[] ready = ready(calculation, col, rowWords);
                double[] inside = ready == null ? col.v.clone() : new double[0];
                some.put(col.key(), new Part(col.name, type, model.filler.unit(col, type), inside, ready));
            }
            parts.put(table, some);
        }
        return new Still(
                model.plan(),
                calculation.corner(),
                List.copyOf(calculation.notices()),
                parts,
                model.faults.frozen(),
                model.texts.frozen(),
                model.relations::spot);
    }

    /** Values and constants have a type each; cells that name rows change only with the whole model. */
    private static Value @Nullable [] ready(Calculation calculation, Col col, Map<Col, Value[]> rowWords) {
        if (col.table == Table.VALUES || col.table == Table.PRACTICE) {
            return all(calculation, col);
        }
        if (col.name.kind() instanceof Kind.RowOf) {
            return rowWords.computeIfAbsent(col, c -> all(calculation, c));
        }
        return null;
    }

    private static Value[] all(Calculation calculation, Col col) {
        Value[] values = new Value[col.v.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = calculation.valueOf(col, i);
        }
        return values;
    }

    /** The plan whose values these are. */
    public Plan plan() {
        return plan;
    }

    public Corner corner() {
        return corner;
    }

    /** Mistakes in cells and in who feeds whom. */
    public List<Notice> notices() {
        return notices;
    }

    /** The names of a table's columns that have values, the plan's own ones last. */
    public List<Name> names(Table table) {
        List<Name> names = new ArrayList<>();
        parts.getOrDefault(table, Map.of()).values().forEach(part -> names.add(part.name));
        return names;
    }

    /** How many rows a table has. */
    public int rows(Table table) {
        return plan.rows(table).size();
    }

    /** The id of the row at a place. */
    public String id(Table table, int place) {
        return plan.rows(table).at(place).id();
    }

    /** The row that a relation of a row leads to, as {@link Calculation#related}. */
    public Optional<Plan.Spot> related(Table table, int place, String relation) {
        return ways.from(table, place, relation);
    }

    /**
     * The value of a name that rows of the table have.
     *
     * @throws IllegalArgumentException if they have none of that name
     */
    public Value need(Table table, int place, String name) {
        return value(table, place, name).orElseThrow(() -> new IllegalArgumentException(table.key() + " " + name));
    }

    /** The value of a name in the row at a place; empty where the table has no such name. */
    public Optional<Value> value(Table table, int place, String name) {
        return Optional.ofNullable(parts.getOrDefault(table, Map.of()).get(name))
                .map(part -> part.ready == null ? value(part, part.inside[place]) : part.ready[place]);
    }

    /** A column's numbers inside, NaN where there is none; empty where the table has no such name or it holds rows. */
    public Optional<Figures> figures(Table table, String name) {
        return Optional.ofNullable(parts.getOrDefault(table, Map.of()).get(name))
                .filter(part -> part.ready == null)
                .map(part -> place -> part.inside[place]);
    }

    private Value value(Part part, double inside) {
        if (Double.isNaN(inside)) {
            return new Value(inside, part.type, part.unit, "", Optional.of(faults.of(inside)));
        }
        String words = "";
        if (part.type instanceof Type.Choice choice) {
            words = choice.words().get((int) inside);
        } else if (part.type == Type.Plain.TEXT) {
            words = texts.get((int) inside);
        }
        return new Value(inside, part.type, part.unit, words, Optional.empty());
    }
}
