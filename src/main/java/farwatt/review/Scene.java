package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Fault;
import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Place;
import farwatt.standard.PowerClass;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What checks look at: the calculation's columns (those of the corner looked at), the limits of practice as the plan
 * has them, who feeds whom. Confined to the calculation's thread.
 */
final class Scene {
    /** The tables whose rows feed others. */
    static final List<Table> NODES = List.of(Table.SOURCES, Table.SWITCHES);
    /** The tables whose rows hang on a run. */
    static final List<Table> FED = List.of(Table.SWITCHES, Table.DEVICES);

    private static final int PASSIVE = 4;

    private final Calculation calc;
    private final Tree tree;
    private final Map<String, Integer> constants = new HashMap<>();
    private final Map<Corner, double[]> sent = new EnumMap<>(Corner.class);
    private final Figures practice;

    Scene(Calculation calc) {
        this.calc = calc;
        tree = new Tree(calc);
        practice = calc.figures(Table.PRACTICE, "is");
        for (int place = 0; place < calc.rows(Table.PRACTICE); place++) {
            constants.put(calc.id(Table.PRACTICE, place), place);
        }
    }

    Calculation calc() {
        return calc;
    }

    Tree tree() {
        return tree;
    }

    Corner corner() {
        return calc.corner();
    }

    /** A column, read in whichever corner is looked at. */
    Figures of(Table table, String name) {
        return calc.figures(table, name);
    }

    /** A limit of practice as this plan has it; not a number where the plan's cannot be read. */
    double limit(String constant) {
        Integer place = constants.get(constant);
        if (place == null) {
            throw new IllegalArgumentException("no constant " + constant);
        }
        return practice.at(place);
    }

    int rows(Table table) {
        return calc.rows(table);
    }

    String id(Table table, int place) {
        return calc.id(table, place);
    }

    Place place(Table table, int place, String name) {
        return new Place(table.key(), id(table, place), name);
    }

    Place place(Spot spot, String name) {
        return place(spot.table(), spot.place(), name);
    }

    Fault fault(double value) {
        return calc.fault(value);
    }

    boolean inUse(Table table, int place) {
        return of(table, "in_use").at(place) != 0;
    }

    /** Watts sent into each run in a corner; goes back to the corner looked at. */
    double[] sentIn(Corner corner) {
        double[] found = sent.get(corner);
        if (found == null) {
            Corner before = calc.corner();
            calc.look(corner);
            found = new double[rows(Table.RUNS)];
            Figures now = of(Table.RUNS, "sent");
            for (int run = 0; run < found.length; run++) {
                found[run] = now.at(run);
            }
            calc.look(before);
            sent.put(corner, found);
        }
        return found;
    }

    /** What stands in a cell of a text column. */
    String text(Table table, int place, String name) {
        return calc.plan().rows(table).at(place).text(name).strip();
    }

    /** The word in a cell of a choice. */
    String words(Table table, int place, String name) {
        return calc.value(table, place, name).words();
    }

    /** True where a person filled the cell in. */
    boolean typed(Table table, int place, String name) {
        return calc.plan()
                .rows(table)
                .at(place)
                .cell(name)
                .filter(c -> !c.text().isBlank())
                .isPresent();
    }

    /** True where ports give power without asking what hangs there. */
    boolean passive(Spot node) {
        return of(node.table(), "type").at(node.place()) == PASSIVE;
    }

    /** Device watts of a class's number; not a number without a class. */
    static double deviceWatts(double number) {
        return Double.isNaN(number) ? number : PowerClass.of((int) number).deviceWatts();
    }
}
