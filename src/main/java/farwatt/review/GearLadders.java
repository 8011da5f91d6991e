package farwatt.review;

import farwatt.plan.Cell;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.standard.PortType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Settings of sources and switches, and other gear in their place. */
final class GearLadders {
    /** Port limits in use, W (IEEE 802.3: types 1 to 4). */
    static final List<String> WATTS = List.of("15.4", "30", "60", "90");

    private static final int[] VOLTS = {50, 52, 54, 55, 56, 57};
    private static final int[] PORTS = {4, 5, 8, 10, 12, 16, 24, 48};
    private static final List<String> LINKS = List.of("1 Gb/s", "2.5 Gb/s", "10 Gb/s");
    private static final int BUDGET_STEP = 5;
    private static final int LARGEST = 8;

    private final Ground ground;
    private final List<Ladder> all;

    GearLadders(Ground ground, List<Ladder> all) {
        this.ground = ground;
        this.all = all;
    }

    /** Whatever lets a node give more. */
    void power(Spot node) {
        boolean passive = ground.scene().passive(node);
        boolean regulated =
                node.table() == Table.SOURCES || !ground.word(node, "mode").equals("direct");
        grants(node);
        guard(node);
        if (!passive) {
            limit(node);
            type(node);
        }
        if (regulated && !passive) {
            volts(node);
        }
        if (ground.typed(node, "budget")) {
            budget(node);
        }
        if (node.table() == Table.SWITCHES) {
            uplink(node);
            if (!regulated) {
                String text = TryPhrase.TRY_REGULATED.text(ground.id(node));
                one(Effort.GEAR, node, "mode", text, ground.set(node, "mode", "regulated"));
            }
        }
    }

    private void grants(Spot node) {
        List<Attempt> rungs = new ArrayList<>();
        String now = ground.word(node, "grants_by");
        for (String by : List.of("declared", "measured")) {
            if (now.equals("class") || (now.equals("declared") && by.equals("measured"))) {
                String text = TryPhrase.TRY_GRANTS.text(ground.id(node), by);
                rungs.add(new Attempt(Effort.SETTING, rungs.size(), List.of(ground.set(node, "grants_by", by)), text));
            }
        }
        add(node, "grants_by", rungs);
    }

    private void guard(Spot node) {
        double now = ground.number(node, "guard");
        List<Attempt> rungs = new ArrayList<>();
        for (String to : List.of("10 %", "5 %", "0 %")) {
            if (Double.parseDouble(to.replace(" %", "")) / 100 < now) {
                String text = TryPhrase.TRY_GUARD.text(ground.id(node), ground.shown(node, "guard"), to);
                rungs.add(new Attempt(Effort.SETTING, 1 + rungs.size(), List.of(ground.set(node, "guard", to)), text));
            }
        }
        add(node, "guard", rungs);
    }

    private Optional<PortType> type(String word) {
        return PortType.of(word);
    }

    private void limit(Spot node) {
        double now = ground.number(node, "port_limit");
        double most = type(ground.word(node, "type")).map(PortType::watts).orElse(0.0);
        List<Attempt> rungs = new ArrayList<>();
        for (String watts : WATTS) {
            double to = Double.parseDouble(watts);
            if (to > now && to <= most) {
                String text =
                        TryPhrase.TRY_PORT_LIMIT.text(ground.id(node), ground.shown(node, "port_limit"), watts + " W");
                Step step = ground.set(node, "port_limit", watts + " W");
                rungs.add(new Attempt(Effort.SETTING, 2 + rungs.size(), List.of(step), text));
            }
        }
        add(node, "port_limit", rungs);
    }

    /** Ports of a larger type, with all they may give; a single port's budget goes along. */
    private void type(Spot node) {
        String now = ground.word(node, "type");
        List<Attempt> rungs = new ArrayList<>();
        for (PortType type : PortType.all()) {
            if (type.word().compareTo(now) > 0) {
                List<Step> steps = new ArrayList<>(List.of(ground.set(node, "type", Cell.number(type.word()))));
                String watts = Say.of(type.watts(), Say.W);
                if (ground.typed(node, "port_limit") && ground.number(node, "port_limit") < type.watts()) {
                    steps.add(ground.set(node, "port_limit", watts));
                }
                boolean single = node.table() == Table.SOURCES && ground.number(node, "ports") == 1;
                if (single && ground.typed(node, "budget") && ground.number(node, "budget") < type.watts()) {
                    steps.add(ground.set(node, "budget", watts));
                }
                if (ground.typed(node, "volts") && ground.number(node, "volts") < type.volts()) {
                    steps.add(ground.set(node, "volts", Say.of(type.volts(), Say.V)));
                }
                String text = TryPhrase.TRY_TYPE.text(ground.id(node), now, type.word());
                rungs.add(new Attempt(Effort.GEAR, rungs.size(), steps, text));
            }
        }
        add(node, "type", rungs);
    }

