package farwatt.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.plan.Step;
import farwatt.plan.Table;
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
        WindowRun.until("found", () -> !model().state().isBusy()
                && model().result().filter(found -> found.kind() == kind).isPresent()
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
        return run.robot
                .lookup((Node node) -> node.getStyleClass().contains("fw-drawing")
                        && node.getScene() != null
                        && String.valueOf(node.getAccessibleText()).contains(" over "))
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
        WaitForAsyncUtils.sleep(4, java.util.concurrent.TimeUnit.SECONDS); run.picture("debug");System.out.println(WindowRun.on(() -> model().state()+" "+model().trouble()+" "+model().note()+" "+model().result()+" "+model().drawn()));
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
}
