package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;
import farwatt.review.CornerVerdict;
import farwatt.review.Finding;
import farwatt.review.Remedy;
import farwatt.review.Review;
import farwatt.review.Verdict;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A ferry landing whose gate lives off one long cable, with a review made by hand. */
final class Landing {
    static final LocalDate DAY = LocalDate.of(2025, 3, 14);

    private Landing() {}

    static Plan plan() {
        Plan plan = Plan.EMPTY.with(
                Table.PLAN,
                Rows.of(List.of(Row.of("")
                        .with("name", "Ferry landing, east gate")
                        .with("currency", "EUR")
                        .with("reserve_target", "20 %"))));
        plan = plan.and(Table.VALUES, Row.of("dark").with("is", "yes").with("note", "yes for night"));
        plan = plan.and(
                Table.PRACTICE, Row.of("joint_ohms").with("is", "0.05 ohm").with("why", "salt air"));
        plan = plan.and(Table.ZONES, Row.of("office").with("ambient", "22 degC").with("setting", "conduit"));
        plan = plan.and(
                Table.ZONES,
                Row.of("quay")
                        .with("ambient", "24 degC")
                        .with("hottest", "38 degC")
                        .with("coldest", "-15 degC")
                        .with("sun", "10 K")
                        .with("outdoor", Cell.YES));
        plan = plan.and(Table.BUNDLES, Row.of("quay duct").with("others", "6").with("others_amps", "0.2 A"));
        plan = plan.and(
                Table.SOURCES,
                Row.of("feed")
                        .with("zone", "office")
                        .with("type", Cell.number("4"))
                        .with("volts", "55 V")
                        .with("port_limit", "90 W")
                        .with("budget", "90 W")
                        .with("battery", "216 Wh")
                        .with("price", "180 EUR"));
        plan = plan.and(
                Table.SWITCHES,
                Row.of("gate")
                        .with("zone", "quay")
                        .with("ports", Cell.number("12"))
                        .with("volts", "55 V")
                        .with("port_limit", "30 W")
                        .with("budget", "84 W")
                        .with("own_draw", "6 W")
                        .with("efficiency", "94 %")
                        .with("uplink_right", "extended"));
        plan = plan.and(
                Table.RUNS,
                Row.of("trunk")
                        .with("from", "feed")
                        .with("to", "gate")
                        .with("zone", "quay")
                        .with("length", "95 m")
                        .with("cord_length", "4 m")
                        .with("gauge", "23 AWG")
                        .with("bundle", "quay duct")
                        .with("sheath", "outdoor")
                        .with("leaves_building", Cell.YES));
        String[][] devices = {
            {"cam 1", "fixed camera", "3", "if dark then 11.5 W else 6 W", "18 m"},
            {"cam 2", "fixed camera", "3", "if dark then 11.5 W else 6 W", "31 m"},
            {"mast radio", "wireless", "4", "14 W", "24 m"},
            {"ticket sign", "sign", "3", "9 W", "12 m"}
        };
        for (String[] d : devices) {
            plan = plan.and(
                    Table.DEVICES,
                    Row.of(d[0])
                            .with("kind", d[1])
                            .with("zone", "quay")
                            .with("class", Cell.number(d[2]))
                            .with("draw", d[3])
                            .with("draw_start", d[0].startsWith("cam") ? "12.5 W" : d[3]));
            plan = plan.and(
                    Table.RUNS,
                    Row.of("run " + d[0]).with("from", "gate").with("to", d[0]).with("length", d[4]));
        }
        return plan;
    }

    /** The landing with a heater on the mast that no cable carries. */
    static Plan overloaded() {
        Plan plan = plan();
        Rows devices = plan.rows(Table.DEVICES);
        int mast = devices.place("mast radio");
        return plan.with(Table.DEVICES, devices.with(mast, devices.at(mast).with("draw", "900 W")));
    }

