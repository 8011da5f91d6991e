package farwatt.engine;

import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ObjIntConsumer;

/** Finds the rows of the circuit that marks on given columns concern, and what may then be another answer. */
final class Extents {
    private static final int DIRECT = 1;
    private static final Set<String> LIMITS = Set.of("available", "bound_by", "reserve", "reserve_share", "receivable");
    private static final Set<String> GRANTS = Set.of("granted", "powered", "powered_why");

    private final Model model;
    private final Topology topology;
    private final Layout layout;
    private final Set<Col> needed;
    private final Map<Integer, FlatSet> sets = new HashMap<>();
    private final Set<Integer> touched = new TreeSet<>();
    private final Set<Integer> bundles = new TreeSet<>();
    private final Map<Integer, TreeSet<Integer>> byComponent = new TreeMap<>();
    private boolean whole;

    Extents(Model model, Set<Col> needed) {
        this.model = model;
        this.topology = model.topology;
        this.layout = model.layout;
        this.needed = needed;
    }

    /** Makes a step for every component concerned and marks the answers that may change while all stands. */
    void find(List<PieceStep> into, ObjIntConsumer<Col> mark) {
        touched.clear();
        bundles.clear();
        byComponent.clear();
        whole = false;
        model.solving.deps().forEach(this::touch);
        for (int node : touched) {
            int component = model.site.componentOfRow[node];
            if (component >= 0) {
                byComponent.computeIfAbsent(component, c -> new TreeSet<>()).add(topology.at[node]);
            }
        }
        byComponent.forEach((component, ats) -> {
            FlatSet set = sets.computeIfAbsent(component, model.solving::room);
            into.add(new PieceStep(model, component, set, extent(component, ats, mark)));
        });
    }

    /** Marks every answer of the components that {@link #find} found. */
    void markWhole(ObjIntConsumer<Col> mark) {
        for (int component : byComponent.keySet()) {
            for (int tree : model.site.components[component]) {
                for (int at = topology.trees[tree]; at < topology.trees[tree + 1]; at++) {
                    mark(nodeGroup(topology.order[at]), topology.order[at], mark);
                    if (topology.parentAt[at] >= 0) {
                        mark(AnswerWriter.Group.RUN, topology.feedRun[topology.order[at]], mark);
                    }
                }
            }
        }
    }

    private void mark(AnswerWriter.Group group, int row, ObjIntConsumer<Col> mark) {
        for (Col col : model.writer.columns(group)) {
            mark.accept(col, row);
        }
    }

    private void touch(Dep dep) {
        Marks changed = dep.col().changed;
        if (changed.isEmpty()) {
            return;
        }
        String key = dep.col().key();
        whole |= key.equals("grants_by");
        if (dep.wide()) {
            for (int node : topology.order) {
                touched.add(node);
            }
            for (int bundle = 0; bundle < model.site.members.length; bundle++) {
                bundles.add(layout.base(Table.BUNDLES) + bundle);
            }
            return;
        }
        if (dep.col().table == Table.ZONES) {
            touchZones(changed);
            return;
        }
        for (int k = 0; k < changed.count(); k++) {
            touchRow(dep.col().table, changed.at(k));
        }
    }

    private void touchRow(Table table, int row) {
        switch (table) {
            case BUNDLES -> touchBundle(row);
            case RUNS -> touchRun(row);
            case SOURCES, SWITCHES -> touchFeeder(row);
            default -> touched.add(row);
        }
    }

    private void touchRun(int run) {
        int bundle = model.flattener.bundleOf(run);
        if (bundle >= 0) {
            touchBundle(bundle);
        }
        int node = topology.to[run];
        if (node >= 0 && topology.feedRun[node] == run) {
            touched.add(node);
        }
    }

    private void touchBundle(int bundle) {
        bundles.add(bundle);
        for (int run : model.site.members[bundle - layout.base(Table.BUNDLES)]) {
            touched.add(topology.to[run]);
        }
    }

    /** A feeder and what hangs on it directly: their runs start at its volts. */
    private void touchFeeder(int node) {
        touched.add(node);
        int at = topology.at[node];
        if (at >= 0) {
            for (int child = at + 1; child < topology.endAt[at]; child = topology.endAt[child]) {
                touched.add(topology.order[child]);
            }
        }
    }

