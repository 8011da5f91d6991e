package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.Stage;
import farwatt.plan.Cell;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A cell that cannot be read is named once, spoils what depends on it, and nothing else. */
class UnreadableTest {
    private static final Map<Table, String> ROWS = Map.of(
            Table.ZONES, "quay",
            Table.BUNDLES, "duct",
            Table.SOURCES, "feed",
            Table.SWITCHES, "gate",
            Table.RUNS, "trunk",
            Table.DEVICES, "cam");
    /** Cells that no answer of the engine depends on. */
    private static final Set<String> IDLE = Set.of(
            "in_use",
            "outdoor",
            "link",
            "coldest_rated",
            "hottest_rated",
            "sheath",
            "heat_rated",
            "leaves_building",
            "surge");
    /** What else must be typed for a cell to matter. */
    private static final Map<String, String[]> SETTINGS = Map.ofEntries(
            Map.entry("insulation", new String[] {"zones", "setting", "insulated"}),
            Map.entry("through_drop", new String[] {"switches", "mode", "direct"}),
            Map.entry("conductor_ohms", new String[] {"runs", "basis", "datasheet"}),
            Map.entry("measured_loop", new String[] {"runs", "basis", "measured"}),
            Map.entry("measured_at", new String[] {"runs", "basis", "measured", "measured_loop", "3 ohm"}),
            Map.entry("pair_loop", new String[] {"runs", "basis", "pair"}),
            Map.entry("load_efficiency", new String[] {"devices", "draw", "", "load", "5 W"}),
            Map.entry("seen_watts", new String[] {"runs", "seen_amps", ""}),
            Map.entry("load", new String[] {"devices", "draw", ""}),
            Map.entry("class", new String[] {"devices", "draw", ""}),
            Map.entry("category", new String[] {"runs", "cable_diameter", ""}),
            Map.entry("cord_gauge", new String[] {"runs", "cord_length", "5 m"}),
            Map.entry("ports", new String[] {"sources", "budget", ""}),
            Map.entry("grant_factor", new String[] {"switches", "grants_by", "class"}));

    static Draft quay() {
        return new Draft()
                .zone("quay", "ambient", "24 degC", "hottest", "38 degC", "coldest", "-15 degC", "sun", "2 K")
                .bundle("duct", "others", "3", "others_amps", "0.1 A")
                .source("feed", "type", "4", "zone", "quay", "derate_from", "20 degC", "battery", "200 Wh")
                .edge("gate", "zone", "quay", "derate_from", "20 degC", "budget", "60 W")
                .run("trunk", "feed", "gate", "length", "60 m", "bundle", "duct", "price_per_length", "2 EUR/m")
                .read("trunk", "51 V", "49 V", "0.5 A")
                .device("cam", "draw", "5 W", "zone", "quay", "bitrate", "4 Mb/s")
                .run("short", "gate", "cam", "length", "5 m")
                .source("other", "type", "4")
                .device("far cam", "draw", "6 W")
                .run("apart", "other", "far cam", "length", "20 m");
    }

    static Stream<Named<Name>> given() {
        return ROWS.keySet().stream()
                .flatMap(table -> Catalogue.cells(table).stream())
                .filter(name -> name.stage() == Stage.GIVEN)
                .filter(name -> !(name.kind() instanceof Kind.Text) && !(name.kind() instanceof Kind.RowOf))
                .filter(name -> !name.path().equals("switches.ports"))
                .map(name -> Named.of(name.path(), name));
    }

