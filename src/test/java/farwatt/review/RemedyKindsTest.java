package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
            zone roof | ambient = 20 degC | hottest = HOTTEST | setting = conduit | sun = SUN
            bundle duct | others = OTHERS | others_amps = 0.5 A
            source feed | type = 4 | volts = 55 V | ports = 2
            run line 1 | from = feed | to = sign 1 | zone = roof | length = 60 m | bundle = duct
            run line 2 | from = feed | to = sign 2 | zone = roof | length = 60 m | bundle = duct
            device sign 1 | class = 8 | draw = 60 W
            device sign 2 | class = 8 | draw = 60 W
            """;

    private static Arguments of(String name, String plan, String finding, String remedy) {
        return Arguments.of(name, plan, finding, remedy);
    }

    /** The far gate with another target and something replaced. */
    private static Arguments far(String name, int target, String from, String to, String remedy) {
        String plan = FAR.replace("26 %", target + " %").replace(from, to);
        return of(name, plan, "review.reserve", remedy);
    }

    private static Arguments hot(String name, String hottest, String sun, String others, String remedy) {
        String plan = HOT.replace("HOTTEST", hottest).replace("SUN", sun).replace("OTHERS", others);
        return of(name, plan, "review.hot_wire", remedy);
    }

    static Stream<Arguments> kinds() {
        String feed = "type = 4 | volts = 55 V";
        String end = "pairs = 4 | basis = pair | pair_loop = 14 ohm";
        return Stream.of(
                far("gauge", 26, "x", "x", "trunk 24 → 23 AWG"),
                far("metal", 20, "= 95 m", "= 95 m | metal = clad", "trunk in solid copper"),
                far("pairs", 26, "= 95 m", "= 60 m | pairs = 2", "trunk over four pairs"),
                far("basis", 26, "= 95 m", "= 75 m | basis = limit", "trunk reckoned as the cable"),
                far("shorter", 30, "= 95 m", "= 95 m | gauge = 22 AWG", "trunk no longer than 75 m (now 95 m)"),
                far("extended", 20, "uplink_right = extended", "uplink_class = 8", "gate with uplink_right extended"),
                far("uplink class", 10, "uplink_right = extended", "uplink_class = 6", "gate asking for class 8"),
                far(
                        "guard",
                        20,
                        "grants_by = measured",
                        "grants_by = measured | budget = 65 W | guard = 15 %",
                        "gate with a guard of"),
                far("budget", 20, feed, feed + " | budget = 75 W", "feed with a budget of 85 W instead of 75 W"),
                far("volts", 22, feed, "type = 4 | volts = 50 V | port_limit = 90 W", "feed set from 50 V to 52 V"),
                far("port limit", 20, feed, feed + " | port_limit = 75 W", "feed with a port limit of 90 W"),
                far("type", 10, feed, "type = 3 | volts = 55 V", "feed as gear of type 4 instead of 3"),
                far(
                        "second switch",
                        30,
                        "= 95 m",
                        "= 95 m | " + end,
                        "gate 2 as a second edge switch on its own trunk"),
                far("regulated", 20, "ports = 4", "ports = 4 | mode = direct", "gate as a regulated switch"));
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
        Finding finding = fails.stream()
                .filter(f -> f.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(all));
        Remedy offered = finding.remedies().stream()
                .filter(r -> r.text().startsWith(remedy))
                .findFirst()
                .orElseThrow(() -> new AssertionError(remedy + " " + all));
        Review after = Reviewer.review(Calculation.of(
                Edit.apply(plan, offered.change(plan).orElseThrow()).plan()));
        assertTrue(after.fails() < review.fails(), all);
        assertEquals(offered, finding.remedies().get(0), all);
    }
}
