package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What holds of the review of any plan. */
class ReviewPropertiesTest {
    private static final int PLANS = Boolean.getBoolean("farwatt.soak") ? 2000 : 60;

    /** What people are told, without the order of rows in it. */
    private static List<String> told(Review review) {
        return review.findings().stream()
                .map(f -> f.code() + f.level() + f.corner() + f.place() + f.text())
                .toList();
    }

    @Test
    void theOrderOfRowsDecidesNothing() {
        for (long seed = 1; seed <= PLANS; seed++) {
            Plan plan = RandomPlans.of(seed, 25);
            Review one = Reviewer.review(Calculation.of(plan));
            Review other = Reviewer.review(Calculation.of(RandomPlans.shuffled(plan, seed)));
            assertEquals(one.verdict(), other.verdict(), "seed " + seed);
            assertEquals(told(one), told(other), "seed " + seed);
            assertEquals(one.corners(), other.corners(), "seed " + seed);
        }
    }

    @Test
    void afterAnEditTheReviewIsThatOfTheNewPlan() {
        for (long seed = 1; seed <= PLANS; seed++) {
            Random random = new Random(seed);
            Calculation calc = Calculation.of(RandomPlans.of(seed, 20));
            Reviewer.review(calc);
            for (int edit = 0; edit < 3; edit++) {
                int run = random.nextInt(calc.rows(Table.RUNS));
                Optional<Cell> length = Optional.of(Cell.text(5 + random.nextInt(100) + " m"));
                calc.apply(new Change.SetCell(Table.RUNS, calc.id(Table.RUNS, run), "length", length));
            }
            Review fresh = Reviewer.review(Calculation.of(calc.plan()));
            assertEquals(fresh, Reviewer.review(calc), "seed " + seed);
        }
    }

    @Test
    void theVerdictAgreesWithFindingsAndCorners() {
        for (long seed = 1; seed <= PLANS; seed++) {
            Calculation calc = Calculation.of(RandomPlans.of(seed, 25));
            Review review = Reviewer.review(calc);
            assertEquals(review.fails() == 0, review.verdict().holds(), "seed " + seed);
            assertEquals(
                    review.verdict().holds(),
                    review.corners().values().stream().allMatch(CornerVerdict::holds),
                    "seed " + seed);
            Set<String> seen = new HashSet<>();
            for (Finding f : review.findings()) {
                assertTrue(seen.add(f.code() + f.place()), "seed " + seed + ": twice " + f);
                assertFalse(f.text().matches(".*(NaN|Infinity|null|\\{\\d}|-0 ).*"), f.text());
            }
            for (Corner corner : review.corners().keySet()) {
                boolean alone = Reviewer.review(calc, corner).verdict().holds();
                assertEquals(review.corners().get(corner).holds(), alone, "seed " + seed + " " + corner);
            }
        }
    }
}
