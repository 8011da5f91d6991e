package farwatt.window.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.file.PlanReader;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import farwatt.script.Outcome;
import farwatt.script.ResultTable;
import farwatt.script.Script;
import farwatt.script.ScriptListener;
import farwatt.window.desk.Desk;
import farwatt.window.remember.Remembered;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ConsoleModelTest {
    private static final Path ROOT = Path.of(System.getProperty("farwatt.root", "."));

    @TempDir
    Path folder;

    private final List<Runnable> queue = new ArrayList<>();
    private Desk desk;
    private ConsoleModel model;
    private Function<ScriptListener, Outcome> script = listener -> done(List.of(), Optional.empty());

    @BeforeEach
    void open() throws Refusal {
        Plan plan = PlanReader.read(ROOT.resolve("scenarios/ferry-landing.farwatt.json"))
                .plan();
        desk = new Desk(Runnable::run, Runnable::run, plan);
        model = new ConsoleModel(
                desk,
                (program, on, scenario, arguments, listener, cancel) -> cancel.asked()
                        ? new Outcome(
                                Outcome.State.CANCELLED, "cancelled", "", Optional.empty(), List.of(), Optional.empty())
                        : script.apply(listener),
                queue::add,
                Runnable::run,
                new History(new Remembered(folder.resolve("remembered.properties"))));
    }

    private static Outcome done(List<Scenario> kept, Optional<Scenario> proposed) {
        return new Outcome(Outcome.State.DONE, "", "", Optional.empty(), kept, proposed);
    }

    private Answer begin(String text) {
        model.run(Script.line(text), List.of());
        return model.answers().get(0);
    }

    private Answer run(String text) {
        Answer answer = begin(text);
        queue.remove(0).run();
        return answer;
    }

    private static Scenario thicker(String id, String on) {
        return new Scenario(id, on, List.of(new Step.Set("trunk.gauge", Cell.text("20 AWG"))));
    }

    private String gauge() {
        return desk.base().rows(Table.RUNS).row("trunk").orElseThrow().text("gauge");
    }

    @Test
    void whatIsPrintedIsJoinedAndTooMuchIsCounted() {
        script = listener -> {
            listener.print("one");
            listener.print("two");
            listener.table(new ResultTable("", List.of(), List.of()));
            for (int i = 0; i < 30_000; i++) {
                listener.print("a line of ten");
            }
            return done(List.of(), Optional.empty());
        };
        Answer answer = run("many");
        assertEquals("one\ntwo", ((Piece.Said) answer.pieces().get(0)).text());
        assertEquals(3, answer.pieces().size());
        assertTrue(answer.left() > 10_000, () -> "left " + answer.left());
        assertTrue(((Piece.Said) answer.pieces().get(2)).text().length() <= 200_000);
    }

    @Test
    void oneRunAtATimeAndACancelReachesIt() {
        Answer answer = begin("first");
        model.run(Script.line("second"), List.of());
        assertEquals(1, model.answers().size());
        assertTrue(answer.isRunning());
        model.cancel();
        queue.remove(0).run();
        assertFalse(answer.isRunning());
        assertEquals(Outcome.State.CANCELLED, answer.outcome().orElseThrow().state());
        assertTrue(queue.isEmpty());
    }

    @Test
    void proposedChangesAreOneStepOfThePlanWhateverIsLookedAt() {
        String before = gauge();
        script = listener -> done(List.of(), Optional.of(thicker("script", "")));
        Answer answer = run("apply()");
        desk.look("winter night");
        List<Notice> said = model.takeChanges(answer);
        assertEquals(Level.NOTE, said.get(said.size() - 1).level());
        assertEquals("20 AWG", gauge());
        assertFalse(answer.offersChanges());
        desk.undo();
        assertEquals(before, gauge());
    }

    @Test
    void aPlanChangedMeanwhileIsSaidAndWhatIsGoneIsLeftOut() throws Refusal {
        script = listener -> done(
                List.of(),
                Optional.of(new Scenario(
                        "script",
                        "",
                        List.of(
                                new Step.Set("'run cam 1'.length", Cell.text("5 m")),
                                new Step.Set("trunk.gauge", Cell.text("20 AWG"))))));
        Answer answer = run("apply()");
        assertFalse(model.isPlanChanged(answer));
        int place = 0;
        while (!desk.base().rows(Table.RUNS).at(place).id().equals("run cam 1")) {
            place++;
        }
        desk.apply(new Change.DropRow(Table.RUNS, place, "run cam 1"));
        assertTrue(model.isPlanChanged(answer));
        List<Notice> said = model.takeChanges(answer);
        assertEquals("20 AWG", gauge());
        assertTrue(said.size() > 1 && said.get(0).line().contains("run cam 1"), said::toString);
    }

    @Test
    void keptScenariosGoInTogetherOrNotAtAll() {
        int before = desk.base().scenarios().size();
        script = listener -> done(List.of(thicker("a", ""), thicker("b", "a")), Optional.empty());
        Answer answer = run("keep");
        assertEquals(2, model.takeScenarios(answer).size());
        assertEquals(before + 2, desk.base().scenarios().size());
        desk.undo();
        assertEquals(before, desk.base().scenarios().size());
        script = listener -> done(List.of(thicker("c", "gone")), Optional.empty());
        Answer lost = run("keep");
        assertEquals(Level.FAIL, model.takeScenarios(lost).get(0).level());
        assertTrue(lost.offersScenarios());
        assertEquals(before, desk.base().scenarios().size());
    }

    @Test
    void namesOfLinesBeforeAreSaidToBeForgottenWhenThePlanIsAnother() throws Refusal {
        assertEquals(List.of(), run("const a = 1").notes());
        assertEquals(List.of(), run("a").notes());
        desk.apply(new Change.SetCell(Table.RUNS, "trunk", "length", Optional.of(Cell.text("61 m"))));
        assertEquals(1, run("a").notes().size());
        assertEquals(List.of(), run("1").notes());
    }

    @Test
    void linesAreRememberedOnceAndInOrderBetweenSessions() {
        run("1");
        run("2\n+ 3");
        run("1");
        History again = new History(new Remembered(folder.resolve("remembered.properties")));
        assertEquals(List.of("2\n+ 3", "1"), again.all());
        assertEquals(Optional.of("1"), again.older("draft"));
        assertEquals(Optional.of("2\n+ 3"), again.older("1"));
        assertEquals(Optional.empty(), again.older("2\n+ 3"));
        assertEquals(Optional.of("1"), again.newer());
        assertEquals(Optional.of("draft"), again.newer());
        assertEquals(Optional.empty(), again.newer());
    }
}
