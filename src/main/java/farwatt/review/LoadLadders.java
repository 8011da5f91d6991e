package farwatt.review;

import farwatt.plan.Cell;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Row;
import farwatt.plan.Step;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Loads elsewhere, in another order, or left out; runs by another way. */
final class LoadLadders {
    /** How cables lie, from what holds heat most to what does least. */
    private static final List<String> AIRIER = List.of("insulated", "conduit", "tray", "open");

    private static final int MOVED = 4;
    private static final int PLACES = 3;

    private final Ground ground;
    private final List<Ladder> all;

    LoadLadders(Ground ground, List<Ladder> all) {
        this.ground = ground;
        this.all = all;
    }

    /** Earlier in the grants. */
    void priority(Spot node) {
        double now = ground.number(node, "priority");
        List<Attempt> rungs = new ArrayList<>();
        for (int to = (int) now - 1; to >= 1; to--) {
            Step step = ground.set(node, "priority", Cell.number(Integer.toString(to)));
            String text = TryPhrase.TRY_PRIORITY.text(ground.id(node), (int) now, to);
            rungs.add(new Attempt(Effort.SETTING, rungs.size(), List.of(step), text));
        }
        if (!rungs.isEmpty()) {
            all.add(Ladder.of(ground.id(node) + "priority", rungs));
        }
    }

    /** Less on an overloaded node. */
    void lessen(Spot node) {
        List<Tree.Feed> devices = new ArrayList<>(ground.devicesUnder(node));
        ground.subject().ifPresent(own -> devices.removeIf(f -> f.to().equals(own)));
        for (Tree.Feed feed : devices.subList(0, Math.min(MOVED, devices.size()))) {
            moved(feed);
        }
        second(node);
        List<Attempt> without = new ArrayList<>();
        double last = -1;
        for (int i = devices.size() - 1; i >= 0 && without.size() < 2 * MOVED; i--) {
            Spot device = devices.get(i).to();
            double draw = ground.number(device, "draw");
            if (draw != last) {
                String text = TryPhrase.TRY_WITHOUT.text(ground.id(device));
                Step step = ground.set(device, "in_use", Cell.NO);
                without.add(new Attempt(Effort.WITHOUT, Double.isNaN(draw) ? 0 : draw, List.of(step), text));
                last = draw;
            }
        }
        if (!without.isEmpty()) {
            all.add(new Ladder(ground.id(node) + "without", without.size(), without::get, Ladder.Climb.EACH));
        }
    }

    /** The far end of a run on other nodes that have a port to spare. */
    void moved(Tree.Feed feed) {
        int count = 0;
        for (Spot other : ground.withFreePort()) {
            if (!other.equals(feed.from()) && !other.equals(feed.to()) && count < PLACES) {
                count++;
                List<Step> steps = new ArrayList<>(onto(feed, ground.id(other)));
                String text = TryPhrase.TRY_MOVE.text(ground.id(feed.to()), ground.id(other));
                all.add(Ladder.of(text, List.of(new Attempt(Effort.MOVE, count, steps, text))));
            }
        }
    }

    private List<Step> onto(Tree.Feed feed, String node) {
        Spot run = Ground.run(feed);
        List<Step> steps = new ArrayList<>(List.of(ground.set(run, "from", node)));
        if (ground.typed(run, "port")) {
            steps.add(ground.set(run, "port", ""));
        }
        return steps;
    }

    /** Every second device, from the hungriest on, moved to one more switch like the first beside it. */
    private void second(Spot node) {
        Optional<Tree.Feed> trunk = ground.scene().tree().feedOf(node);
        if (node.table() != Table.SWITCHES || trunk.isEmpty()) {
            return;
        }
        List<Tree.Feed> direct = new ArrayList<>(ground.devicesUnder(node));
        direct.removeIf(f -> !f.from().equals(node));
        List<Tree.Feed> half = new ArrayList<>();
        for (int i = 0; i < direct.size(); i += 2) {
            half.add(direct.get(i));
        }
        if (half.isEmpty()) {
            return;
        }
        String id = ground.freeId(ground.id(node));
        String line = ground.freeId(ground.id(Ground.run(trunk.get())));
        Spot feeder = trunk.get().from();
        List<Step> steps = new ArrayList<>(onePortMore(feeder));
        List<String> names = half.stream().map(f -> ground.id(f.to())).toList();
        TryPhrase phrase = steps.isEmpty() ? TryPhrase.TRY_SECOND : TryPhrase.TRY_SECOND_PORT;
        String text = phrase.text(id, ground.id(feeder), Say.list(names));
        Row gear = row(node).renamed(id);
        Row cable = row(Ground.run(trunk.get())).renamed(line).with("to", id).without("port");
        steps.add(new Step.Add(Table.SWITCHES.key(), gear));
        steps.add(new Step.Add(Table.RUNS.key(), cable));
        half.forEach(feed -> steps.addAll(onto(feed, id)));
        all.add(Ladder.of(ground.id(node) + "second", List.of(new Attempt(Effort.SWITCH, half.size(), steps, text))));
    }

