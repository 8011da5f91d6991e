package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.language.Type;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What trials say is what a calculation of the plan with the same cells says, to the last bit. */
class TrialsTest {
    private static final List<String> READS = List.of(
            "least(volts of devices)",
            "total(loss of runs)",
            "plan.lost",
            "plan.least_reserve_share",
            "plan.cost",
            "count(devices where not powered)",
            "total(reserve of switches) + total(granted of sources)",
            "greatest(wire_temp of runs)",
            "greatest(way of switches)",
            "total(below of switches)",
            "'device 1.1'.powered_why",
            "'device 1.1'.far",
            "'source 1'.reserve_share",
            "'source 1'.bound_by",
            "'source 1'.runtime",
            "'device 1.1'.run.reach",
            "plan.least_headroom > 3 V and every(powered of devices)");

    private record Choice(Knob knob, List<String> texts) {}

    private static List<Choice> choices(Plan plan, Random random) {
        List<Choice> all = new ArrayList<>();
        for (int z = 1; z <= 3; z++) {
            all.add(choice(Table.ZONES, "zone " + z, "ambient", "-12 degC", "21 degC", "48 degC", "70 degC"));
            all.add(choice(Table.ZONES, "zone " + z, "setting", "open", "tray", "conduit", "insulated"));
            all.add(choice(Table.ZONES, "zone " + z, "sun", "0 K", "8 K", "-300 K"));
        }
        all.add(choice(Table.BUNDLES, "duct 1", "others", "0", "3", "30"));
        all.add(choice(Table.VALUES, "dark", "is", "yes", "no"));
        all.add(choice(Table.VALUES, "night", "is", "2 W", "6 W", "12.5 W", "40 W"));
        all.add(choice(Table.PRACTICE, "joint_ohms", "is", "0.02 ohm", "0.3 ohm"));
        all.add(choice(Table.PRACTICE, "pair_unbalance", "is", "7 %", "20 %"));
        all.add(choice(Table.PLAN, "", "heat_margin", "0", "1.25", "4"));
        for (Row run : plan.rows(Table.RUNS)) {
            all.add(choice(Table.RUNS, run.id(), "length", "5 m", "40 m", "90 m", "260 m", "-1 m"));
            all.add(choice(Table.RUNS, run.id(), "gauge", "22 AWG", "24 AWG", "28 AWG"));
            all.add(choice(Table.RUNS, run.id(), "cable_diameter", "5 mm", "8 mm"));
        }
        for (Row source : plan.rows(Table.SOURCES)) {
            all.add(choice(Table.SOURCES, source.id(), "volts", "48 V", "52 V", "57 V"));
            all.add(choice(Table.SOURCES, source.id(), "budget", "20 W", "90 W", "400 W"));
            all.add(choice(Table.SOURCES, source.id(), "grants_by", "class", "declared", "measured"));
        }
        for (Row edge : plan.rows(Table.SWITCHES)) {
            all.add(choice(Table.SWITCHES, edge.id(), "own_draw", "1 W", "9 W"));
            all.add(choice(Table.SWITCHES, edge.id(), "mode", "regulated", "direct"));
            all.add(choice(Table.SWITCHES, edge.id(), "efficiency", "80 %", "95 %", "120 %"));
            all.add(choice(Table.SWITCHES, edge.id(), "through_drop", "0.2 V", "2 V"));
            all.add(choice(Table.SWITCHES, edge.id(), "volts", "44 V", "54 V"));
        }
        for (Row device : plan.rows(Table.DEVICES)) {
            all.add(choice(Table.DEVICES, device.id(), "draw", "1 W", "5 W", "11 W", "24 W"));
            all.add(choice(Table.DEVICES, device.id(), "class", "1", "3", "4", "8"));
            all.add(choice(Table.DEVICES, device.id(), "in_use", "yes", "yes", "no"));
            all.add(choice(Table.DEVICES, device.id(), "zone", "zone 1", "zone 2"));
        }
        java.util.Collections.shuffle(all, random);
        return all.subList(0, Math.min(all.size(), 1 + random.nextInt(6)));
    }

    private static Choice choice(Table table, String id, String name, String... texts) {
        return new Choice(new Knob(table, id, name), List.of(texts));
    }

    private static Plan with(Plan plan, Knob knob, Cell cell) {
        Plan ready = plan;
        if (knob.table() == Table.PRACTICE && plan.rows(Table.PRACTICE).place(knob.id()) < 0) {
            ready = plan.and(Table.PRACTICE, Row.of(knob.id()));
        }
        return Edit.apply(ready, new Change.SetCell(knob.table(), knob.id(), knob.name(), Optional.of(cell)))
                .plan();
    }

    /** Puts a text as a study would: its inside value where it has one. */
    private static void put(Trials trials, int k, Plan plan, Knob knob, String text) {
        Calculation one = Calculation.of(with(plan, knob, Cell.text(text)));
        Value value = one.value(knob.table(), one.place(knob.table(), knob.id()), knob.name());
        if (knob.name().equals("zone") || knob.name().equals("in_use")) {
            trials.put(k, Cell.text(text));
        } else if (value.isPresent()) {
            trials.put(k, value.inside());
        } else {
            double inside = Double.parseDouble(text.substring(0, text.indexOf(' ')));
            trials.put(k, text.endsWith("%") ? inside / 100 : inside);
        }
    }

    private static String said(Value value) {
        return value.fault()
                .map(fault -> fault.kind() + " " + fault.text())
                .orElseGet(() -> value.type() == Type.Plain.TEXT ? value.words() : Double.toHexString(value.inside()));
    }

    @Test
    void trialsSayWhatACalculationSays() {
        int plans = Soak.times(20, 2_000);
        int faults = 0;
        int sound = 0;
        for (int p = 0; p < plans; p++) {
            long seed = 4_000 + p;
            Random random = new Random(seed);
            Plan plan = new RandomPlans(random).any().plan();
            Corner corner = Corner.values()[random.nextInt(Corner.values().length)];
            List<Choice> choices = choices(plan, random);
            List<Knob> knobs = choices.stream().map(Choice::knob).toList();
            Trials trials = Trials.of(plan, corner, knobs, READS);
            Plan now = plan;
            for (int step = 0; step < 25; step++) {
                int moves = step == 0 ? knobs.size() : 1 + random.nextInt(random.nextInt(3) + 1);
                for (int m = 0; m < moves; m++) {
                    int k = step == 0 ? m : random.nextInt(knobs.size());
                    List<String> texts = choices.get(k).texts();
                    String text = texts.get(random.nextInt(texts.size()));
                    put(trials, k, plan, knobs.get(k), text);
                    now = with(now, knobs.get(k), Cell.text(text));
                }
                trials.work();
                Calculation fresh = Calculation.of(now);
                fresh.look(corner);
                for (int r = 0; r < READS.size(); r++) {
                    Value wanted = fresh.ask(READS.get(r)).value().orElseThrow();
                    String where = "seed " + seed + " step " + step + " " + READS.get(r) + " knobs " + knobs;
                    assertEquals(said(wanted), said(trials.value(r)), where);
                    faults += wanted.isPresent() ? 0 : 1;
                    sound += wanted.isPresent() ? 1 : 0;
                }
                trials.tidy();
            }
        }
        assertTrue(sound > faults / 4 && faults > 50, sound + " with a value, " + faults + " without");
    }
}
