package farwatt.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.PlanWording;
import farwatt.file.PlanReader;
import farwatt.file.PlanWriter;
import farwatt.plan.Plan;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.TreeView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** The whole window, driven by keys and mouse as a person does. */
class FrameTest {
    private static final Path FERRY = Path.of("scenarios/ferry-landing.farwatt.json");

    @TempDir
    Path folder;

    private WindowRun run;

    @BeforeEach
    void open() throws Refusal {
        run = new WindowRun(folder, PlanReader.read(FERRY).plan());
    }

    @AfterEach
    void close() {
        run.close();
    }

    private void go(Table table, String id, String name) {
        WindowRun.on(() -> {
            run.frame.showTable(table, id, name);
            return true;
        });
    }

    private void type(String text) {
        run.robot.type(KeyCode.F2);
        run.robot.push(KeyCode.SHORTCUT, KeyCode.A);
        run.robot.write(text);
    }

    private Plan plan() {
        return WindowRun.on(() -> run.frame.desk().base());
    }

    private String cell(Table table, String id, String name) {
        return plan().rows(table).row(id).orElseThrow().text(name);
    }

    private String verdict() {
        return WindowRun.on(
                () -> run.frame.desk().review().orElseThrow().verdict().text());
    }

    @Test
    void aTypedGaugeChangesTheVerdictAndUndoBringsItBack() {
        String before = verdict();
        byte[] bytes = PlanWriter.bytes(plan(), PlanWording.canonicalFor(plan()));
        go(Table.RUNS, "trunk", "gauge");
        type("26");
        run.robot.type(KeyCode.ENTER);
        run.settle();
        assertEquals("26 AWG", cell(Table.RUNS, "trunk", "gauge"));
        assertTrue(verdict().startsWith("Fails"), verdict());
        assertFalse(WindowRun.on(() -> run.frame.desk().document().isSaved()));
        run.picture("failing");
        run.robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        run.settle();
        assertEquals(before, verdict());
        assertTrue(WindowRun.on(() -> run.frame.desk().document().isSaved()));
        assertEquals(
                new String(bytes, java.nio.charset.StandardCharsets.UTF_8),
                PlanWriter.text(plan(), PlanWording.canonicalFor(plan())));
    }

    @Test
    void whatCannotBeReadStaysAsAVisibleError() {
        go(Table.RUNS, "trunk", "length");
        type("long way");
        run.robot.type(KeyCode.TAB);
        run.settle();
        assertEquals("long way", cell(Table.RUNS, "trunk", "length"));
        assertTrue(WindowRun.on(() -> run.frame.desk().review().orElseThrow().fails()) > 0);
        go(Table.RUNS, "trunk", "length");
        run.picture("unreadable");
    }

    @Test
    void escapeLeavesTheCellAsItWas() {
        String before = cell(Table.RUNS, "trunk", "length");
        go(Table.RUNS, "trunk", "length");
        type("40 m");
        run.robot.type(KeyCode.ESCAPE);
        run.settle();
        assertEquals(before, cell(Table.RUNS, "trunk", "length"));
    }

