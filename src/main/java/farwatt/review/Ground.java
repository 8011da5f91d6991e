package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.plan.Cell;
import farwatt.plan.Naming;
import farwatt.plan.NaturalOrder;
import farwatt.plan.Plan;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Step;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where a finding stands among what feeds what: from here attempts are thought of. Shows what is filled in now. */
final class Ground {
    private final Scene scene;
    private final Plan whole;
    private final Finding finding;
    private final List<Tree.Feed> way = new ArrayList<>();
    private final List<Spot> nodes = new ArrayList<>();
    private final Optional<Spot> subject;

    /**
     * @param whole the whole plan, of which the calculation may be a part
     * @param finding of the calculation
     */
    Ground(Calculation calc, Plan whole, Finding finding) {
        scene = new Scene(calc);
        this.whole = whole;
        this.finding = finding;
        subject = Table.of(finding.place().table()).flatMap(this::spot);
        subject.ifPresent(this::walk);
    }

    private Optional<Spot> spot(Table table) {
        int at = table.isSite()
                ? scene.calc().plan().rows(table).place(finding.place().row())
                : -1;
        return at < 0 ? Optional.empty() : Optional.of(new Spot(table, at));
    }

    /** From the row of the finding up to the source: runs, and nodes that feed. */
    private void walk(Spot row) {
        Optional<Tree.Feed> feed = scene.tree().feedOf(row);
        if (row.table() == Table.RUNS) {
            feed = scene.tree().feeds().stream()
                    .filter(f -> f.run() == row.place())
                    .findFirst();
        }
        if (row.table() == Table.SOURCES) {
            nodes.add(row);
            scene.tree().below(row).stream()
                    .max(Comparator.comparingDouble(this::sent))
                    .ifPresent(way::add);
        } else if (row.table() == Table.SWITCHES) {
            nodes.add(row);
        } else if (row.table() == Table.RUNS) {
            feed.filter(f -> f.to().table() == Table.SWITCHES).ifPresent(f -> nodes.add(f.to()));
        }
        for (Optional<Tree.Feed> up = feed;
                up.isPresent();
                up = scene.tree().feedOf(up.get().from())) {
            way.add(up.get());
            nodes.add(up.get().from());
        }
    }

    Scene scene() {
        return scene;
    }

    Finding finding() {
        return finding;
    }

    /** The row of the finding, if it is one of the site. */
    Optional<Spot> subject() {
        return subject;
    }

    /** The runs from the finding up to the source, nearest first; of a source the run that carries most. */
    List<Tree.Feed> way() {
        return way;
    }

    /** The sources and switches from the finding up. */
    List<Spot> nodes() {
        return nodes;
    }

    double sent(Tree.Feed feed) {
        return scene.of(Table.RUNS, "sent").at(feed.run());
    }

    String id(Spot spot) {
        return scene.tree().id(spot);
    }

    double number(Spot spot, String name) {
        return scene.of(spot.table(), name).at(spot.place());
    }

    /** A cell as people read it. */
    String shown(Spot spot, String name) {
        return scene.calc().value(spot.table(), spot.place(), name).text();
    }

    /** The word of a choice, "" where there is none. */
    String word(Spot spot, String name) {
        return scene.words(spot.table(), spot.place(), name);
    }

    boolean typed(Spot spot, String name) {
        return scene.typed(spot.table(), spot.place(), name);
    }

    static Spot run(Tree.Feed feed) {
        return new Spot(Table.RUNS, feed.run());
    }

    Step set(Spot spot, String name, Cell to) {
        return new Step.Set(new StepPath(id(spot), name).text(), to);
    }

    Step set(Spot spot, String name, String to) {
        return set(spot, name, Cell.text(to));
    }

    /** Devices that hang on a node or below it, the hungriest first; without the finding's own row. */
    List<Tree.Feed> devicesUnder(Spot node) {
        List<Tree.Feed> found = new ArrayList<>();
        List<Tree.Feed> open = new ArrayList<>(scene.tree().below(node));
        while (!open.isEmpty()) {
            Tree.Feed feed = open.remove(open.size() - 1);
            if (feed.to().table() == Table.DEVICES) {
                found.add(feed);
            } else {
                open.addAll(scene.tree().below(feed.to()));
            }
        }
        Comparator<Tree.Feed> hungriest = Comparator.comparingDouble((Tree.Feed f) -> -number(f.to(), "draw"));
        found.sort(hungriest.thenComparing(f -> id(f.to()), NaturalOrder.IDS));
        return found;
    }

    /** Sources and switches with a port to spare. */
    List<Spot> withFreePort() {
        List<Spot> free = new ArrayList<>();
        for (Table table : Scene.NODES) {
            for (int place = 0; place < scene.rows(table); place++) {
                Spot node = new Spot(table, place);
                if (scene.inUse(table, place) && scene.tree().below(node).size() < number(node, "ports")) {
                    free.add(node);
                }
            }
        }
        return free;
    }

    /** An id that the whole plan has not. */
    String freeId(String like) {
        return Naming.in(whole).next(like);
    }
}
