package farwatt.engine;

import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;

/** The columns between what is given and what the circuit needs, with the vertices that fill them. */
final class Inside {
    /** By run: largest class its port can grant. */
    final Col top;
    /** By run: the class granted, or a mark of {@link ClassRules}. */
    final Col granted;

    /** By run: what {@link WireRules} says. */
    final Col cable;

    final Col cord;
    final Col fixed;
    final Col perMetre;
    final Col alpha;

    final List<Vertex> vertices = new ArrayList<>();

    Inside(Layout layout, Columns columns, Topology topology, Relations relations, Faults faults, Practice practice) {
        ClassRules classes = new ClassRules(faults);
        top = columns.inside(Table.RUNS, "port_top_class");
        granted = columns.inside(Table.RUNS, "class_granted");
        Col limit = columns.need(Table.RUNS, "port_limit");
        List<Dep> port = new ArrayList<>(List.of(Dep.here(limit)));
        for (Table side : List.of(Table.SOURCES, Table.SWITCHES)) {
            port.add(Dep.over(columns.need(side, "type"), relations.from));
            port.add(Dep.over(columns.need(side, "port_limit"), relations.from));
        }
        add(top, classes.topClass(layout, topology.from, columns), port);
        add(
                granted,
                classes.granted(layout, topology.to, columns, top),
                List.of(
                        Dep.here(top),
                        Dep.over(columns.need(Table.DEVICES, "class"), relations.to),
                        Dep.over(columns.need(Table.SWITCHES, "uplink_class"), relations.to)));
        WireRules wire = new WireRules(faults, layout, columns, practice);
        cable = run(columns, "cable_loop", wire::cable, wire.cableDeps());
        cord = run(columns, "cord_loop", wire::cord, wire.cordDeps());
        fixed = run(columns, "joint_loop", wire::fixed, wire.fixedDeps());
        perMetre = run(columns, "per_metre", wire::perMetre, wire.perMetreDeps());
        alpha = run(columns, "alpha", wire::alpha, wire.alphaDeps());
    }

    private Col run(Columns columns, String key, RowRule rule, List<Dep> deps) {
        Col col = columns.inside(Table.RUNS, key);
        add(col, rule, deps);
        return col;
    }

    private void add(Col col, RowRule rule, List<Dep> deps) {
        vertices.add(new RuleVertex(col, rule, deps));
    }
}