    private void touchZones(Marks zones) {
        for (int node : topology.order) {
            int run = topology.feedRun[node];
            if (zones.has(model.air.zoneCell(node))) {
                touchFeeder(node);
            } else if (run >= 0 && zones.has(model.air.zoneCell(run))) {
                touched.add(node);
            }
        }
    }

    private AnswerWriter.Group nodeGroup(int row) {
        return switch (layout.table(row)) {
            case SOURCES -> AnswerWriter.Group.SOURCE;
            case SWITCHES -> AnswerWriter.Group.SWITCH;
            default -> AnswerWriter.Group.DEVICE;
        };
    }

    private PieceStep.Extent extent(int component, TreeSet<Integer> ats, ObjIntConsumer<Col> mark) {
        int[] trees = model.site.components[component];
        TreeSet<Integer> solved = new TreeSet<>();
        for (int at : ats) {
            for (int up = at; up >= 0; up = topology.parentAt[up]) {
                solved.add(up);
            }
        }
        List<Integer> roots = new ArrayList<>();
        List<PieceStep.Answer> answers = new ArrayList<>();
        boolean grants = false;
        int offset = 0;
        int[] flatOf = new int[topology.order.length];
        for (int tree : trees) {
            int begin = topology.trees[tree];
            boolean concerned = solved.contains(begin);
            if (concerned) {
                roots.add(offset);
            }
            for (int at = begin; at < topology.trees[tree + 1]; at++) {
                flatOf[at] = offset + at - begin;
                boolean row = solved.contains(at) || inDirectTree(at, solved);
                grants |= answers(at, flatOf[at], row, concerned, answers, mark);
            }
            offset += topology.trees[tree + 1] - begin;
        }
        return new PieceStep.Extent(
                bundles.stream().mapToInt(Integer::intValue).toArray(),
                ats.stream().mapToInt(at -> flatOf[at]).toArray(),
                descending(solved.stream().mapToInt(at -> flatOf[at]).sorted().toArray()),
                roots.stream().mapToInt(Integer::intValue).toArray(),
                grants,
                answers,
                whole);
    }

    /** True for a row that is solved together with one that is: both hang on direct switches in a row. */
    private boolean inDirectTree(int at, Set<Integer> solved) {
        int up = topology.parentAt[at];
        while (up >= 0 && isDirect(topology.order[up])) {
            if (solved.contains(up)) {
                return true;
            }
            up = topology.parentAt[up];
        }
        return false;
    }

    private boolean isDirect(int row) {
        Col mode = model.columns.need(Table.SWITCHES, "mode");
        return layout.isIn(row, Table.SWITCHES) && mode.v[row - mode.base] == DIRECT;
    }

    /** Collects a row's answers that may change; true if some of them hang on how power is handed out. */
    private boolean answers(
            int at,
            int flat,
            boolean solved,
            boolean concerned,
            List<PieceStep.Answer> into,
            ObjIntConsumer<Col> mark) {
        int node = topology.order[at];
        boolean grants = false;
        Col[] cols = model.writer.columns(nodeGroup(node));
        for (int which = 0; which < cols.length; which++) {
            boolean granted = GRANTS.contains(cols[which].key());
            if (solved || (concerned && (granted || LIMITS.contains(cols[which].key())))) {
                mark.accept(cols[which], node);
                if (needed.contains(cols[which])) {
                    into.add(new PieceStep.Answer(nodeGroup(node), which, flat, node, cols[which]));
                    grants |= granted;
                }
            }
        }
        if (solved && topology.parentAt[at] >= 0) {
            Col[] run = model.writer.columns(AnswerWriter.Group.RUN);
            for (int which = 0; which < run.length; which++) {
                mark.accept(run[which], topology.feedRun[node]);
                if (needed.contains(run[which])) {
                    into.add(new PieceStep.Answer(
                            AnswerWriter.Group.RUN, which, flat, topology.feedRun[node], run[which]));
                }
            }
        }
        return grants;
    }

    /** Largest first. */
    private static int[] descending(int[] ascending) {
        int[] turned = new int[ascending.length];
        Arrays.setAll(turned, i -> ascending[ascending.length - 1 - i]);
        return turned;
    }
}
