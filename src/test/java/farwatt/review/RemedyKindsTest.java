package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Progress;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each kind of change, on a plan where it is the right one. */
class RemedyKindsTest {
    private static final String FAR = """
            plan | reserve_target = 26 %
            source feed | type = 4 | volts = 55 V
            switch gate | volts = 55 V | uplink_right = extended | grants_by = measured | ports = 4 | guard = 0 %
            run trunk | from = feed | to = gate | length = 95 m
            device cam 1 | class = 4 | draw = 20 W
            device cam 2 | class = 4 | draw = 20 W
            device cam 3 | class = 3 | draw = 11 W
            run line 1 | from = gate | to = cam 1 | length = 20 m
            run line 2 | from = gate | to = cam 2 | length = 20 m
            run line 3 | from = gate | to = cam 3 | length = 20 m
            """;

    private static final String HOT = """
            plan | reserve_target = 0 %
            zone roof | ambient = 20 degC | hottest = HOTTEST | setting = SETTING | sun = SUN
            bundle duct | others = OTHERS | others_amps = 0.5 A
            source feed | type = 4 | volts = 55 V | ports = 2
            run line 1 | from = feed | to = sign 1 | zone = roof | length = 60 m | bundle = duct
            run line 2 | from = feed | to = sign 2 | zone = roof | length = 60 m | bundle = duct
            device sign 1 | class = 8 | draw = 60 W
            device sign 2 | class = 8 | draw = 60 W
            """;

    private static final String DARK = """
            plan | reserve_target = 0 %
            source feed | type = 4 | volts = 55 V | ports = 8 | port_limit = 30 W | budget = 60 W
            run line 1 | from = feed | to = cam 1 | length = 10 m
            run line 2 | from = feed | to = cam 2 | length = 10 m
            run line 3 | from = feed | to = cam 3 | length = 10 m
            device cam 1 | class = 4 | draw = 14 W
            device cam 2 | class = 4 | draw = 14 W
            device cam 3 | class = 4 | draw = 14 W
            """;

    private static final String REST = "practice review.dark/cam 2 | is = note | why = may rest\n";

    private static final String HUT = """
            source hut | type = 4 | volts = 55 V | ports = 2 | budget = 60 W
            bundle duct | others = 0
            device cam 4 | class = 1 | draw = 2 W
            run line 4 | from = hut | to = cam 4 | length = 10 m | bundle = duct
            """;

    private static Arguments of(String name, String plan, String finding, String remedy) {
        return Arguments.of(name, plan, finding, remedy);
    }

    /** The far gate with another target and something replaced. */
    private static Arguments far(String name, int target, String from, String to, String remedy) {
        String plan = FAR.replace("26 %", target + " %").replace(from, to);
        return of(name, plan, "review.reserve", remedy);
    }

    private static String hot(String zone, int others) {
        String[] parts = zone.split(", ", -1);
        return HOT.replace("HOTTEST", parts[0])
                .replace("SETTING", parts[1])
                .replace("SUN", parts[2])
                .replace("OTHERS", Integer.toString(others));
    }

    private static Arguments hot(String name, String zone, int others, String remedy) {
        return of(name, hot(zone, others), "review.hot_wire", remedy);
    }

    private static Arguments dark(String name, String from, String to, String remedy) {
        return of(name, DARK.replace(from, to), "review.dark", remedy);
    }

