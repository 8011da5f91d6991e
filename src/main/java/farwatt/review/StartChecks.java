package farwatt.review;

import farwatt.engine.Corner;
import farwatt.plan.Plan.Spot;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * After an outage everything asks for its start watts together. Says of each node whether it can start all at once,
 * and if not in which waves: in the order of grants, each once those before have settled to their most.
 */
final class StartChecks implements Check {
    private final Scene scene;

    StartChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        Corner start = scene.corner();
        if (start != Corner.COLD && start != Corner.HOTSTART) {
            return;
        }
        double[] settled = scene.sentIn(start == Corner.COLD ? Corner.MOST : Corner.HOT);
        // a branch that starts in waves of its own asks for less than all of it at once
        double[] starting = scene.sentIn(start).clone();
        for (Spot node : scene.tree().leavesFirst()) {
            List<Tree.Feed> asking = asking(node);
            boolean surges = asking.stream().anyMatch(f -> Near.over(starting[f.run()], settled[f.run()]));
            if (surges) {
                Waves waves = Waves.of(available(node), asking, starting, settled);
                start(findings, node, waves);
                scene.tree()
                        .feedOf(node)
                        .ifPresent(feed -> starting[feed.run()] = peak(feed, waves, starting, settled));
            }
        }
    }

    /**
     * Watts into a branch at its peak. What goes into a run bends upwards with what is taken from it, so the chord
     * between settled and all at once is never too low.
     */
    private static double peak(Tree.Feed feed, Waves waves, double[] starting, double[] settled) {
        double least = settled[feed.run()];
        double most = starting[feed.run()];
        double share = (waves.peak() - waves.settled()) / (waves.all() - waves.settled());
        return least + (most - least) * Math.max(0, Math.min(1, share));
    }

    private double available(Spot node) {
        return scene.of(node.table(), "available").at(node.place());
    }

    /** Those that are to run: what no class is granted to stays dark whatever the order. */
    private List<Tree.Feed> asking(Spot node) {
        List<Tree.Feed> asking = new ArrayList<>(scene.tree().below(node));
        if (!scene.passive(node)) {
            asking.removeIf(
                    f -> Double.isNaN(scene.of(f.to().table(), "class_granted").at(f.to().place())));
        }
        return asking;
    }

    private void start(Findings findings, Spot node, Waves waves) {
        if (Double.isNaN(waves.all()) || Double.isNaN(available(node))) {
            return;
        }
        String id = scene.tree().id(node);
        double asked = waves.all();
        double can = available(node);
        Place place = scene.place(node, "sent");
        int count = waves.waves().size();
        if (!waves.never().isEmpty()) {
            List<String> never = ids(waves.never());
            findings.add(ReviewCode.START_NEVER, Level.FAIL, place, asked, can, () ->
                    new Object[] {id, Say.list(never), Say.of(asked, Say.W), Say.of(can, Say.W)});
        } else if (count > 1) {
            String way = way(waves.waves());
            findings.add(ReviewCode.START_WAVES, Level.WARN, place, asked, can, () -> {
                String[] watts = Say.apart(asked, can, Say.W);
                return new Object[] {id, watts[0], watts[1], count, way};
            });
        } else {
            findings.add(ReviewCode.START_AT_ONCE, Level.NOTE, place, asked, can, () -> {
                String[] watts = Say.apart(asked, can, Say.W);
                return new Object[] {id, watts[0], watts[1]};
            });
        }
    }

    private String way(List<List<Tree.Feed>> waves) {
        List<String> parts = new ArrayList<>();
        waves.forEach(wave -> parts.add(Phrase.WAVE.text(wave.size(), Say.list(ids(wave)))));
        return String.join(Phrase.THEN.text(), parts);
    }

    private List<String> ids(List<Tree.Feed> feeds) {
        return feeds.stream().map(f -> scene.tree().id(f.to())).toList();
    }
}
