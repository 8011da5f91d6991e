package farwatt.window.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Corner;
import farwatt.file.PlanReader;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import farwatt.review.Review;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EngineTest {
    private final Deque<Runnable> worker = new ArrayDeque<>();
    private final List<Review> reviews = new ArrayList<>();
    private final List<String> told = new ArrayList<>();
    private final Engine engine = new Engine(
            worker::add,
            Runnable::run,
            still -> told.add("figures"),
            review -> {
                reviews.add(review);
                told.add(review.findings().stream().anyMatch(f -> !f.remedies().isEmpty()) ? "remedies" : "verdict");
            },
            share -> {},
            notice -> told.add(notice.text()));

    private static Plan failing() throws Refusal {
        Plan plan =
                PlanReader.read(Path.of("scenarios/ferry-landing.farwatt.json")).plan();
        Change thinner = new Change.SetCell(Table.RUNS, "trunk", "gauge", Optional.of(Cell.text("26 AWG")));
        return Edit.apply(plan, thinner).plan();
    }

    private void work(int tasks) {
        for (int i = 0; i < tasks; i++) {
            worker.remove().run();
        }
    }

    @Test
    void aQuestionIsAnsweredBeforeTheSearchForRemediesWhichIsMadeAllTheSame() throws Refusal {
        engine.want(new Wanted(failing(), Optional.empty(), Corner.MOST));
        work(2);
        assertEquals(List.of("figures", "verdict"), told);
        engine.ask(() -> "an answer", told::add);
        while (!worker.isEmpty()) {
            work(1);
        }
        assertEquals(List.of("figures", "verdict", "an answer", "remedies"), told);
        assertEquals(reviews.get(0).verdict(), reviews.get(1).verdict());
    }

    @Test
    void aSearchThatWasGivenUpStaysSoUntilTheNextEdit() throws Refusal {
        engine.want(new Wanted(failing(), Optional.empty(), Corner.MOST));
        work(2);
        engine.stopSeeking();
        engine.ask(() -> "an answer", told::add);
        while (!worker.isEmpty()) {
            work(1);
        }
        assertEquals(List.of("figures", "verdict", "an answer"), told);
        engine.want(new Wanted(failing(), Optional.empty(), Corner.HOT));
        while (!worker.isEmpty()) {
            work(1);
        }
        assertTrue(told.contains("remedies"), told::toString);
    }
}