    /** Up to the most that a standard port may have. */
    private void volts(Spot node) {
        List<Attempt> rungs = new ArrayList<>();
        for (int volts : VOLTS) {
            if (volts > ground.number(node, "volts")) {
                String to = volts + " V";
                String text = TryPhrase.TRY_VOLTS.text(ground.id(node), ground.shown(node, "volts"), to);
                rungs.add(new Attempt(Effort.SETTING, 4 + rungs.size(), List.of(ground.set(node, "volts", to)), text));
            }
        }
        add(node, "volts", rungs);
    }

    /** Ports of a standard feed within what is extra-low voltage, or less. */
    void lessVolts(Spot node) {
        String to = Say.of(Math.min(ground.finding().limit(), 57), Say.V);
        String text = TryPhrase.TRY_VOLTS.text(ground.id(node), ground.shown(node, "volts"), to);
        one(Effort.SETTING, node, "volts", text, ground.set(node, "volts", to));
    }

    /** A port of no more than the largest type gives. */
    void lessWatts(Spot node) {
        String text = TryPhrase.TRY_PORT_LIMIT.text(ground.id(node), ground.shown(node, "port_limit"), "90 W");
        one(Effort.SETTING, node, "port_limit", text, ground.set(node, "port_limit", "90 W"));
    }

    private void budget(Spot node) {
        double now = ground.number(node, "budget");
        if (!(now > 0 && now < 100_000)) {
            return;
        }
        int first = (int) Math.floor(now / BUDGET_STEP) + 1;
        String id = ground.id(node);
        String from = ground.shown(node, "budget");
        all.add(new Ladder(
                node.table().key() + id + "budget",
                first + 2,
                i -> {
                    String to = BUDGET_STEP * (first + i) + " W";
                    String text = TryPhrase.TRY_BUDGET.text(id, from, to);
                    return new Attempt(Effort.GEAR, 4 + i, List.of(ground.set(node, "budget", to)), text);
                },
                Ladder.Climb.HALVE));
    }

    /** What a switch may take over its uplink. */
    private void uplink(Spot node) {
        if (!ground.word(node, "uplink_right").equals("extended")) {
            String text = TryPhrase.TRY_RIGHT.text(ground.id(node));
            one(Effort.SETTING, node, "uplink_right", text, ground.set(node, "uplink_right", "extended"));
        }
        classes(node, "uplink_class", TryPhrase.TRY_UPLINK_CLASS, Effort.SETTING);
    }

    /** A device that asks for more. */
    void deviceClass(Spot device) {
        classes(device, "class", TryPhrase.TRY_CLASS, Effort.SETTING);
    }

    private void classes(Spot node, String name, TryPhrase phrase, Effort effort) {
        double now = ground.number(node, name);
        List<Attempt> rungs = new ArrayList<>();
        for (int asked = (int) now + 1; now >= 0 && asked <= LARGEST; asked++) {
            Step step = ground.set(node, name, Cell.number(Integer.toString(asked)));
            String text = phrase.text(ground.id(node), (int) now, asked);
            rungs.add(new Attempt(effort, 1 + rungs.size(), List.of(step), text));
        }
        add(node, name, rungs);
    }

    void ports(Spot node) {
        List<Attempt> rungs = new ArrayList<>();
        for (int ports : PORTS) {
            if (ports > ground.number(node, "ports")) {
                Step step = ground.set(node, "ports", Cell.number(Integer.toString(ports)));
                String text = TryPhrase.TRY_PORTS.text(ground.id(node), ground.shown(node, "ports"), ports);
                rungs.add(new Attempt(Effort.GEAR, rungs.size(), List.of(step), text));
            }
        }
        add(node, "ports", rungs);
    }

    void link(Spot node) {
        List<Attempt> rungs = new ArrayList<>();
        for (String link : LINKS) {
            String text = TryPhrase.TRY_LINK.text(ground.id(node), link);
            rungs.add(new Attempt(Effort.GEAR, rungs.size(), List.of(ground.set(node, "link", link)), text));
        }
        add(node, "link", rungs);
    }

    /** Gear that the site's weather does not harm. */
    void rated(Spot node, String name, String to, TryPhrase phrase) {
        one(Effort.GEAR, node, name, phrase.text(ground.id(node), Say.sign(to)), ground.set(node, name, to));
    }

    private void one(Effort effort, Spot node, String what, String text, Step step) {
        add(node, what, List.of(new Attempt(effort, 0, List.of(step), text)));
    }

    private void add(Spot node, String what, List<Attempt> rungs) {
        if (!rungs.isEmpty()) {
            all.add(Ladder.of(node.table().key() + ground.id(node) + what, rungs));
        }
    }
}
