package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.engine.ScenarioPlans;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Scenario;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** Remedies do what they say, the smallest intervention comes first, and where none helps that is said. */
class RemediesTest {
    private static final String LANDING = """
            plan | reserve_target = 26 %
            source feed | type = 4 | volts = 55 V
            switch gate | volts = 55 V | uplink_right = extended | grants_by = measured | ports = 4
            run trunk | from = feed | to = gate | length = 95 m | gauge = 24 AWG
            device cam 1 | class = 4 | draw = 20 W
            device cam 2 | class = 4 | draw = 20 W
            device cam 3 | class = 3 | draw = 11 W
            run line 1 | from = gate | to = cam 1 | length = 20 m
            run line 2 | from = gate | to = cam 2 | length = 20 m
            run line 3 | from = gate | to = cam 3 | length = 20 m
            """;

    private static Review mended(Plan plan) {
        Calculation calc = Calculation.of(plan);
        return Remedies.of(calc, Reviewer.review(calc), Progress.SILENT, new Cancel());
    }

    /** A finding of each kind that the site decides, and what mends it. */
    @Test
    void whatTheSiteAsksForIsOfferedAsGearOrCableThatStandsIt() {
        String site = """
                zone pier | outdoor = yes | coldest = -30 degC | hottest = 45 degC | sun = 10 K | ingress_need = IP66
                source feed | type = 4 | volts = 55 V | ports = 1
                run line 1 | from = feed | to = cam 1 | length = 20 m | sheath = indoor | metal = clad | port = 9
                device cam 1 | zone = pier | draw = 5 W | ingress = IP65 | coldest_rated = -20 degC | hottest_rated = 50 degC
                run line 2 | from = feed | to = cam 2 | length = 99 m | cord_length = 16 m | cord_gauge = 28 AWG
                device cam 2 | draw = 5 W | bitrate = 900 Mb/s
                """;
        Review review = mended(Sketch.plan(site));
        List<String> said = new ArrayList<>();
        for (Finding f : review.findings()) {
            f.remedies().forEach(r -> said.add(f.code() + ": " + r.text().replaceFirst(": least.*", "")));
        }
        List<String> wanted = List.of(
                "review.ports: feed with 4 ports instead of 1",
                "review.link: feed with a link of 2.5 Gb/s",
                "review.port_number: line 1 on port 1 of feed",
                "review.clad: line 1 in solid copper",
                "review.sheath: line 1 with an outdoor sheath",
                "review.cord: line 2 with cords of 26 AWG");
        assertTrue(said.containsAll(wanted), said.toString());
        assertTrue(said.contains("review.too_hot: pier in the shade"), said.toString());
        assertTrue(said.contains("review.too_hot: cam 1 as gear that stands 55 °C of heat"), said.toString());
        assertTrue(said.contains("review.too_cold: cam 1 as gear that stands -30 °C of cold"), said.toString());
        assertTrue(said.contains("review.ingress: cam 1 as gear of IP66"), said.toString());
    }

