package farwatt.window.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Table;
import farwatt.report.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Point2D;
import javafx.geometry.Rectangle2D;
import javafx.geometry.VerticalDirection;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The grid with real keys and clicks, on a screen that only exists in memory. */
@ExtendWith(ApplicationExtension.class)
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class GridViewTest {
    private PlainSheet sheet = Landing.sheet();
    private final List<GridView> views = new ArrayList<>();
    private final Landing.Pocket pocket = new Landing.Pocket();

    @Start
    void start(Stage stage) {
        sheet = Landing.sheet();
        sheet.verdicts = Map.of("cam 2", Level.FAIL, "trunk", Level.WARN);
        GridView grid = new GridView(sheet, pocket);
        views.add(grid);
        Scene scene = new Scene(grid, 1280, 640);
        scene.getStylesheets()
                .add(Objects.requireNonNull(GridViewTest.class.getResource("light.css"))
                        .toExternalForm());
        stage.setScene(scene);
        stage.show();
        grid.point(Table.DEVICES, "cam 1", "draw");
        grid.toCells();
    }

    private GridView grid() {
        return views.get(0);
    }

    private CellsView cells(FxRobot robot) {
        return robot.lookup(".fw-cells").queryAs(CellsView.class);
    }

    private TextField field(FxRobot robot) {
        return robot.lookup(".fw-field").queryAs(TextField.class);
    }

    private Point2D at(FxRobot robot, int row, int column) {
        CellsView cells = cells(robot);
        Rectangle2D bounds = cells.bounds(row, column);
        return cells.localToScreen(bounds.getMinX() + bounds.getWidth() / 2, bounds.getMinY() + 8);
    }

    private int column(Table table, String name) {
        List<Column> all = sheet.now().columns(table);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).key().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException(name);
    }

    private String cell(String id, String name) {
        return sheet.plan().rows(Table.DEVICES).row(id).orElseThrow().text(name);
    }

    private static void settle() {
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void typingReplacesTheTextAndEnterGoesDown(FxRobot robot) {
        robot.write("9");
        assertTrue(field(robot).isVisible());
        robot.write(".5");
        robot.type(KeyCode.ENTER);
        assertEquals("9.5 W", cell("cam 1", "draw"));
        assertEquals("cam 2", sheet.pointed.get(0));
        assertTrue(cells(robot).isFocused());
    }

    @Test
    void theErrorStandsUnderTheCellWhileTypingAndInItAfterwards(FxRobot robot) {
        robot.write("9 m");
        settle();
        Node notice = field(robot).getParent().lookup(".fw-notice");
        assertTrue(notice.isVisible());
        assertTrue(notice.localToScene(0, 0).getY()
                > field(robot).localToScene(0, 0).getY());
        Pictures.take(grid(), "error");
        robot.type(KeyCode.TAB);
        assertEquals("9 m", cell("cam 1", "draw"));
        CellNode shown = cells(robot).node(0, column(Table.DEVICES, "draw")).orElseThrow();
        assertEquals("9 m", shown.getText());
        assertTrue(((String) shown.queryAccessibleAttribute(AccessibleAttribute.TEXT)).contains("9 m"));
    }

    @Test
    void escapeLeavesTheCellAsItWas(FxRobot robot) {
        robot.type(KeyCode.F2);
        assertEquals("6 W", field(robot).getText());
        robot.write("0");
        robot.type(KeyCode.ESCAPE);
        assertFalse(field(robot).isVisible() && field(robot).getParent().isVisible());
        assertEquals("6 W", cell("cam 1", "draw"));
    }

    @Test
    void aClickElsewhereAndTheWheelPutTheTextIn(FxRobot robot) {
        robot.write("7");
        robot.clickOn(at(robot, 2, column(Table.DEVICES, "zone")));
        assertEquals("7 W", cell("cam 1", "draw"));
        assertEquals("cam 3", sheet.pointed.get(0));
        robot.write("shed");
        robot.scroll(1, VerticalDirection.DOWN);
        settle();
        assertEquals("shed", cell("cam 3", "zone"));
    }

    @Test
    void anOfferIsChosenByArrowAndEnter(FxRobot robot) {
        WaitForAsyncUtils.waitForAsyncFx(5_000, () -> grid().point(Table.DEVICES, "cam 1", "zone"));
        settle();
        robot.write("q");
        settle();
        assertEquals(1, field(robot).getCaretPosition());
        Pictures.take(grid(), "offers");
        robot.type(KeyCode.DOWN, KeyCode.ENTER);
        assertEquals("quay", field(robot).getText());
        robot.type(KeyCode.ENTER);
        assertEquals("quay", cell("cam 1", "zone"));
    }

    @Test
    void shiftAndArrowsChooseAndTheBlockIsCopiedAndPasted(FxRobot robot) {
        robot.press(KeyCode.SHIFT).type(KeyCode.DOWN).release(KeyCode.SHIFT);
        robot.push(KeyCode.CONTROL, KeyCode.C);
        assertEquals("6 W\n5 W\n", pocket.text().orElse(""));
        robot.type(KeyCode.RIGHT, KeyCode.UP, KeyCode.UP);
        robot.push(KeyCode.CONTROL, KeyCode.V);
        assertEquals("6 W", cell("cam 1", "draw_typical"));
        assertEquals("5 W", cell("cam 2", "draw_typical"));
        assertEquals(1, sheet.steps.size());
    }

    @Test
    void draggingChoosesAndARangeIsRepeatedDown(FxRobot robot) {
        int draw = column(Table.DEVICES, "draw");
        robot.moveTo(at(robot, 0, draw)).press(MouseButton.PRIMARY);
        robot.moveTo(at(robot, 2, draw)).release(MouseButton.PRIMARY);
        robot.push(KeyCode.ALT, KeyCode.DOWN);
        assertEquals("6 W", cell("cam 3", "draw"));
    }

    @Test
    void aTableIsChosenAtTheSideAndByKeys(FxRobot robot) {
        robot.push(KeyCode.CONTROL, KeyCode.PAGE_UP);
        settle();
        assertEquals("trunk", sheet.pointed.get(0));
        robot.type(KeyCode.F6, KeyCode.UP);
        settle();
        assertEquals("gate", sheet.pointed.get(0));
        robot.type(KeyCode.F6);
        assertTrue(cells(robot).isFocused());
    }

    @Test
    void f4TellsHowAValueComesAboutAlsoWhileTyping(FxRobot robot) {
        robot.write("8");
        robot.type(KeyCode.F4);
        assertEquals(List.of("devices/cam 1/draw"), sheet.explained);
        assertEquals("8 W", cell("cam 1", "draw"));
    }

    @Test
    void anOwnColumnIsMadeByKeyboardAlone(FxRobot robot) {
        robot.push(KeyCode.SHIFT, KeyCode.F9);
        settle();
        robot.write("double");
        robot.type(KeyCode.TAB, KeyCode.TAB);
        robot.write("W");
        robot.type(KeyCode.TAB);
        robot.write("draw * no");
        settle();
        Pictures.take(grid(), "own-column");
        assertTrue(robot.lookup(".fw-panel .fw-notice").query().isVisible());
        robot.type(KeyCode.BACK_SPACE, KeyCode.BACK_SPACE);
        robot.write("2");
        robot.type(KeyCode.ENTER);
        settle();
        assertEquals("draw * 2", sheet.plan().rows(Table.COLUMNS).at(0).text("is"));
        assertTrue(cells(robot).isFocused());
    }

    @Test
    void rowsAreSortedByTheHeadingAndFilteredByText(FxRobot robot) {
        robot.type(KeyCode.F5);
        settle();
        CellNode first = cells(robot).node(0, 0).orElseThrow();
        assertEquals("cam 3", first.getText());
        robot.push(KeyCode.SHIFT, KeyCode.F5);
        robot.write("cam 2");
        robot.type(KeyCode.ENTER);
        settle();
        assertEquals("cam 2", cells(robot).node(0, 0).orElseThrow().getText());
        assertTrue(cells(robot).isFocused());
    }

    @Test
    void theNodeOfTheCursorSpeaksForTheWholeCell(FxRobot robot) {
        Object item = cells(robot).queryAccessibleAttribute(AccessibleAttribute.FOCUS_ITEM);
        assertEquals("cam 1, draw 6 W", ((CellNode) item).queryAccessibleAttribute(AccessibleAttribute.TEXT));
    }
}