    /** The landing without its sign and the run to it. */
    static Plan partlyUsed() {
        Plan plan = plan();
        Rows runs = plan.rows(Table.RUNS);
        Rows devices = plan.rows(Table.DEVICES);
        int run = runs.place("run ticket sign");
        int sign = devices.place("ticket sign");
        return plan.with(Table.RUNS, runs.with(run, runs.at(run).with("in_use", Cell.NO)))
                .with(Table.DEVICES, devices.with(sign, devices.at(sign).with("in_use", Cell.NO)));
    }

    /** Many halls with a source and its devices each. */
    static Plan halls(int devices) {
        List<Row> sources = new ArrayList<>();
        List<Row> runs = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < devices; i++) {
            String source = "hall " + i / 24;
            if (i % 24 == 0) {
                sources.add(Row.of(source).with("ports", Cell.number("24")).with("budget", "400 W"));
            }
            String device = "cam " + i;
            rows.add(Row.of(device).with("class", Cell.number("3")).with("draw", (4 + i % 7) + " W"));
            runs.add(Row.of("run " + i).with("from", source).with("to", device).with("length", (20 + i % 60) + " m"));
        }
        return Plan.EMPTY
                .with(Table.SOURCES, Rows.of(sources))
                .with(Table.RUNS, Rows.of(runs))
                .with(Table.DEVICES, Rows.of(rows));
    }

    static Handover on(Paper paper) {
        Handover base = handover(plan());
        return new Handover(
                base.calc(),
                base.review(),
                base.scenario(),
                base.version(),
                base.planFingerprint(),
                base.date(),
                paper,
                base.sides(),
                base.picture(),
                base.studies(),
                base.leftOut());
    }

    static Review review() {
        Map<Corner, CornerVerdict> corners = new EnumMap<>(Corner.class);
        corners.put(Corner.TYPICAL, new CornerVerdict(true, 0.21, 10.4));
        corners.put(Corner.MOST, new CornerVerdict(true, 0.182, 9.7));
        corners.put(Corner.HOT, new CornerVerdict(false, 0.131, 9.1));
        corners.put(Corner.COLD, new CornerVerdict(true, 0.2, 9.9));
        corners.put(Corner.HOTSTART, new CornerVerdict(false, 0.12, Double.NaN));
        Remedy remedy = new Remedy(
                "trunk 23 → 22 AWG: least reserve 12.0 → 17.8 %",
                List.of(new Step.Set("trunk.gauge", Cell.text("22 AWG"))), 0.178, Double.NaN, Double.NaN);
        return new Review(
                new Verdict(
                        false,
                        "Does not hold: gate keeps 12.0 % when all start in the heat; 20 % is asked for. The cable binds.",
                        Corner.HOTSTART,
                        new Place("switches", "gate", "reserve_share")),
                corners,
                List.of(
                        new Finding(
                                "review.reserve",
                                Level.FAIL,
                                Optional.of(Corner.HOTSTART),
                                new Place("switches", "gate", "reserve_share"),
                                0.12,
                                0.2,
                                "gate keeps 12.0 % of what it can give; 20 % is asked for. Take load off, or a thicker trunk.",
                                "practice, editable",
                                "",
                                List.of(remedy),
                                ""),
                        new Finding(
                                "review.surge",
                                Level.WARN,
                                Optional.empty(),
                                new Place("runs", "trunk", "surge"),
                                Double.NaN,
                                Double.NaN,
                                "trunk leaves the building and has no surge protection. Fit it at both ends and bond it.",
                                "practice, editable",
                                "Bonding and surge protection belong to a licensed person under the local code.")),
                List.of(
                        "A planning aid: not a substitute for the adopted code, the maker's instructions or a licensed"
                                + " person.",
                        "Do not unplug under load. Work on live runs only as far as the maker allows."));
    }

    static Handover handover(Plan plan) {
        return new Handover(
                Calculation.of(plan),
                review(),
                Optional.empty(),
                "1.0.0",
                Optional.of("3f0a 91c2 77de 5b10"),
                DAY,
                Paper.A4);
    }
}