    @Test
    void anEditInAScenarioIsAStepOfItAndThePlanStays() {
        run.answers.texts.add("shorter trunk");
        run.robot.push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.N);
        run.settle();
        assertEquals("shorter trunk", WindowRun.on(() -> run.frame.desk().scenario()));
        String before = cell(Table.RUNS, "trunk", "length");
        go(Table.RUNS, "trunk", "length");
        type("40 m");
        run.robot.type(KeyCode.ENTER);
        run.settle();
        assertEquals(before, cell(Table.RUNS, "trunk", "length"));
        var scenario = plan().scenario("shorter trunk").orElseThrow();
        assertEquals("trunk.length", ((Step.Set) scenario.steps().get(0)).path());
        go(Table.RUNS, "trunk", "length");
        run.picture("scenario");
        ToggleButton base = run.robot.lookup("plan as it is").queryAs(ToggleButton.class);
        run.robot.clickOn(base);
        run.settle();
        assertEquals("", WindowRun.on(() -> run.frame.desk().scenario()));
    }

    @Test
    void oneKeyTellsHowAFigureCameAbout() {
        go(Table.SWITCHES, "gate", "available");
        run.robot.type(KeyCode.F4);
        TreeView<?> tree = run.robot
                .lookup((javafx.scene.Node node) -> node instanceof TreeView)
                .queryAs(TreeView.class);
        WindowRun.until("derivation", () -> tree.getRoot() != null);
        run.settle();
        assertTrue(tree.getRoot().getValue().toString().contains("available"), tree.getRoot()::toString);
        run.picture("why");
    }

    @Test
    void editSaveUndoEditIsNeverShownAsSaved() throws IOException, Refusal {
        Path file = folder.resolve("landing.farwatt.json");
        run.answers.files.add(file);
        edit("90 m");
        run.robot.push(KeyCode.SHORTCUT, KeyCode.S);
        WindowRun.until("saved", () -> run.frame.file().path().isPresent());
        run.settle();
        assertTrue(WindowRun.on(() -> run.frame.desk().document().isSaved()));
        assertEquals(
                "90 m",
                PlanReader.read(file)
                        .plan()
                        .rows(Table.RUNS)
                        .row("trunk")
                        .orElseThrow()
                        .text("length"));
        run.robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        run.settle();
        assertFalse(WindowRun.on(() -> run.frame.desk().document().isSaved()));
        edit("91 m");
        assertFalse(WindowRun.on(() -> run.frame.desk().document().isSaved()));
        run.robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        run.settle();
        assertFalse(WindowRun.on(() -> run.frame.desk().document().isSaved()));
    }

    private void edit(String length) {
        edit(Table.RUNS, "trunk", "length", length);
    }

    private void edit(Table table, String id, String name, String text) {
        go(table, id, name);
        type(text);
        run.robot.type(KeyCode.ENTER);
        run.settle();
    }

    @Test
    void aFileThatCannotBeWrittenIsSaidAndStaysWhole() throws IOException {
        Path file = folder.resolve("kept.farwatt.json");
        Files.createDirectory(file);
        run.answers.files.add(file);
        edit("90 m");
        run.robot.push(KeyCode.SHORTCUT, KeyCode.S);
        WindowRun.until("said", () -> !run.frame.said().isEmpty());
        assertTrue(Files.isDirectory(file));
        assertFalse(WindowRun.on(() -> run.frame.desk().document().isSaved()));
        assertTrue(WindowRun.on(() -> run.frame.said()).contains("kept"), run.frame.said());
    }

    @Test
    void whatWasNeverSavedComesBackAfterACrash() throws IOException {
        edit("77 m");
        run.settle();
        WindowRun.on(() -> {
            run.frame.file().flush();
            return true;
        });
        run.settle();
        Plan asOpened = WindowRun.on(() -> run.frame.desk().base());
        run.close();
        // the journal as a crash leaves it, for nobody closed the plan; the lock of a program that is gone is gone too
        Path later = Files.createDirectory(folder.resolve("later"));
        Files.copy(folder.resolve("unnamed.journal"), later.resolve("unnamed.journal"));
        run = new WindowRun(later, ferry());
        WindowRun.until("found again", () -> run.frame.said().contains("never saved"));
        assertEquals("77 m", cell(Table.RUNS, "trunk", "length"));
        assertEquals(asOpened.rows(Table.RUNS), plan().rows(Table.RUNS));
    }

    private static Plan ferry() {
        try {
            return PlanReader.read(FERRY).plan();
        } catch (Refusal e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void threeByThreeComesInWholeAndIsOneUndo() {
        Plan before = plan();
        WindowRun.on(() -> {
            ClipboardContent content = new ClipboardContent();
            content.putString("\"new\nnote\"\tx\ty\nplain\t\"in \"\"quotes\"\"\"\tz\na\tb\tc\n");
            Clipboard.getSystemClipboard().setContent(content);
            return true;
        });
        go(Table.DEVICES, plan().rows(Table.DEVICES).at(0).id(), "ingress");
        run.robot.push(KeyCode.SHORTCUT, KeyCode.V);
        run.settle();
        assertEquals("new\nnote", plan().rows(Table.DEVICES).at(0).text("ingress"));
        assertEquals("c", plan().rows(Table.DEVICES).at(2).text("hottest_rated"));
        run.robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        run.settle();
        assertEquals(before, plan());
    }

    @Test
    void aListIsTakenInFromTheMenuInAFewSteps() {
        run.answers.files.add(Path.of("scenarios/orchard-devices.csv"));
        int devices = plan().rows(Table.DEVICES).size();
        run.robot.clickOn("Plan");
        run.robot.clickOn("Take in a list…");
        WindowRun.until("read", () -> !run.robot.lookup("Take in").queryAll().isEmpty());
        WindowRun.until(
                "understood",
                () -> run.robot
                        .lookup((javafx.scene.Node node) -> node instanceof javafx.scene.control.Label label
                                && label.getText().startsWith("orchard-devices.csv –"))
                        .tryQuery()
                        .isPresent());
        run.picture("list");
        javafx.scene.control.Button leave = run.robot
                .lookup((javafx.scene.Node node) -> node instanceof javafx.scene.control.Button button
                        && button.getText().startsWith("Take in")
                        && button.isVisible()
                        && !button.isDisabled())
                .queryAs(javafx.scene.control.Button.class);
        run.robot.clickOn(leave);
        run.settle();
        assertTrue(plan().rows(Table.DEVICES).size() > devices);
        run.picture("taken");
        run.robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        run.settle();
        assertEquals(devices, plan().rows(Table.DEVICES).size());
    }

    @Test
    void aRemedyIsTriedAsAScenarioThatHolds() {
        edit(Table.RUNS, "trunk", "gauge", "26");
        WindowRun.until(
                "remedies",
                () -> run.frame.desk().review().orElseThrow().findings().stream()
                        .anyMatch(finding -> !finding.remedies().isEmpty()));
        WaitForAsyncUtils.waitForFxEvents();
        run.picture("remedies");
        run.robot.clickOn(run.robot.lookup("Try").queryAs(javafx.scene.control.Button.class));
        run.settle();
        assertFalse(WindowRun.on(() -> run.frame.desk().scenario()).isEmpty());
        assertEquals("26 AWG", cell(Table.RUNS, "trunk", "gauge"));
        run.picture("tried");
    }

    @Test
    void aRemedyIsAppliedAsOneStepToUndo() {
        edit(Table.RUNS, "trunk", "gauge", "26");
        WindowRun.until(
                "remedies",
                () -> run.frame.desk().review().orElseThrow().findings().stream()
                        .anyMatch(finding -> !finding.remedies().isEmpty()));
        WaitForAsyncUtils.waitForFxEvents();
        Plan before = plan();
        long fails = WindowRun.on(() -> run.frame.desk().review().orElseThrow().fails());
        run.robot.clickOn(run.robot.lookup("Apply").queryAs(javafx.scene.control.Button.class));
        run.settle();
        assertNotEquals(before, plan());
        assertEquals("", WindowRun.on(() -> run.frame.desk().scenario()));
        WindowRun.until("judged", () -> run.frame.desk().isJudged());
        assertTrue(WindowRun.on(() -> run.frame.desk().review().orElseThrow().fails()) < fails);
        run.robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        run.settle();
        assertEquals(before, plan(), "one step back");
    }

    @Test
    void scenariosSideBySide() {
        run.robot.clickOn("Plan");
        run.robot.clickOn("Side by side…");
        run.robot.clickOn("Lay side by side");
        javafx.scene.control.TableView<?> table = run.robot
                .lookup((javafx.scene.Node node) -> node instanceof javafx.scene.control.TableView<?> view
                        && "Scenarios side by side".equals(view.getAccessibleText()))
                .queryAs(javafx.scene.control.TableView.class);
        WindowRun.until("compared", () -> !table.getItems().isEmpty());
        assertEquals(1 + 1 + plan().scenarios().size(), table.getColumns().size());
        run.picture("side-by-side");
    }
}