    private static Finding reserveOf(Review review, String node) {
        return review.findings().stream()
                .filter(f -> f.code().equals(ReviewCode.RESERVE.key())
                        && f.place().row().equals(node))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aThinTrunkIsToldHowMuchThickerAndWhatThatBrings() {
        Finding finding = reserveOf(mended(Sketch.plan(LANDING)), "gate");
        List<String> texts = finding.remedies().stream().map(Remedy::text).toList();
        assertTrue(texts.contains("trunk 24 → 23 AWG: least reserve 24.2 → 26.5 %"), texts.toString());
    }

    @Test
    void triedAsAScenarioItIsTheSamePlanAsApplied() {
        Plan plan = Sketch.plan(LANDING);
        for (Remedy remedy : reserveOf(mended(plan), "gate").remedies()) {
            Scenario scenario = remedy.scenario("tried", "");
            Plan tried = plan;
            for (var step : scenario.steps()) {
                tried = ScenarioPlans.apply(tried, step, scenario.id(), new ArrayList<>());
            }
            assertEquals(
                    tried, Edit.apply(plan, remedy.change(plan).orElseThrow()).plan());
        }
    }

    @Test
    void whereNothingMendsTheNearestSaysWhatItLacks() {
        Review review = mended(Sketch.plan(LANDING.replace("26 %", "90 %")));
        Finding finding = reserveOf(review, "gate");
        assertTrue(finding.remedies().isEmpty());
        assertTrue(finding.nearest().startsWith("Nothing tried mends it. Nearest comes "), finding.nearest());
        assertTrue(finding.nearest().contains("in reserve where the plan wants 90 %"), finding.nearest());
    }

    @Test
    void twoChangesTogetherWhereNoneAloneIsEnough() {
        Review review = mended(Sketch.plan("""
                plan | reserve_target = 0 %
                source feed | type = 4 | volts = 52 V
                run line | from = feed | to = sign | length = 100 m | pairs = 4
                device sign | class = 8 | draw = 60 W | volts_floor = 53 V
                """));
        Finding finding = review.findings().stream()
                .filter(f -> f.code().equals(ReviewCode.FLOOR.key()))
                .findFirst()
                .orElseThrow();
        assertFalse(finding.remedies().isEmpty(), finding.nearest());
        for (Remedy remedy : finding.remedies()) {
            assertTrue(remedy.changes().size() >= 2, remedy.text());
            assertTrue(remedy.text().contains(", and "), remedy.text());
        }
    }

    @Test
    void theSearchSaysHowFarItIsAndStopsWhenAsked() {
        Calculation calc = Sketch.calc(LANDING);
        Review review = Reviewer.review(calc);
        List<Double> shares = new ArrayList<>();
        Remedies.of(calc, review, (share, what) -> shares.add(share), new Cancel());
        assertEquals(review.fails(), shares.size());
        assertEquals(1, shares.get(shares.size() - 1));
        Cancel cancel = new Cancel();
        assertThrows(
                CancellationException.class,
                () -> Remedies.of(calc, review, (share, what) -> cancel.ask(), asked(cancel)));
        assertEquals(review, Reviewer.review(calc), "the calculation is as it was");
    }

    private static Cancel asked(Cancel cancel) {
        cancel.ask();
        return cancel;
    }

    @Test
    void aPlanThatHoldsIsLeftAsItIs() {
        Calculation calc = Sketch.calc(LANDING.replace("26 %", "0 %"));
        Review review = Reviewer.review(calc);
        assertEquals(review, Remedies.of(calc, review, Progress.SILENT, new Cancel()));
    }

    @Test
    void whatHangsTogetherIsSolvedAloneAndSaysTheSame() {
        String other = LANDING.replaceFirst("plan .*\n", "")
                .replaceAll("\\b(feed|gate|trunk|cam|line)\\b", "far $1")
                .replace("95 m", "20 m");
        Plan both = Sketch.plan(LANDING + other);
        List<String> alone = reserveOf(mended(Sketch.plan(LANDING)), "gate").remedies().stream()
                .map(Remedy::text)
                .toList();
        List<String> beside = reserveOf(mended(both), "gate").remedies().stream()
                .map(Remedy::text)
                .toList();
        assertEquals(alone, beside);
        Plan spoken = Sketch.plan(LANDING + other + "need | holds = total(draw of devices) < 200 W\n");
        List<String> whole = reserveOf(mended(spoken), "gate").remedies().stream()
                .map(Remedy::text)
                .toList();
        assertEquals(alone.get(0), whole.get(0));
    }

    @Test
    void aSearchThatWouldTakeTooLongIsNotBegun() {
        StringBuilder site = new StringBuilder("source feed | type = 4 | ports = 96 | budget = 60 W\n");
        for (int i = 1; i <= 17_000; i++) {
            site.append("device d").append(i).append(" | draw = 1 W\nrun r").append(i);
            site.append(" | from = feed | to = d").append(i).append(" | length = 5 m\n");
        }
        Calculation calc = Sketch.calc(site.toString());
        Review review = Reviewer.review(calc, farwatt.engine.Corner.MOST);
        Finding first = Remedies.of(calc, review, Progress.SILENT, new Cancel())
                .findings()
                .get(0);
        assertTrue(first.nearest().startsWith("No remedies were sought"), first.nearest());
    }
}