    static Stream<Arguments> kinds() {
        String feed = "type = 4 | volts = 55 V";
        String end = "pairs = 4 | basis = pair | pair_loop = 14 ohm";
        return Stream.of(
                far("gauge", 26, "x", "x", "trunk 24 → 23 AWG"),
                far("metal", 20, "= 95 m", "= 95 m | metal = clad", "trunk in solid copper"),
                far("pairs", 26, "= 95 m", "= 60 m | pairs = 2", "trunk over four pairs"),
                far("basis", 26, "= 95 m", "= 75 m | basis = limit", "trunk reckoned as the cable"),
                far("shorter", 30, "= 95 m", "= 95 m | gauge = 22 AWG", "trunk no longer than 67 m (now 95 m)"),
                far("extended", 20, "uplink_right = extended", "uplink_class = 8", "gate with uplink_right extended"),
                far("uplink class", 2, "uplink_right = extended", "uplink_class = 7", "gate asking for class 8"),
                far(
                        "guard",
                        20,
                        "ports = 4 | guard = 0 %",
                        "ports = 4 | budget = 70 W | guard = 15 %",
                        "gate with a guard of 5 %"),
                far("budget", 20, feed, feed + " | budget = 75 W", "feed with a budget of 85 W instead of 75 W"),
                far("volts", 22, feed, "type = 4 | volts = 50 V | port_limit = 90 W", "feed set from 50 V to 52 V"),
                far("port limit", 20, feed, feed + " | port_limit = 75 W", "feed with a port limit of 90 W"),
                of(
                        "type",
                        FAR.replace(feed, "type = 3 | volts = 55 V").replace("26 %", "10 %"),
                        "review.overload",
                        "feed as gear of type 4"),
                far(
                        "second switch",
                        30,
                        "= 95 m",
                        "= 95 m | " + end,
                        "gate 2 as a second edge switch on its own trunk"),
                of(
                        "regulated",
                        FAR.replace("ports = 4", "ports = 4 | mode = direct")
                                .replace("draw = 11 W", "draw = 11 W | volts_floor = 53 V"),
                        "review.floor",
                        "gate as a regulated switch"),
                far("left out", 30, "= 95 m", "= 95 m | " + end, "cam 3 left out"),
                hot("shade", "52 degC, open, 15 K", 0, "roof in the shade"),
                hot("setting", "58.3 degC, insulated, 0 K", 0, "roof in the setting conduit instead of insulated"),
                of(
                        "apart",
                        hot("44 degC, conduit, 0 K", 30)
                                .replace(
                                        "sign 2 | zone = roof | length = 60 m | bundle = duct",
                                        "sign 2 | length = 60 m"),
                        "review.hot_wire",
                        "line 1 laid apart from duct"),
                of(
                        "split",
                        hot("59.35 degC, conduit, 0 K", 0).replace("= 60 m", "= 60 m | gauge = 22 AWG"),
                        "review.hot_wire",
                        "duct split in two"),
                hot("heat rated", "61 degC, open, 0 K", 0, "line 1 as cable rated for 75 °C"),
                dark("grants", "x", "x", "feed granting by declared watts"),
                dark("budget of a source", "x", "x", "feed with a budget of 90 W instead of 60 W"),
                dark("priority", "device cam 3", REST + "device cam 3", "cam 3 at priority 2 instead of 3"),
                dark("port", "device cam 3", REST + "device cam 3", "line 3 on port 1 of feed"),
                of(
                        "moved",
                        DARK.replace("14 W", "22 W").replace("cam 3 | l", "cam 3 | bundle = duct | l") + HUT,
                        "review.dark",
                        "cam 3 moved to hut"));
    }

    private static Review mended(Plan plan) {
        Calculation calc = Calculation.of(plan);
        return Remedies.of(calc, Reviewer.review(calc), Progress.SILENT, new Cancel());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void isOffered(String name, String site, String code, String remedy) {
        Plan plan = Sketch.plan(site);
        Review review = mended(plan);
        List<Finding> fails =
                review.findings().stream().filter(f -> f.level() == Level.FAIL).toList();
        String all = fails.stream()
                .map(f -> "\n" + f.code() + " " + f.text() + "\n     "
                        + f.remedies().stream().map(Remedy::text).toList() + f.nearest())
                .toList()
                .toString();
        Remedy offered = fails.stream()
                .filter(f -> f.code().equals(code))
                .flatMap(f -> f.remedies().stream())
                .filter(r -> r.text().startsWith(remedy))
                .findFirst()
                .orElseThrow(() -> new AssertionError(remedy + " " + all));
        Review after = Reviewer.review(Calculation.of(
                Edit.apply(plan, offered.change(plan).orElseThrow()).plan()));
        assertTrue(after.fails() < review.fails(), all);
    }
}