    /** Where no port is free: gear with one more, and a budget that has the watts for it. */
    private List<Step> onePortMore(Spot node) {
        int used = ground.scene().tree().below(node).size();
        List<Step> steps = new ArrayList<>();
        if (used >= ground.number(node, "ports")) {
            steps.add(ground.set(node, "ports", Cell.number(Integer.toString(used + 1))));
            if (node.table() == Table.SOURCES && ground.typed(node, "budget")) {
                double budget = ground.number(node, "budget") + ground.number(node, "port_limit");
                steps.add(ground.set(node, "budget", Say.cell(budget, Say.W)));
            }
        }
        return steps;
    }

    private Row row(Spot spot) {
        return ground.scene().calc().plan().rows(spot.table()).at(spot.place());
    }

    /** Cooler: apart from its bundle, the bundle split, in the open, in the shade. */
    void cooler(Tree.Feed feed) {
        Spot run = Ground.run(feed);
        ground.scene().calc().related(Table.RUNS, feed.run(), "bundle").ifPresent(bundle -> bundle(run, bundle));
        if (ground.finding().corner().isEmpty()) {
            return;
        }
        ground.scene()
                .calc()
                .reckonedIn(feed.run(), ground.finding().corner().get())
                .ifPresent(this::air);
    }

    private void air(Spot zone) {
        String id = ground.id(zone);
        if (ground.number(zone, "sun") > 0) {
            String text = TryPhrase.TRY_SHADE.text(id);
            Step step = ground.set(zone, "sun", "0 K");
            all.add(Ladder.of(text, List.of(new Attempt(Effort.WAY, 2, List.of(step), text))));
        }
        String setting = ground.word(zone, "setting");
        List<Attempt> rungs = new ArrayList<>();
        for (String to : AIRIER.subList(AIRIER.indexOf(setting) + 1, AIRIER.size())) {
            String text = TryPhrase.TRY_SETTING.text(id, setting, to);
            rungs.add(new Attempt(Effort.WAY, 3 + rungs.size(), List.of(ground.set(zone, "setting", to)), text));
        }
        if (!rungs.isEmpty()) {
            all.add(Ladder.of(id + "setting", rungs));
        }
    }

    /** Shade for what is too hot in it. */
    void shade(Spot node) {
        ground.scene()
                .calc()
                .related(node.table(), node.place(), "zone")
                .filter(zone -> ground.number(zone, "sun") > 0)
                .ifPresent(this::air);
    }

    private void bundle(Spot run, Spot bundle) {
        String id = ground.id(bundle);
        String text = TryPhrase.TRY_APART.text(ground.id(run), id);
        all.add(Ladder.of(text, List.of(new Attempt(Effort.WAY, 0, List.of(ground.set(run, "bundle", "")), text))));
        List<Spot> half = new ArrayList<>();
        int count = 0;
        for (Tree.Feed feed : ground.scene().tree().feeds()) {
            boolean in = ground.scene()
                    .calc()
                    .related(Table.RUNS, feed.run(), "bundle")
                    .filter(bundle::equals)
                    .isPresent();
            if (in && count++ % 2 == 1) {
                half.add(Ground.run(feed));
            }
        }
        if (half.isEmpty()) {
            return;
        }
        String other = ground.freeId(id);
        List<Step> steps = new ArrayList<>(List.of(new Step.Add(Table.BUNDLES.key(), Row.of(other))));
        half.forEach(each -> steps.add(ground.set(each, "bundle", other)));
        String split = TryPhrase.TRY_SPLIT.text(
                id, Say.list(half.stream().map(ground::id).toList()));
        all.add(Ladder.of(split, List.of(new Attempt(Effort.WAY, 1, steps, split))));
    }
}
