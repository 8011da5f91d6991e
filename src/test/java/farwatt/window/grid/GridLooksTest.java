package farwatt.window.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.file.PlanReader;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.report.Level;
import farwatt.report.Refusal;
import farwatt.window.Contrast;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** How the grid looks, in every theme and at every length. */
@ExtendWith(ApplicationExtension.class)
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class GridLooksTest {
    private static final Path DEMO =
            Path.of(System.getProperty("farwatt.root", ""), "scenarios", "ferry-landing.farwatt.json");

    private final List<Stage> stages = new ArrayList<>();

    @Start
    void start(Stage stage) {
        stages.add(stage);
    }

    private static PlainSheet demo() {
        try {
            Plan plan = PlanReader.read(DEMO).plan();
            PlainSheet sheet = new PlainSheet(plan, Decimal.POINT);
            sheet.base = Optional.of(plan);
            sheet.document.apply(new Change.SetCell(Table.RUNS, "trunk", "gauge", Optional.of(Cell.text("24 AWG"))));
            sheet.document.apply(new Change.SetCell(Table.RUNS, "run cam 2", "length", Optional.of(Cell.text("26 W"))));
            sheet.document.apply(
                    new Change.SetCell(Table.RUNS, "run cam 3", "cord_length", Optional.of(Cell.text("2 m + 1 m"))));
            sheet.document.apply(new Change.AddRow(
                    Table.COLUMNS,
                    0,
                    Row.of("loss_part")
                            .with("table", "runs")
                            .with("is", "loss / sent")
                            .with("unit", "%")));
            sheet.verdicts = Map.of("trunk", Level.FAIL, "run cam 4", Level.WARN);
            sheet.refresh();
            return sheet;
        } catch (Refusal refused) {
            throw new IllegalStateException(refused);
        }
    }

    private GridView show(PlainSheet sheet, String theme, Table table, String id, String name) {
        List<GridView> made = new ArrayList<>();
        WaitForAsyncUtils.waitForAsyncFx(10_000, () -> {
            GridView grid = new GridView(sheet, new Landing.Pocket());
            Scene scene = new Scene(grid, 1280, 640);
            scene.getStylesheets()
                    .add(Objects.requireNonNull(GridLooksTest.class.getResource(theme + ".css"))
                            .toExternalForm());
            stages.get(0).setScene(scene);
            stages.get(0).show();
            grid.point(table, id, name);
            grid.toCells();
            made.add(grid);
        });
        WaitForAsyncUtils.waitForFxEvents();
        return made.get(0);
    }

    private static PlainSheet onWindowThread() {
        return WaitForAsyncUtils.waitForAsyncFx(20_000, GridLooksTest::demo);
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark", "contrast"})
    void textsAreReadableInEveryTheme(String theme) {
        GridView grid = show(onWindowThread(), theme, Table.RUNS, "trunk", "length");
        Pictures.take(grid, theme + "-runs");
        CellsView cells = (CellsView) grid.lookup(".fw-cells");
        WaitForAsyncUtils.waitForAsyncFx(10_000, () -> grid.point(Table.RUNS, "run cam 1", "loss_part"));
        Pictures.take(grid, theme + "-solved");
        for (Node node : cells.lookupAll(".fw-cell")) {
            CellNode cell = (CellNode) node;
            if (cell.isVisible() && !cell.getText().isEmpty()) {
                var fills = cell.getBackground().getFills();
                Color paper = (Color) fills.get(fills.size() - 1).getFill();
                double contrast = Contrast.of((Color) cell.getTextFill(), paper);
                assertTrue(contrast >= 4.5, cell.getText() + " " + contrast);
            }
        }
    }

    @Test
    void columnsChosenRowsChosenAndPanelsLookRight(FxRobot robot) {
        GridView grid = show(onWindowThread(), "light", Table.DEVICES, "cam 1", "draw");
        robot.push(KeyCode.SHIFT, KeyCode.RIGHT);
        robot.push(KeyCode.SHIFT, KeyCode.DOWN);
        robot.push(KeyCode.CONTROL, KeyCode.F);
        robot.write("quay");
        WaitForAsyncUtils.waitForFxEvents();
        Pictures.take(grid, "chosen-and-find");
        robot.type(KeyCode.ESCAPE);
        robot.type(KeyCode.F9);
        WaitForAsyncUtils.waitForFxEvents();
        Pictures.take(grid, "columns");
    }

    @Test
    void everythingGrowsWithTheType() {
        GridView grid = show(onWindowThread(), "light", Table.RUNS, "run cam 2", "length");
        CellsView cells = (CellsView) grid.lookup(".fw-cells");
        double before = cells.bounds(2, 0).getHeight();
        double wide = cells.bounds(2, 0).getWidth();
        WaitForAsyncUtils.waitForAsyncFx(10_000, () -> grid.setStyle("-fx-font-size: 200%"));
        WaitForAsyncUtils.waitForFxEvents();
        WaitForAsyncUtils.waitForAsyncFx(10_000, () -> grid.point(Table.RUNS, "run cam 2", "length"));
        Pictures.take(grid, "large");
        assertTrue(cells.bounds(2, 0).getHeight() > 1.8 * before);
        assertTrue(cells.bounds(2, 0).getWidth() > 1.8 * wide);
    }

    @Test
    void aTableOfTwentyThousandRowsHasAsManyNodesAsAreSeen() {
        LongSheet sheet = new LongSheet(20_000);
        List<GridView> made = new ArrayList<>();
        WaitForAsyncUtils.waitForAsyncFx(20_000, () -> {
            GridView grid = new GridView(sheet, new Landing.Pocket());
            Scene scene = new Scene(grid, 1280, 900);
            scene.getStylesheets()
                    .add(Objects.requireNonNull(GridLooksTest.class.getResource("light.css"))
                            .toExternalForm());
            stages.get(0).setScene(scene);
            stages.get(0).show();
            made.add(grid);
        });
        WaitForAsyncUtils.waitForFxEvents();
        CellsView cells = (CellsView) made.get(0).lookup(".fw-cells");
        long[] spent = new long[200];
        for (int i = 0; i < spent.length; i++) {
            int turn = i;
            spent[i] = WaitForAsyncUtils.waitForAsyncFx(10_000, () -> {
                long start = System.nanoTime();
                cells.scrollBy(turn % 10 == 0 ? 300 : 0, turn % 3 == 0 ? 78 : 900);
                cells.applyCss();
                cells.layout();
                return System.nanoTime() - start;
            });
        }
        long[] steps = IntStream.range(100, 200)
                .filter(i -> i % 3 == 0 && i % 10 != 0)
                .mapToLong(i -> spent[i])
                .sorted()
                .toArray();
        Arrays.sort(spent);
        String said = "a page: median %.1f ms, worst %.1f ms; three rows: median %.1f ms"
                .formatted(spent[100] / 1e6, spent[199] / 1e6, steps[steps.length / 2] / 1e6);
        System.getLogger("grid").log(System.Logger.Level.INFO, said);
        int nodes = cells.lookupAll(".fw-cell").size();
        assertTrue(nodes < 1500, nodes + " cells");
        WaitForAsyncUtils.waitForAsyncFx(10_000, () -> made.get(0).point(Table.DEVICES, "gear 19999", "draw"));
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals("gear 19999", cells.node(19_999, 0).orElseThrow().getText());
        Pictures.take(made.get(0), "long");
    }
}
