package farwatt.review;

import farwatt.plan.Cell;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Step;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Another cable, or the same connected otherwise or laid by a shorter way. */
final class CableLadders {
    private static final int[] GAUGES = {26, 24, 23, 22};
    private static final double CLAD = 1;

    private final Ground ground;
    private final List<Ladder> all;

    CableLadders(Ground ground, List<Ladder> all) {
        this.ground = ground;
        this.all = all;
    }

    /** Whatever brings more watts and volts over a run. */
    void power(Tree.Feed feed) {
        Spot run = Ground.run(feed);
        String id = ground.id(run);
        String basis = ground.word(run, "basis");
        if (!ground.word(run, "pairs").equals("4")) {
            one(Effort.ENDS, "pairs", TryPhrase.TRY_PAIRS.text(id), ground.set(run, "pairs", Cell.number("4")));
        }
        if (basis.equals("limit")) {
            one(Effort.SETTING, "basis", TryPhrase.TRY_BASIS.text(id), ground.set(run, "basis", "wire"));
        }
        copper(run);
        if (basis.equals("wire")) {
            gauge(run);
        }
        if (!basis.equals("measured") && !basis.equals("pair")) {
            shorter(run);
        }
    }

    void copper(Spot run) {
        if (ground.number(run, "metal") == CLAD) {
            Step step = ground.set(run, "metal", "copper");
            one(Effort.CABLE, "metal", TryPhrase.TRY_COPPER.text(ground.id(run)), step);
        }
    }

    void gauge(Spot run) {
        double now = ground.number(run, "gauge");
        List<Attempt> rungs = new ArrayList<>();
        for (int gauge : GAUGES) {
            if (gauge < now) {
                String to = gauge + " AWG";
                String from = ground.shown(run, "gauge").replace(" AWG", "");
                // an id that ends in a digit must not run into the gauge
                String id = ground.id(run).matches(".*\\d") ? ground.id(run) + "," : ground.id(run);
                String text = TryPhrase.TRY_FROM_TO.text(id, from, to);
                rungs.add(new Attempt(Effort.CABLE, rungs.size(), List.of(ground.set(run, "gauge", to)), text));
            }
        }
        add(run, "gauge", rungs);
    }

    /** Whole metres down to half of it, and not below the cords: a site does not shrink further. */
    void shorter(Spot run) {
        double now = ground.number(run, "length");
        double cord = ground.number(run, "cord_length");
        int first = (int) Math.ceil(now) - 1;
        int count = first - (int) Math.max(Math.floor(now / 2), Math.ceil(cord));
        if (count > 0) {
            String id = ground.id(run);
            String from = ground.shown(run, "length");
            all.add(new Ladder(
                    id + " length",
                    count,
                    i -> {
                        String to = (first - i) + " m";
                        String text = TryPhrase.TRY_LENGTH.text(id, from, to);
                        return new Attempt(
                                Effort.CABLE,
                                3 + (now - first + i) / now,
                                List.of(ground.set(run, "length", to)),
                                text);
                    },
                    Ladder.Climb.HALVE));
        }
    }

    /** What the cords and the screen do for the reach of data. */
    void data(Spot run) {
        String id = ground.id(run);
        double gauge = ground.number(run, "cord_gauge");
        double cord = ground.number(run, "cord_length");
        if (cord > 0) {
            List<Attempt> rungs = new ArrayList<>();
            for (int to : new int[] {26, 24}) {
                if (to < gauge) {
                    String text = TryPhrase.TRY_CORD_GAUGE.text(id, to + " AWG");
                    Step step = ground.set(run, "cord_gauge", to + " AWG");
                    rungs.add(new Attempt(Effort.ENDS, rungs.size(), List.of(step), text));
                }
            }
            add(run, "cord_gauge", rungs);
            cords(run, cord);
        }
        if (ground.number(run, "screened") == 0) {
            one(Effort.CABLE, "screened", TryPhrase.TRY_SCREENED.text(id), ground.set(run, "screened", Cell.YES));
        }
    }

