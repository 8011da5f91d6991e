package farwatt.engine;

import farwatt.plan.Table;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What rows are called in expressions: one kind a table, and kinds for the ends that may be of two tables. */
final class RowKinds {
    static final String NODE = "node";
    static final String FED = "fed";

    private static final Map<Table, String> KINDS = Map.of(
            Table.ZONES, "zone",
            Table.BUNDLES, "bundle",
            Table.SOURCES, "source",
            Table.SWITCHES, "switch",
            Table.RUNS, "run",
            Table.DEVICES, "device",
            Table.NEEDS, "need",
            Table.VALUES, "value",
            Table.PRACTICE, "constant",
            Table.PLAN, "plan");
    private static final Map<String, String> CALLED = Map.of(
            NODE,
            "a source or switch",
            FED,
            "a switch or device",
            "zone",
            "a zone",
            "bundle",
            "a bundle",
            "source",
            "a source",
            "switch",
            "a switch",
            "run",
            "a run",
            "device",
            "a device");

    private RowKinds() {}

    static String of(Table table) {
        return KINDS.getOrDefault(table, "row");
    }

    /** The tables whose rows are of a kind. */
    static List<Table> tables(String kind) {
        if (kind.equals(NODE)) {
            return List.of(Table.SOURCES, Table.SWITCHES);
        }
        if (kind.equals(FED)) {
            return List.of(Table.SWITCHES, Table.DEVICES);
        }
        return KINDS.entrySet().stream()
                .filter(e -> e.getValue().equals(kind))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The kind of the rows that a relation leads to. */
    static String ledTo(String relation) {
        return switch (relation) {
            case "run" -> "run";
            case "feeder", "from" -> NODE;
            case "to" -> FED;
            default -> relation;
        };
    }

    static String called(String kind) {
        return CALLED.getOrDefault(kind, "a row");
    }

    /** A kind that covers two. */
    static Optional<String> join(String one, String other) {
        if (one.equals(other)) {
            return Optional.of(one);
        }
        for (String wide : List.of(NODE, FED)) {
            if (tables(wide).containsAll(tables(one)) && tables(wide).containsAll(tables(other))) {
                return Optional.of(wide);
            }
        }
        return Optional.empty();
    }
}
