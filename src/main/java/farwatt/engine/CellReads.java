package farwatt.engine;

import farwatt.language.Column;
import farwatt.language.GatherPlan;
import farwatt.language.Link;
import farwatt.language.Read;
import farwatt.language.RowSet;
import farwatt.language.Uses;
import farwatt.language.Way;
import java.util.ArrayList;
import java.util.List;

/** What formulas read: column by column for the order of columns, cell by cell where columns need each other. */
final class CellReads {
    private CellReads() {}

    /** Told of one cell. */
    @FunctionalInterface
    interface Visitor {
        void cell(Col col, int row);
    }

    /** The columns that stand behind what a formula reads. */
    static List<Col> behind(Column column) {
        return column instanceof UnionCol union ? union.parts() : List.of((Col) column);
    }

    /** Dependencies of a formula. */
    static List<Dep> deps(Uses uses) {
        List<Dep> all = new ArrayList<>();
        for (Read read : uses.reads()) {
            behind(read.column()).forEach(col -> all.add(dep(col, read.way())));
        }
        for (GatherPlan gather : uses.gathers()) {
            wide(gather.uses(), all);
        }
        return all;
    }

    private static Dep dep(Col col, Way way) {
        return switch (way.start()) {
            case HERE, SELF ->
                new Dep(col, way.links().stream().map(Relation.class::cast).toList(), -1, false);
            case FIXED -> {
                int row = end(way.row(), way.links());
                yield row < 0 ? Dep.all(col) : Dep.cell(col, row);
            }
            case ANY -> Dep.all(col);
        };
    }

    private static void wide(Uses uses, List<Dep> into) {
        uses.reads().forEach(read -> behind(read.column()).forEach(col -> into.add(Dep.all(col))));
        uses.gathers().forEach(inner -> wide(inner.uses(), into));
    }

    /** Dependencies of a gather over a whole table: changed rows by themselves, everything else by all. */
    static List<Dep> gatherDeps(GatherPlan gather) {
        return deps(gather.uses());
    }

    private static int end(int row, List<Link> links) {
        int at = row;
        for (Link link : links) {
            if (at < 0) {
                return at;
            }
            at = link.follow(at);
        }
        return at;
    }

    /** Visits every cell that a formula of a row may read. */
    static void cells(Uses uses, int row, Visitor visitor) {
        cells(uses, row, row, visitor);
    }

    private static void cells(Uses uses, int here, int self, Visitor visitor) {
        for (Read read : uses.reads()) {
            Way way = read.way();
            if (way.start() == Way.Start.ANY) {
                behind(read.column()).forEach(col -> every(col, visitor));
                continue;
            }
            int target = end(start(way, here, self), way.links());
            for (Col col : behind(read.column())) {
                if (target >= col.base && target < col.base + col.v.length) {
                    visitor.cell(col, target);
                }
            }
        }
        for (GatherPlan gather : uses.gathers()) {
            gather(gather, here, self, visitor);
        }
    }

    /** The row at which a way ends; negative where it leads nowhere or only the calculation tells. */
    static int target(Way way, int here, int self) {
        return end(start(way, here, self), way.links());
    }

    private static int start(Way way, int here, int self) {
        return switch (way.start()) {
            case HERE -> here;
            case SELF -> self;
            default -> way.row();
        };
    }

    private static void every(Col col, Visitor visitor) {
        for (int place = 0; place < col.v.length; place++) {
            visitor.cell(col, col.base + place);
        }
    }

    private static void gather(GatherPlan gather, int here, int self, Visitor visitor) {
        RowSet set = gather.set();
        List<int[]> groups = new ArrayList<>();
        if (gather.base().isEmpty()) {
            groups.add(set.rows());
        }
        for (Way way : gather.baseWays()) {
            if (way.start() == Way.Start.ANY) {
                groups.add(set.rows());
                continue;
            }
            int node = end(start(way, here, self), way.links());
            if (node >= 0) {
                groups.add(gather.reach() == farwatt.language.Reach.ON ? set.on(node) : set.under(node));
            }
        }
        for (int[] rows : groups) {
            for (int row : rows) {
                cells(gather.uses(), row, self, visitor);
            }
        }
    }

    /** Visits every cell that a gather over a whole table may read. */
    static void gatherCells(GatherPlan gather, Visitor visitor) {
        for (int row : gather.set().rows()) {
            cells(gather.uses(), row, row, visitor);
        }
    }

    /** Visits the cells that a dependency of ours stands for. */
    static void cells(Dep dep, int row, Visitor visitor) {
        if (dep.wide()) {
            every(dep.col(), visitor);
            return;
        }
        int at = dep.row() >= 0 ? dep.row() : row;
        for (Relation link : dep.path()) {
            at = at < 0 ? at : link.follow(at);
        }
        if (at >= dep.col().base && at < dep.col().base + dep.col().v.length) {
            visitor.cell(dep.col(), at);
        }
    }
}