    private void cords(Spot run, double cord) {
        double length = ground.number(run, "length");
        int first = (int) Math.ceil(cord) - 1;
        if (first < 0 || Double.isNaN(length)) {
            return;
        }
        String id = ground.id(run);
        String from = ground.shown(run, "cord_length");
        all.add(new Ladder(
                id + " cord_length",
                first + 1,
                i -> {
                    String to = (first - i) + " m";
                    Step shorter = ground.set(run, "cord_length", to);
                    // the whole run gets shorter by what the cord does
                    Step all = ground.set(run, "length", Say.of(length - cord + first - i, Say.M));
                    String text = TryPhrase.TRY_CORD.text(id, from, to);
                    return new Attempt(Effort.ENDS, 2 + i, List.of(shorter, all), text);
                },
                Ladder.Climb.HALVE));
    }

    /** Cable made for more heat. */
    void heat(Spot run) {
        List<Attempt> rungs = new ArrayList<>();
        for (int rated : new int[] {75, 90}) {
            if (rated > ground.number(run, "heat_rated")) {
                Step step = ground.set(run, "heat_rated", rated + " degC");
                String text = TryPhrase.TRY_HEAT_RATED.text(ground.id(run), rated + " °C");
                rungs.add(new Attempt(Effort.CABLE, 5 + rungs.size(), List.of(step), text));
            }
        }
        add(run, "heat_rated", rungs);
    }

    void sheath(Spot run) {
        one(Effort.CABLE, "sheath", TryPhrase.TRY_SHEATH.text(ground.id(run)), ground.set(run, "sheath", "outdoor"));
    }

    /** On a port that asks before those without a number, and before those of higher numbers. */
    void earlier(Tree.Feed feed) {
        double now = ground.number(Ground.run(feed), "port");
        if (Double.isNaN(now) || now > 1) {
            port(feed);
        }
    }

    /** On a port of its own number: the lowest that is free. */
    void port(Tree.Feed feed) {
        Spot run = Ground.run(feed);
        Set<Integer> taken = new HashSet<>();
        for (Tree.Feed other : ground.scene().tree().below(feed.from())) {
            taken.add((int) ground.number(Ground.run(other), "port"));
        }
        int most = (int)
                ground.scene().of(feed.from().table(), "ports").at(feed.from().place());
        for (int port = 1; port <= most; port++) {
            if (!taken.contains(port)) {
                String text = TryPhrase.TRY_PORT.text(ground.id(run), port, ground.id(feed.from()));
                one(Effort.SETTING, "port", text, ground.set(run, "port", Cell.number(Integer.toString(port))));
                return;
            }
        }
    }

    /** Ports of more watts, where they are not all alike. */
    void runLimit(Tree.Feed feed) {
        Spot run = Ground.run(feed);
        double now = ground.number(run, "port_limit");
        double node = ground.scene()
                .of(feed.from().table(), "port_limit")
                .at(feed.from().place());
        List<Attempt> rungs = new ArrayList<>();
        for (String watts : GearLadders.WATTS) {
            double to = Double.parseDouble(watts);
            if (to > now && to <= node) {
                String text = TryPhrase.TRY_RUN_LIMIT.text(ground.id(run), ground.id(feed.from()), watts + " W");
                Step step = ground.set(run, "port_limit", watts + " W");
                rungs.add(new Attempt(Effort.SETTING, 3 + rungs.size(), List.of(step), text));
            }
        }
        add(run, "port_limit", rungs);
    }

    private void one(Effort effort, String what, String text, Step step) {
        all.add(Ladder.of(what + text, List.of(new Attempt(effort, 0, List.of(step), text))));
    }

    private void add(Spot run, String what, List<Attempt> rungs) {
        if (!rungs.isEmpty()) {
            all.add(Ladder.of(Table.RUNS.key() + ground.id(run) + what, rungs));
        }
    }
}
