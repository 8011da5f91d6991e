package farwatt.engine;

import farwatt.plan.NaturalOrder;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Why rows stand in no tree: it is said once, where it began, and everything that hangs there hands it on. */
final class Outside {
    private static final int SHOWN = 16;

    private final Layout layout;
    private final Faults faults;
    private final Topology topology;
    private final List<Notice> notices = new ArrayList<>();
    /** By row: the row whose reason is handed on here, −1 where the reason is its own. */
    private final int[] cause;
    /** Ids of what is left out by the row out of use on which it hangs. */
    private final Map<Place, List<String>> leftOut = new LinkedHashMap<>();

    Outside(Layout layout, Faults faults, Topology topology) {
        this.layout = layout;
        this.faults = faults;
        this.topology = topology;
        cause = new int[layout.rows()];
        Arrays.fill(cause, -1);
    }

    List<Notice> notices() {
        return notices;
    }

    boolean isLeftOut(int row) {
        double why = topology.outside[row];
        return why != 0 && faults.kind(why) == Fault.Kind.OUT_OF_USE;
    }

    private double fail(EngineCode code, Place place, Object... parts) {
        Notice notice = Notice.of(Level.FAIL, code, place, parts);
        notices.add(notice);
        return faults.raise(new Fault(Fault.Kind.NOT_FED, place, notice.text()));
    }

    /** The reason of a run with an end that nobody filled in. */
    double emptyEnd(int run, String name) {
        Place place = layout.place(run, name);
        return fail(EngineCode.RUN_END_EMPTY, place, layout.id(run), name);
    }

    /** Says that one run more feeds a node that has one. */
    void fedTwice(int node, int run) {
        double[] outside = topology.outside;
        int first = topology.feedRun[node];
        if (cause[run] < 0 && cause[first] < 0) {
            outside[node] =
                    fail(EngineCode.FED_TWICE, layout.place(node), layout.id(node), layout.id(first), layout.id(run));
        }
        for (int each : new int[] {first, run}) {
            outside[each] = outside[node];
            cause[each] = node;
        }
    }

    /** Says of every node in use that no tree reached why: a ring, nothing feeds it, or what feeds it is outside. */
    void explain(int[] nodes) {
        int[] walkOf = new int[layout.rows()];
        Arrays.fill(walkOf, -1);
        for (int node : nodes) {
            if (topology.at[node] < 0 && topology.outside[node] == 0) {
                explain(node, walkOf);
            }
        }
        leftOut.forEach((place, ids) -> {
            List<String> shown = ids.subList(0, Math.min(SHOWN, ids.size()));
            String all = String.join(", ", shown) + (shown.size() < ids.size() ? ", …" : "");
            notices.add(Notice.of(Level.WARN, EngineCode.LEFT_OUT, place, place.row(), all));
        });
    }

    private void explain(int node, int[] walkOf) {
        double[] outside = topology.outside;
        int[] feedRun = topology.feedRun;
        List<Integer> path = new ArrayList<>();
        int up = node;
        while (outside[up] == 0 && feedRun[up] >= 0 && walkOf[up] != node) {
            walkOf[up] = node;
            path.add(up);
            int run = feedRun[up];
            up = outside[run] != 0 ? run : topology.from[run];
        }
        if (walkOf[up] == node) {
            ring(path.subList(path.indexOf(up), path.size()));
        } else if (outside[up] == 0) {
            unfed(up);
        }
        int head = cause[up] < 0 ? up : cause[up];
        for (int below : path) {
            if (outside[below] == 0) {
                hang(below, head);
            }
            if (outside[feedRun[below]] == 0) {
                outside[feedRun[below]] = outside[below];
                cause[feedRun[below]] = head;
            }
        }
    }

    private void hang(int node, int head) {
        Fault why = faults.of(topology.outside[head]);
        boolean unused = why.kind() == Fault.Kind.OUT_OF_USE;
        cause[node] = head;
        topology.outside[node] = faults.raise(
                unused ? Fault.Kind.OUT_OF_USE : Fault.Kind.NOT_FED,
                why.origin(),
                EngineCode.HANGS_ON,
                layout.id(node),
                why.origin().row(),
                why.text());
        if (unused) {
            leftOut.computeIfAbsent(why.origin(), place -> new ArrayList<>()).add(layout.id(node));
        }
    }

    private void unfed(int node) {
        Place place = layout.place(node);
        int named = layout.siteRow(layout.id(node));
        if (named == node) {
            topology.outside[node] = fail(EngineCode.NOT_FED, place, layout.id(node));
        } else {
            // runs that name this id lead to the first row that has it
            String table = layout.table(named).key();
            topology.outside[node] =
                    faults.raise(Fault.Kind.NOT_FED, place, EngineCode.DUPLICATE_ID, layout.id(node), table);
        }
    }

    /** @param members in the order in which each is fed by the next */
    private void ring(List<Integer> members) {
        List<String> names = new ArrayList<>();
        for (int k = members.size() - 1; k >= 0; k--) {
            names.add(layout.id(members.get(k)));
        }
        int first = 0;
        for (int k = 1; k < names.size(); k++) {
            if (NaturalOrder.IDS.compare(names.get(k), names.get(first)) < 0) {
                first = k;
            }
        }
        List<String> turned = new ArrayList<>(names.subList(first, names.size()));
        turned.addAll(names.subList(0, first + 1));
        int shown = Math.min(turned.size(), SHOWN);
        String way = String.join(" → ", turned.subList(0, shown)) + (shown < turned.size() ? " → …" : "");
        int head = members.get(members.size() - 1 - first);
        double fault = fail(EngineCode.RING, layout.place(head), way);
        for (int member : members) {
            topology.outside[member] = fault;
            if (member != head) {
                cause[member] = head;
            }
        }
    }
}
