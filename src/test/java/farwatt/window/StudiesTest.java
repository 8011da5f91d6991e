package farwatt.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.report.Refusal;
import farwatt.window.studies.StudiesModel;
import farwatt.window.studies.StudyField;
import farwatt.window.studies.StudyKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Studies at the bench, driven by keys and mouse as a person does. */
class StudiesTest {
    private static final Path FERRY = Path.of("scenarios/ferry-landing.farwatt.json");

    @TempDir
    Path folder;

    private WindowRun run;

    @BeforeEach
    void open() throws Refusal {
        run = new WindowRun(folder, PlanReader.read(FERRY).plan());
        run.robot.type(KeyCode.F10);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @AfterEach
    void close() {
        run.close();
    }

    private StudiesModel model() {
        return run.frame.studies().model();
    }

    private Plan plan() {
        return WindowRun.on(() -> run.frame.desk().base());
    }

    private void found(StudyKind kind) {
        WindowRun.until(
                "found",
                () -> !model().state().isBusy()
                        && model().result()
                                .filter(found -> found.kind() == kind)
                                .isPresent()
                        && (kind == StudyKind.ROOM || model().drawn().isPresent()));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private TextField field(String says) {
        return run.robot
                .lookup((Node node) -> node instanceof TextField field
                        && String.valueOf(field.getAccessibleText()).startsWith(says))
                .queryAs(TextField.class);
    }

    private void write(String into, String text) {
        run.robot.clickOn(field(into));
        run.robot.push(KeyCode.SHORTCUT, KeyCode.A);
        run.robot.write(text);
        run.robot.type(KeyCode.ESCAPE);
    }

    private Node picture() {
        return picture(" over ");
    }

    private Node picture(String says) {
        return run.robot
                .lookup((Node node) -> node.getStyleClass().contains("fw-drawing")
                        && node.getScene() != null
                        && String.valueOf(node.getAccessibleText()).contains(says))
                .query();
    }

    private TableView<?> table() {
        return run.robot
                .lookup((Node node) -> node instanceof TableView<?> view
                        && "What the study found, row by row".equals(view.getAccessibleText()))
                .queryAs(TableView.class);
    }

    private void look(String word) {
        run.robot.clickOn("Look");
        run.robot.clickOn(word);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void oneKeyAndOneMoreGiveAmbientAgainstGauge() {
        run.robot.type(KeyCode.ENTER);
        found(StudyKind.SWEEP);
        assertEquals(17 * 4, table().getItems().size());
        run.picture("studies-light");
        look("Dark");
        run.picture("studies-dark");
        look("High contrast");
        run.picture("studies-contrast");
        look("Size 200 %");
        run.picture("studies-contrast-200");
        assertFalse(WindowRun.on(() -> model().isStale()));
    }

    @Test
    void aClickOnAPointMakesItAScenarioAndUndoTakesItAway() {
        run.robot.type(KeyCode.ENTER);
        found(StudyKind.SWEEP);
        int before = plan().scenarios().size();
        run.robot.clickOn(picture());
        run.settle();
        assertEquals(before + 1, plan().scenarios().size());
        var made = plan().scenarios().get(before);
        int row = table().getSelectionModel().getSelectedIndex();
        assertEquals(WindowRun.on(() -> model().result().orElseThrow().table().steps(row)), made.steps());
        assertEquals(
                List.of("quay.ambient", "trunk.gauge"),
                made.steps().stream().map(step -> ((Step.Set) step).path()).toList());
        assertEquals(made.id(), WindowRun.on(() -> run.frame.desk().scenario()));
        double share = WindowRun.on(() -> run.frame
                .desk()
                .still()
                .orElseThrow()
                .value(Table.PLAN, 0, "least_reserve_share")
                .orElseThrow()
                .inside());
        double swept = WindowRun.on(
                () -> model().result().orElseThrow().table().number(row, 2).orElseThrow());
        assertEquals(swept, share * 100, 1e-9);
        run.picture("studies-tried");
        run.robot.clickOn(picture());
        run.settle();
        assertEquals(before + 1, plan().scenarios().size(), "the same point again is the same scenario");
        run.robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        run.settle();
        assertEquals(before, plan().scenarios().size());
    }

    private void study(StudyKind kind) {
        WindowRun.on(() -> {
            model().choose(kind);
            model().run();
            return true;
        });
        found(kind);
    }

    private double figure(String expression) {
        return WindowRun.on(() -> run.frame
                .desk()
                .still()
                .orElseThrow()
                .value(Table.SWITCHES, 0, expression)
                .orElseThrow()
                .inside());
    }

    @Test
    void copiesThatWereAddedAreAScenarioWithTheSameFigures() {
        write(StudyKind.GROW, StudyField.UNTIL, "gate.reserve_share < reserve_target");
        study(StudyKind.GROW);
        int before = plan().scenarios().size();
        WindowRun.on(() -> {
            table().getSelectionModel().select(1);
            table().requestFocus();
            return true;
        });
        run.robot.type(KeyCode.ENTER);
        run.settle();
        var made = plan().scenarios().get(before);
        assertEquals("1 more like cam 1", made.id());
        assertEquals(2, made.steps().size(), "the camera and its run");
        double told = WindowRun.on(
                () -> model().result().orElseThrow().table().number(1, 3).orElseThrow());
        assertEquals(told, figure("reserve_share") * 100, 1e-9);
        run.picture("studies-grown");
    }

    private void write(StudyKind kind, StudyField into, String text) {
        WindowRun.on(() -> {
            model().choose(kind);
            model().type(into, 0, text);
            return true;
        });
    }

    @Test
    void aStepOfAnInputIsAScenarioByAClickOnItsBar() {
        write(StudyKind.SENSITIVITY, StudyField.READ, "gate.reserve_share");
        study(StudyKind.SENSITIVITY);
        int before = plan().scenarios().size();
        run.robot.clickOn(picture("What moves"));
        run.settle();
        assertEquals(before + 1, plan().scenarios().size());
        int row = table().getSelectionModel().getSelectedIndex();
        var found = WindowRun.on(() -> model().result().orElseThrow().table());
        assertEquals(found.steps(row), plan().scenarios().get(before).steps());
        assertEquals(
                found.text(row, 3),
                farwatt.quantity.Show.text(figure("reserve_share"), new farwatt.quantity.Units("").need("%"), 6));
    }

    @Test
    void aDecimalCommaIsReadWhereItIsThePersonsSign() throws Refusal {
        run.close();
        run = new WindowRun(folder, PlanReader.read(FERRY).plan(), Decimal.COMMA);
        run.robot.type(KeyCode.F10);
        WaitForAsyncUtils.waitForFxEvents();
        write("Vary,", "quay.ambient = 20,5 degC, 21,25 degC");
        write("Vary 2", "trunk.length = 90 m .. 91 m by 0,5 m");
        run.robot.type(KeyCode.ENTER);
        found(StudyKind.SWEEP);
        assertEquals(2 * 3, table().getItems().size());
        var found = WindowRun.on(() -> model().result().orElseThrow().table());
        assertEquals(21.25, found.number(5, 0).orElseThrow());
        assertEquals(91, found.number(5, 1).orElseThrow());
        assertEquals("21,25 degC", table().getColumns().get(0).getCellData(5));
        run.picture("studies-comma");
    }

    @Test
    void keysAloneGoFromAQuestionToAScenario() {
        run.robot.push(KeyCode.SHORTCUT, KeyCode.ENTER);
        found(StudyKind.SWEEP);
        int before = plan().scenarios().size();
        WindowRun.on(() -> {
            table().requestFocus();
            return true;
        });
        run.robot.type(KeyCode.DOWN, KeyCode.DOWN, KeyCode.DOWN, KeyCode.ENTER);
        run.settle();
        assertEquals(before + 1, plan().scenarios().size());
        Node picture = picture();
        WindowRun.on(() -> {
            picture.requestFocus();
            return true;
        });
        run.robot.type(KeyCode.RIGHT, KeyCode.DOWN);
        WaitForAsyncUtils.waitForFxEvents();
        assertTrue(picture.getAccessibleText().contains("degC, "), picture::getAccessibleText);
        run.robot.type(KeyCode.ENTER);
        run.settle();
        assertEquals(before + 2, plan().scenarios().size());
    }

    @Test
    void whatCannotBeUnderstoodIsSaidUnderItsFieldAndNothingRuns() {
        write("Vary 2", "trunk.gage = 22 AWG");
        run.robot.type(KeyCode.ENTER);
        WindowRun.until("refused", () -> model().trouble().isPresent());
        WaitForAsyncUtils.waitForFxEvents();
        StudiesModel.Trouble trouble = model().trouble().orElseThrow();
        assertEquals(StudyField.VARY, trouble.field().orElseThrow());
        assertEquals(1, trouble.line());
        assertTrue(field("Vary 2").isFocused());
        assertTrue(run.robot
                .lookup((Node node) -> node instanceof Label label
                        && label.isVisible()
                        && label.getText().startsWith("trunk.gage names no cell"))
                .tryQuery()
                .isPresent());
        run.picture("studies-refused");
        write("Vary 2", "trunk.gauge = 22 AWG, 24 AWG");
        write("Read,", "gate.reserve_sare");
        run.robot.type(KeyCode.ENTER);
        WindowRun.until(
                "refused",
                () -> model().trouble()
                        .filter(wrong -> wrong.field().orElseThrow() == StudyField.READ)
                        .isPresent());
        run.picture("studies-refused-read");
        write("Read,", "gate.reserve_share");
        run.robot.type(KeyCode.ENTER);
        found(StudyKind.SWEEP);
    }

    @Test
    void namesAreOfferedWhileTheyAreTyped() {
        run.robot.clickOn(field("Vary 3"));
        run.robot.write("trun");
        WaitForAsyncUtils.waitForFxEvents();
        run.robot.type(KeyCode.DOWN, KeyCode.ENTER);
        run.robot.write(".len");
        WaitForAsyncUtils.waitForFxEvents();
        run.picture("studies-offers");
        run.robot.type(KeyCode.DOWN, KeyCode.ENTER);
        run.robot.write(" = 60 m, 120 m");
        assertEquals("trunk.length = 60 m, 120 m", field("Vary 3").getText());
        run.robot.type(KeyCode.ENTER);
        found(StudyKind.SWEEP);
        run.picture("studies-held");
        assertEquals(17 * 4 * 2, table().getItems().size());
    }

    @Test
    void aLongStudyIsCancelledAtOnceAndWhatWasFoundBeforeStays() {
        run.robot.type(KeyCode.ENTER);
        found(StudyKind.SWEEP);
        var before = model().result();
        write("Vary,", "quay.ambient = -20 degC .. 60 degC by 0.05 K");
        write("Vary 2", "trunk.length = 1 m .. 100 m by 0.1 m");
        run.robot.type(KeyCode.ENTER);
        WindowRun.until("under way", () -> model().state().share() > 0);
        run.picture("studies-running");
        assertTrue(WindowRun.on(() -> model().state().step()).contains("of 1586591"));
        Button cancel = run.robot
                .lookup((Node node) -> node instanceof Button button
                        && button.isVisible()
                        && button.getText().equals("Cancel")
                        && button.getParent().getStyleClass().contains("fw-study-foot"))
                .queryAs(Button.class);
        run.robot.clickOn(cancel);
        WindowRun.until("stopped", () -> !model().state().isBusy());
        assertEquals(before, model().result());
        assertTrue(model().note().startsWith("Stopped"), model().note());
    }

    @Test
    void aCellTypedWhileAStudyRunsTakesHoldAtOnceAndTheStudyStaysThatOfItsPlan() {
        write("Vary,", "quay.ambient = -20 degC .. 60 degC by 0.1 K");
        write("Vary 2", "trunk.length = 1 m .. 100 m by 0.5 m");
        Plan asRun = plan();
        run.robot.type(KeyCode.ENTER);
        WindowRun.until("under way", () -> model().state().isBusy());
        WindowRun.on(() -> {
            run.frame.showTable(Table.RUNS, "trunk", "gauge");
            return true;
        });
        run.robot.write("26");
        run.robot.type(KeyCode.ENTER);
        run.settle();
        assertEquals(
                "26 AWG", plan().rows(Table.RUNS).row("trunk").orElseThrow().text("gauge"));
        assertTrue(WindowRun.on(() -> run.frame.desk().review().orElseThrow().fails()) > 0);
        found(StudyKind.SWEEP);
        assertEquals(asRun, model().result().orElseThrow().basis().plan());
        assertTrue(WindowRun.on(() -> model().isStale()));
        run.picture("studies-stale");
        run.robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        run.settle();
        assertFalse(WindowRun.on(() -> model().isStale()));
    }

    @Test
    void everyQuestionIsAnsweredWithItsExample() {
        for (StudyKind kind : StudyKind.values()) {
            WindowRun.on(() -> {
                model().choose(kind);
                model().run();
                return true;
            });
            found(kind);
            assertEquals("", WindowRun.on(() -> model().note()));
            assertTrue(WindowRun.on(() -> model().trouble().isEmpty()), kind::name);
            run.picture("studies-" + kind.name().toLowerCase(java.util.Locale.ROOT));
        }
    }

    @Test
    void tableAndPictureAreSavedAndCopied() throws IOException {
        run.robot.type(KeyCode.ENTER);
        found(StudyKind.SWEEP);
        Path csv = folder.resolve("points.csv");
        Path svg = folder.resolve("points.svg");
        run.answers.files.add(csv);
        run.robot.clickOn("Save table…");
        WindowRun.until("written", () -> run.frame.said().contains("points.csv"));
        List<String> lines = Files.readAllLines(csv);
        assertEquals(1 + 17 * 4, lines.size());
        assertTrue(lines.get(0).endsWith("plan.least_reserve_share, %")
                || lines.get(0).contains("least_reserve_share"));
        assertTrue(lines.get(1).startsWith("-20,22,28.7"), lines.get(1));
        run.answers.files.add(svg);
        run.robot.clickOn("Save picture…");
        WindowRun.until("written", () -> run.frame.said().contains("points.svg"));
        assertTrue(Files.readString(svg).contains("the plan as it is"));
        run.robot.clickOn("Copy table");
        WindowRun.until("copied", () -> run.frame.said().contains("the table"));
        String copied = WindowRun.on(() -> Clipboard.getSystemClipboard().getString());
        assertTrue(copied.startsWith("quay.ambient\ttrunk.gauge\tplan.least_reserve_share\n-20 degC\t22 AWG\t28.7"));
        run.robot.clickOn("Copy picture");
        WindowRun.until("copied", () -> run.frame.said().contains("the picture"));
        assertTrue(WindowRun.on(() -> Clipboard.getSystemClipboard().hasImage()));
    }
}
