package farwatt.engine;

import static farwatt.plan.Table.DEVICES;
import static farwatt.plan.Table.RUNS;
import static farwatt.plan.Table.SOURCES;
import static farwatt.plan.Table.SWITCHES;
import static farwatt.plan.Table.ZONES;

import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What takes the place of an empty cell where that is no fixed value; the catalogue says each rule in words. */
final class GivenRules {
    /** A rule and what it reads. */
    record Given(RowRule rule, List<Dep> deps) {}

    private final Columns columns;
    private final Map<Col, Given> rules = new HashMap<>();

    /** @param typedClass column of the classes typed on devices */
    GivenRules(Columns columns, Faults faults, Col typedClass, Inside inside, Topology topology, Relations relations) {
        this.columns = columns;
        ClassRules classes = new ClassRules(faults);
        same(ZONES, "hottest", "ambient");
        same(ZONES, "coldest", "ambient");
        for (Table node : List.of(SOURCES, SWITCHES)) {
            add(node, "volts", classes.volts(col(node, "type")), "type");
            add(node, "port_limit", classes.portLimit(col(node, "type")), "type");
        }
        add(SOURCES, "budget", budget(faults), "port_limit", "ports");
        for (Col asked : List.of(col(SWITCHES, "uplink_class"), col(DEVICES, "class"))) {
            rules.put(
                    col(asked.table, "volts_floor"),
                    new Given(
                            classes.floor(asked, topology, inside.top),
                            List.of(Dep.here(asked), Dep.over(inside.top, relations.wouldFeed))));
        }
        add(RUNS, "cable_diameter", BundleShapes.usualDiameter(col(RUNS, "category")), "category");
        rules.put(col(RUNS, "pairs"), new Given(classes.pairs(inside.granted), List.of(Dep.here(inside.granted))));
        devices(classes, typedClass);
    }

    /** All ports together; where a passive feed says no limit there is no budget either. */
    private RowRule budget(Faults faults) {
        Col limit = col(SOURCES, "port_limit");
        Col ports = col(SOURCES, "ports");
        return place -> {
            double each = limit.v[place];
            if (Double.isNaN(each)) {
                return faults.isBlank(limit, place) ? Double.NaN : each;
            }
            return each * ports.v[place];
        };
    }

    private void devices(ClassRules classes, Col typedClass) {
        Col draw = col(DEVICES, "draw");
        add(DEVICES, "class", classes.askedClass(draw), "draw");
        List<Dep> deps = new ArrayList<>(List.of(Dep.here(typedClass)));
        deps.add(Dep.here(col(DEVICES, "load")));
        deps.add(Dep.here(col(DEVICES, "load_efficiency")));
        RowRule rule = classes.draw(col(DEVICES, "load"), col(DEVICES, "load_efficiency"), typedClass);
        rules.put(draw, new Given(rule, deps));
        same(DEVICES, "draw_typical", "draw");
        same(DEVICES, "draw_start", "draw");
    }

    Optional<Given> of(Col col) {
        return Optional.ofNullable(rules.get(col));
    }

    private Col col(Table table, String key) {
        return columns.need(table, key);
    }

    private void same(Table table, String key, String as) {
        Col from = col(table, as);
        add(table, key, place -> from.v[place], as);
    }

    private void add(Table table, String key, RowRule rule, String... reads) {
        List<Dep> deps = new ArrayList<>();
        for (String read : reads) {
            deps.add(Dep.here(col(table, read)));
        }
        rules.put(col(table, key), new Given(rule, deps));
    }
}
