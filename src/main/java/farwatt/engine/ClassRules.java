package farwatt.engine;

import farwatt.plan.Table;
import farwatt.standard.PortType;
import farwatt.standard.PowerClass;

/**
 * Defaults and steps that follow from power classes and port types (IEEE 802.3 clauses 33 and 145): what a port is by
 * its type, the class a device asks for and the one its port grants, pairs and floor volts by class.
 */
final class ClassRules {
    /** In place of a class granted: a passive feed, which knows none. */
    static final int NO_CLASSES = -1;
    /** In place of a class granted: the port is too small for class 1. */
    static final int NONE_FITS = -2;

    private static final int PASSIVE = 4;

    private final Faults faults;

    ClassRules(Faults faults) {
        this.faults = faults;
    }

    /** Volts of a type's port; a passive feed's must be typed. */
    RowRule volts(Col type) {
        return place -> byType(type, place, PortType::volts);
    }

    /** Most watts of a type's port; a passive feed's must be typed. */
    RowRule portLimit(Col type) {
        return place -> byType(type, place, PortType::watts);
    }

    private double byType(Col type, int place, java.util.function.ToDoubleFunction<PortType> figure) {
        double word = type.v[place];
        if (Double.isNaN(word)) {
            return word;
        }
        if (word == PASSIVE) {
            return Double.NaN;
        }
        return figure.applyAsDouble(PortType.all().get((int) word));
    }

    /** The class that holds a draw; past the largest it is the largest, and a finding says so. */
    RowRule askedClass(Col draw) {
        return place -> {
            double watts = draw.v[place];
            return Double.isNaN(watts) ? watts : Math.min(8, PowerClass.holding(watts));
        };
    }

    /** Draw behind a converter, else the class's device watts. */
    RowRule draw(Col load, Col efficiency, Col typedClass) {
        return place -> {
            double behind = load.v[place];
            if (!Double.isNaN(behind)) {
                double share = efficiency.v[place];
                return Double.isNaN(share) ? share : behind / share;
            }
            if (!faults.isBlank(load, place)) {
                return behind;
            }
            double asked = typedClass.v[place];
            if (Double.isNaN(asked)) {
                return faults.isBlank(typedClass, place) ? Double.NaN : asked;
            }
            return PowerClass.of((int) asked).deviceWatts();
        };
    }

    /**
     * Floor volts of a class asked for; on a passive feed, where classes mean nothing, they must be typed.
     *
     * @param feedRun by row of a node: the run that feeds it, −1 if none
     * @param top largest class that each run's port can grant
     */
    RowRule floor(Col asked, int[] feedRun, Col top) {
        return place -> {
            int run = feedRun[asked.base + place];
            if (run >= 0 && top.v[run - top.base] == NO_CLASSES) {
                return Double.NaN;
            }
            double word = asked.v[place];
            return Double.isNaN(word) ? word : PowerClass.of((int) word).floorVolts();
        };
    }

    /**
     * Largest class a run's port can grant: the largest whose port watts fit the smaller of the type's watts and the
     * port's limits; 0 where none fits, −1 where the feed is passive and knows no classes.
     *
     * @param from by row of a run: the node it leaves from, −1 if none
     */
    RowRule topClass(Layout layout, int[] from, Columns columns) {
        Col runLimit = columns.need(Table.RUNS, "port_limit");
        Col[] type = {columns.need(Table.SOURCES, "type"), columns.need(Table.SWITCHES, "type")};
        Col[] limit = {columns.need(Table.SOURCES, "port_limit"), columns.need(Table.SWITCHES, "port_limit")};
        return place -> {
            int node = from[runLimit.base + place];
            if (node < 0) {
                return NO_CLASSES;
            }
            int side = layout.isIn(node, Table.SOURCES) ? 0 : 1;
            double word = type[side].v[node - type[side].base];
            if (Double.isNaN(word) || word == PASSIVE) {
                return Double.isNaN(word) ? word : NO_CLASSES;
            }
            PortType port = PortType.all().get((int) word);
            double ofNode = orNone(limit[side], node - limit[side].base);
            double ofRun = orNone(runLimit, place);
            if (Double.isNaN(ofNode) || Double.isNaN(ofRun)) {
                return Double.isNaN(ofNode) ? ofNode : ofRun;
            }
            return PowerClass.fitting(Math.min(port.watts(), Math.min(ofNode, ofRun)), port.topClass());
        };
    }

    /** A limit that was left empty limits nothing. */
    private double orNone(Col limit, int place) {
        return faults.isBlank(limit, place) ? Double.POSITIVE_INFINITY : limit.v[place];
    }

    /** Class granted over a run: the smaller of the one asked for and the port's top class; or one of the two marks above. */
    RowRule granted(Layout layout, int[] to, Columns columns, Col top) {
        Col device = columns.need(Table.DEVICES, "class");
        Col uplink = columns.need(Table.SWITCHES, "uplink_class");
        return place -> {
            int node = to[top.base + place];
            double most = top.v[place];
            if (node < 0 || Double.isNaN(most) || most < 0) {
                return node < 0 ? NO_CLASSES : most;
            }
            Col ask = layout.isIn(node, Table.DEVICES) ? device : uplink;
            double asked = ask.v[node - ask.base];
            if (Double.isNaN(asked)) {
                return asked;
            }
            if (most == 0) {
                return NONE_FITS;
            }
            // class 0 has class 3's watts at the port
            return asked == 0 ? (most >= 3 ? 0 : most) : Math.min(asked, most);
        };
    }

    /** Pairs by the class granted, as the index of the words 2 and 4. */
    RowRule pairs(Col granted) {
        return place -> {
            double number = granted.v[place];
            return Double.isNaN(number) ? number : number >= 5 ? 1 : 0;
        };
    }
}
