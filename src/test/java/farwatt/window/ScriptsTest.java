package farwatt.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** The scripts on the bench, driven by keys and mouse as a person does. */
class ScriptsTest {
    private static final Path ROOT = Path.of(System.getProperty("farwatt.root", "."));

    @TempDir
    static Path folder;

    private static WindowRun run;

    @BeforeAll
    static void open() throws Refusal {
        run = new WindowRun(folder, ferry());
    }

    @AfterAll
    static void close() {
        run.close();
    }

    private static Plan ferry() throws Refusal {
        return PlanReader.read(ROOT.resolve("scenarios/ferry-landing.farwatt.json"))
                .plan();
    }

    @BeforeEach
    void begin() throws Refusal {
        Plan plan = ferry();
        WindowRun.on(() -> {
            run.frame.desk().open(plan);
            return true;
        });
        run.settle();
        run.robot.push(KeyCode.F7);
        WindowRun.until("the script has the keyboard", () -> editor().isFocused());
        if (!text().isEmpty()) {
            run.robot.push(KeyCode.SHORTCUT, KeyCode.A);
            run.robot.push(KeyCode.DELETE);
        }
        clear();
    }

    private static void clear() {
        Button clear = button("Clear");
        WindowRun.on(() -> {
            clear.fire();
            return true;
        });
    }

    private static TextArea editor() {
        return (TextArea) run.robot.lookup(".fw-editor").query();
    }

    private static String text() {
        return WindowRun.on(() -> editor().getText());
    }

    private static Button button(String start) {
        return run.robot
                .lookup((Node node) -> node instanceof Button button
                        && button.getText().startsWith(start)
                        && button.getScene() != null
                        && button.isVisible())
                .queryAs(Button.class);
    }

    private static boolean has(String start) {
        return run.robot
                .lookup((Node node) -> node instanceof Button button
                        && button.getText().startsWith(start)
                        && button.getScene() != null
                        && button.isVisible())
                .tryQuery()
                .isPresent();
    }

    /** All that stands among the answers in letters. */
    private static String said() {
        return WindowRun.on(() -> {
            Set<Node> all = run.robot.lookup(".fw-answers").query().lookupAll("*");
            return all.stream()
                    .map(node -> node instanceof Label label
                            ? label.getText()
                            : node instanceof TextArea area ? area.getText() : "")
                    .filter(text -> !text.isEmpty())
                    .collect(Collectors.joining("\n"));
        });
    }