    @ParameterizedTest
    @MethodSource("given")
    void isSaidAndSpoilsWhatDependsOnIt(Name name) {
        Table table = name.table();
        String id = ROWS.get(table);
        Draft draft = quay();
        String[] more = SETTINGS.getOrDefault(name.key(), new String[] {table.key()});
        if (more[0].equals(table.key())) {
            for (int i = 1; i < more.length; i += 2) {
                draft.cell(table, id, more[i], Cell.text(more[i + 1]));
            }
        }
        draft.cell(table, id, name.key(), Cell.text("what ever"));
        Place place = new Place(table.key(), id, name.key());
        int spoiled = 0;
        Answers answers = draft.solved();
        for (Corner corner : Corner.values()) {
            answers.calculation().look(corner);
            assertEquals(
                    1,
                    answers.notices().stream()
                            .filter(n -> n.place().equals(place) && n.level() == Level.FAIL)
                            .count());
            assertEquals(1, answers.notices().size(), answers.notices().toString());
            assertEquals(place, answers.fault(id, name.key()).origin());
            assertEquals(Fault.Kind.UNREADABLE, answers.fault(id, name.key()).kind());
            spoiled += faults(answers, place).size();
            assertEquals(6, answers.number("far cam", "watts"));
            Sound.check(answers.calculation());
        }
        assertEquals(IDLE.contains(name.key()), spoiled == 0, name.path() + " spoils " + spoiled);
    }

    /** Answers of the site without a value because of a cell. */
    static List<String> faults(Answers answers, Place place) {
        List<String> found = new ArrayList<>();
        Calculation calculation = answers.calculation();
        for (Table table : Table.site()) {
            for (Name name : calculation.names(table)) {
                if (name.stage() == Stage.GIVEN || name.kind() instanceof Kind.RowOf) {
                    continue;
                }
                for (int row = 0; row < calculation.rows(table); row++) {
                    Value value = calculation.value(table, row, name.key());
                    if (value.fault().filter(f -> f.origin().equals(place)).isPresent()) {
                        found.add(calculation.id(table, row) + "." + name.key());
                    }
                }
            }
        }
        if (calculation
                .value(Table.PLAN, 0, "cost")
                .fault()
                .filter(f -> f.origin().equals(place))
                .isPresent()) {
            found.add("cost");
        }
        return found;
    }

    static Stream<Named<Name>> constants() {
        return Catalogue.of(Table.PRACTICE).stream().map(name -> Named.of(name.key(), name));
    }

    /** Constants that the engine's own answers use; the rest serve findings. */
    private static final Set<String> USED = Set.of(
            "lay_solid",
            "joint_ohms",
            "copper_alpha",
            "surface_open",
            "bundle_packing",
            "bundle_conductivity",
            "reach_total",
            "reach_most",
            "growth_cool",
            "cord_factor_24",
            "data_headroom",
            "battery_age",
            "battery_inverter",
            "lead_5h");

    @ParameterizedTest
    @MethodSource("constants")
    void soDoesAConstantThatCannotBeRead(Name constant) {
        Answers answers = quay().practice(constant.key(), "what ever").solved();
        Place place = new Place("practice", "", constant.key());
        assertEquals(1, answers.notices().size());
        assertEquals(place, answers.notices().get(0).place());
        assertEquals(
                place,
                answers.named(Table.PRACTICE, constant.key())
                        .fault()
                        .orElseThrow()
                        .origin());
        Sound.check(answers.calculation());
        if (USED.contains(constant.key())) {
            assertFalse(faults(answers, place).isEmpty());
        }
    }

    @ParameterizedTest
    @MethodSource("given")
    void anEmptyCellOfAnotherRowIsNotTakenForThisOnesOwn(Name name) {
        if (!(name.kind() instanceof Kind.Quantity) || IDLE.contains(name.key())) {
            return;
        }
        // the cell asks a cell that nobody filled in
        Draft draft = quay().input(
                        name.table(),
                        "missing",
                        ((Kind.Quantity) name.kind()).symbol().replace("¤", "EUR"));
        String[] more = SETTINGS.getOrDefault(name.key(), new String[] {""});
        if (more[0].equals(name.table().key())) {
            for (int i = 1; i < more.length; i += 2) {
                draft.cell(name.table(), ROWS.get(name.table()), more[i], Cell.text(more[i + 1]));
            }
        }
        draft.cell(name.table(), ROWS.get(name.table()), name.key(), Cell.text("missing"));
        Place place = new Place(name.table().key(), ROWS.get(name.table()), "missing");
        int spoiled = 0;
        Answers answers = draft.solved();
        for (Corner corner : Corner.values()) {
            answers.calculation().look(corner);
            spoiled += faults(answers, place).size();
            Sound.check(answers.calculation());
        }
        assertTrue(spoiled > 0, name.path());
    }
}