    private static void ended() {
        WindowRun.until("the script is over", () -> !has("Cancel"));
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Types as a person who does not look at what is offered. */
    private static void write(String text) {
        for (String line : text.split("(?<=\n)", -1)) {
            run.robot.write(line.stripTrailing(), 0);
            if (line.endsWith("\n")) {
                run.robot.push(KeyCode.SHIFT, KeyCode.ENTER);
            }
        }
    }

    private static void enter() {
        run.robot.push(KeyCode.ESCAPE);
        run.robot.push(KeyCode.ENTER);
    }

    private static Plan plan() {
        return WindowRun.on(() -> run.frame.desk().base());
    }

    @Test
    void twoLinesAreRunWhenTheyAreWholeAndGiveATable() {
        write("table(plan.rows('runs').map((r) => ({id: r.id,");
        run.robot.push(KeyCode.ESCAPE);
        run.robot.push(KeyCode.ENTER);
        assertTrue(text().contains("\n"), "an open bracket goes on");
        write("loss: r.loss})), {loss: 'W'}).show()");
        run.picture("script-typed");
        enter();
        ended();
        TableView<?> table = run.robot
                .lookup((Node node) -> node instanceof TableView<?> view
                        && String.valueOf(view.getAccessibleText()).startsWith("Table,"))
                .queryAs(TableView.class);
        assertEquals(plan().rows(Table.RUNS).size(), table.getItems().size());
        assertEquals("", text());
        run.picture("script-table");
    }

    @Test
    void aRunIsCancelledWithinASecondAndTheNextOneWorks() {
        write("while(true){}");
        enter();
        WindowRun.until("it runs", () -> has("Cancel"));
        run.picture("script-running");
        run.robot.clickOn(button("Cancel"));
        ended();
        assertTrue(said().contains("cancelled"), said());
        run.robot.push(KeyCode.SHORTCUT, KeyCode.A);
        write("6 * 7");
        enter();
        WindowRun.until("the next answer", () -> said().contains("42"));
    }

    @Test
    void whatWasRunComesBackByTheArrows() {
        write("1 + 1");
        enter();
        ended();
        write("2 + 2");
        enter();
        ended();
        write("begun");
        run.robot.push(KeyCode.ESCAPE);
        run.robot.push(KeyCode.UP);
        assertEquals("2 + 2", text());
        run.robot.push(KeyCode.UP);
        assertEquals("1 + 1", text());
        run.robot.push(KeyCode.DOWN);
        run.robot.push(KeyCode.DOWN);
        assertEquals("begun", text());
    }

    @Test
    void wordsAndNamesAreOffered() {
        write("plan.te");
        run.robot.push(KeyCode.TAB);
        assertEquals("plan.text", text());
        write("('gate.reserve_sh");
        run.picture("script-offers");
        run.robot.push(KeyCode.DOWN);
        run.robot.push(KeyCode.ENTER);
        assertEquals("plan.text('gate.reserve_share", text());
        write("')");
        enter();
        ended();
        assertTrue(said().contains("%"), said());
    }

    @Test
    void aMistakeIsSaidInPlainWordsAndItsLineIsMarked() {
        write("const a = 1\nplan.get('gate.reserve_shar')\na");
        enter();
        ended();
        assertTrue(said().contains("line 2"), said());
        assertFalse(said().contains("Exception"), said());
        assertTrue(text().startsWith("const a"), "what went wrong stays to be mended");
        assertFalse(run.robot.lookup(".fw-wrong-line").queryAll().isEmpty());
        run.picture("script-mistake");
    }

    @Test
    void aScenarioIsKeptAndChangesAreAppliedEachInOneStep() throws Refusal {
        write("plan.set('trunk.gauge', '20 AWG'); keep('thicker'); apply()");
        enter();
        ended();
        run.picture("script-offered");
        assertEquals(ferry().scenarios().size(), plan().scenarios().size());
        run.robot.clickOn(button("Keep scenario"));
        assertTrue(plan().scenario("thicker").isPresent());
        run.robot.clickOn(button("Apply 1 change"));
        assertEquals("20 AWG", gauge());
        assertFalse(has("Apply 1 change"));
        run.settle();
        WindowRun.on(() -> {
            run.frame.desk().undo();
            return true;
        });
        assertEquals("22 AWG", gauge());
        assertTrue(plan().scenario("thicker").isPresent());
        WindowRun.on(() -> {
            run.frame.desk().undo();
            return true;
        });
        assertEquals(ferry().scenarios(), plan().scenarios());
    }

    private static String gauge() {
        return plan().rows(Table.RUNS).row("trunk").orElseThrow().text("gauge");
    }

    @Test
    void aCellTypedWhileAScriptRunsStaysAndIsSaid() {
        write("const t = Date.now(); while (Date.now() - t < 4000) {} plan.set('trunk.gauge', '20 AWG'); apply()");
        enter();
        WindowRun.until("it runs", () -> has("Cancel"));
        WindowRun.on(() -> {
            run.frame.showTable(Table.RUNS, "trunk", "length");
            return true;
        });
        run.robot.type(KeyCode.F2);
        run.robot.push(KeyCode.SHORTCUT, KeyCode.A);
        run.robot.write("61 m");
        run.robot.type(KeyCode.ENTER);
        run.settle();
        assertTrue(WindowRun.on(() -> has("Cancel")), "still running");
        assertEquals("61 m", plan().rows(Table.RUNS).row("trunk").orElseThrow().text("length"));
        ended();
        assertTrue(said().contains("changed since"), said());
        run.robot.clickOn(button("Apply 1 change"));
        assertEquals("20 AWG", gauge());
        assertEquals("61 m", plan().rows(Table.RUNS).row("trunk").orElseThrow().text("length"));
    }

    @Test
    void aSampleIsOpenedChangedSavedAndRun() throws IOException {
        run.robot.clickOn("Lines");
        run.robot.clickOn("Samples");
        run.robot.clickOn((Node node) -> node instanceof Label label
                && label.getText().startsWith("How warm may the quay")
                && label.getScene().getWindow().isShowing());
        WindowRun.until("laid out", () -> text().contains("reserve_target"));
        run.robot.push(KeyCode.F9);
        ended();
        run.settle();
        run.picture("script-sample");
        Path file = folder.resolve("quay.js");
        run.answers.files.add(file);
        WindowRun.on(() -> {
            editor().appendText("\n// mine\n");
            editor().requestFocus();
            return true;
        });
        run.robot.push(KeyCode.SHORTCUT, KeyCode.S);
        WindowRun.until("saved", () -> Files.exists(file) && text().endsWith("// mine\n"));
        assertTrue(Files.readString(file).endsWith("// mine\n"));

        run.robot.clickOn("quay.js");
        run.robot.clickOn("Lines, one after another");
        assertEquals("", text());
    }
}
