package farwatt.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.PlanWording;
import farwatt.file.PlanLock;
import farwatt.file.PlanReader;
import farwatt.file.PlanWriter;
import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.geometry.VerticalDirection;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Manners of the window that nobody notices until they are missing, driven by keys and mouse. */
class MannersTest {
    private static final Path FERRY = Path.of("scenarios/ferry-landing.farwatt.json");
    private static final int MANY = 20_000;
    private static final int COLUMNS = 40;

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

    private Plan plan() {
        return WindowRun.on(() -> run.frame.desk().base());
    }

    private String trunk(String name) {
        return plan().rows(Table.RUNS).row("trunk").orElseThrow().text(name);
    }

    private void go(Table table, String id, String name) {
        WindowRun.on(() -> {
            run.frame.showTable(table, id, name);
            return true;
        });
    }

    private void begin(String text) {
        go(Table.RUNS, "trunk", "length");
        run.robot.type(KeyCode.F2);
        run.robot.push(KeyCode.SHORTCUT, KeyCode.A);
        run.robot.write(text);
    }

    /** Every way out of a cell, by name. */
    private Map<String, Runnable> waysOut() {
        return Map.of(
                "Enter", () -> run.robot.type(KeyCode.ENTER),
                "Tab", () -> run.robot.type(KeyCode.TAB),
                "Save",
                        () -> {
                            run.answers.files.add(folder.resolve("saved.farwatt.json"));
                            run.robot.push(KeyCode.SHORTCUT, KeyCode.S);
                        },
                "a corner", () -> run.robot.clickOn("hot"),
                "studies", () -> run.robot.type(KeyCode.F10),
                "the wheel",
                        () -> {
                            run.robot.moveTo(run.robot.lookup(".fw-cells").<Node>query());
                            run.robot.scroll(3, VerticalDirection.DOWN);
                        },
                "another table", () -> run.robot.clickOn("zones"));
    }

    @Test
    void everyWayOutOfACellPutsWhatWasTypedIntoThePlan() {
        int metres = 40;
        for (Map.Entry<String, Runnable> way : waysOut().entrySet()) {
            String text = ++metres + " m";
            begin(text);
            way.getValue().run();
            run.settle();
            assertEquals(text, trunk("length"), way.getKey());
        }
    }

    @Test
    void whatCannotBeReadIsKeptByEveryWayOutAndSaid() {
        int tries = 0;
        for (Map.Entry<String, Runnable> way : waysOut().entrySet()) {
            String text = "far away " + ++tries;
            begin(text);
            way.getValue().run();
            run.settle();
            assertEquals(text, trunk("length"), way.getKey());
            assertTrue(
                    WindowRun.on(() -> run.frame.desk().review().orElseThrow().fails()) > 0, way.getKey());
        }
    }

    @Test
    void aScenarioThatIsChosenGetsNothingOfWhatWasTypedBefore() {
        begin("44 m");
        run.robot.clickOn(run.robot.lookup("winter night").queryAs(ToggleButton.class));
        run.settle();
        assertEquals("44 m", trunk("length"));
        assertEquals("winter night", WindowRun.on(() -> run.frame.desk().scenario()));
    }

    @Test
    void tenPastedRowsAreOneStepAndUndoneToTheLastByte() {
        String before = PlanWriter.text(plan(), PlanWording.canonicalFor(plan()));
        int devices = plan().rows(Table.DEVICES).size();
        String last = plan().rows(Table.DEVICES).at(devices - 1).id();
        String block = IntStream.rangeClosed(1, 11)
                .mapToObj(i -> i == 1 ? last + "\t\n" : "lamp " + i + "\t\n")
                .collect(Collectors.joining());
        WindowRun.on(() -> {
            ClipboardContent content = new ClipboardContent();
            content.putString(block.replace("\t", ""));
            Clipboard.getSystemClipboard().setContent(content);
            return true;
        });
        go(Table.DEVICES, last, "id");
        run.robot.push(KeyCode.SHORTCUT, KeyCode.V);
        run.settle();
        assertEquals(devices + 10, plan().rows(Table.DEVICES).size());
        assertTrue(plan().rows(Table.DEVICES).row("lamp 11").isPresent());
        run.robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        run.settle();
        assertEquals(before, PlanWriter.text(plan(), PlanWording.canonicalFor(plan())));
        assertTrue(WindowRun.on(() -> run.frame.desk().document().isSaved()));
    }

    @Test
    void aPlanThatIsOpenElsewhereOrChangedUnderneathIsSaid() throws IOException {
        Path file = Files.copy(FERRY, folder.resolve("shared.farwatt.json"));
        PlanLock.Outcome taken = PlanLock.take(file, "the other desk");
        try (PlanLock lock = ((PlanLock.Outcome.Held) taken).lock()) {
            assertTrue(Files.exists(file), lock::toString);
            openFile(file);
            WindowRun.until("said", () -> run.frame.said().contains("the other desk"));
        }
        Files.writeString(file, Files.readString(FERRY).replace("95 m", "96 m"));
        for (int look = 0; look < 3; look++) {
            WindowRun.on(() -> {
                run.frame.file().lookUnderneath(run.frame::say);
                return true;
            });
            run.settle();
        }
        run.robot.clickOn("Seen, 1 more");
        WindowRun.until("said", () -> run.frame.said().contains("changed by another program"));
        assertEquals("95 m", trunk("length"), "what is open stays");
    }

    private void openFile(Path file) {
        WindowRun.on(() -> {
            run.frame.open(file);
            return true;
        });
        WindowRun.until("open", () -> run.frame.file().path().isPresent());
        run.settle();
    }

    @Test
    void twentyThousandRowsAreScrolledChosenSortedAndFiltered() throws IOException {
        Plan large = large();
        Path file = folder.resolve("large.farwatt.json");
        Files.write(file, PlanWriter.bytes(large, PlanWording.canonicalFor(large)));
        openFile(file);
        go(Table.DEVICES, "cam 1", "id");
        for (int page = 0; page < 20; page++) {
            run.robot.type(KeyCode.PAGE_DOWN);
        }
        run.robot.push(KeyCode.SHORTCUT, KeyCode.END);
        run.picture("large-end");
        run.robot.type(KeyCode.HOME);
        assertTrue(copied().startsWith("cam " + MANY), this::copied);
        run.robot.push(KeyCode.SHORTCUT, KeyCode.A);
        assertEquals(MANY, copied().lines().count());
        go(Table.DEVICES, "cam 1", "draw");
        run.robot.type(KeyCode.F5);
        run.robot.type(KeyCode.F5);
        run.robot.push(KeyCode.SHORTCUT, KeyCode.HOME);
        run.robot.type(KeyCode.HOME);
        run.picture("large-sorted");
        go(Table.DEVICES, copied(), "draw");
        assertEquals("9 W", copied(), "the greatest stands first");
        run.robot.push(KeyCode.SHIFT, KeyCode.F5);
        run.robot.write("cam 19999");
        run.robot.type(KeyCode.ENTER);
        run.robot.push(KeyCode.SHORTCUT, KeyCode.A);
        assertEquals(1, copied().lines().count());
        assertTrue(copied().startsWith("cam 19999"), this::copied);
        assertFalse(WindowRun.on(() -> run.frame.file().isUnsaved()), "the plan keeps its order");
    }

    /** What the chosen cells give to the clipboard. */
    private String copied() {
        WaitForAsyncUtils.waitForFxEvents();
        run.robot.push(KeyCode.SHORTCUT, KeyCode.C);
        WaitForAsyncUtils.waitForFxEvents();
        return WindowRun.on(() -> Clipboard.getSystemClipboard().getString());
    }

    /** Devices by the dozen on their switches, with columns of a person's own. */
    private static Plan large() {
        List<Row> sources = new ArrayList<>();
        List<Row> switches = new ArrayList<>();
        List<Row> runs = new ArrayList<>();
        List<Row> devices = new ArrayList<>();
        for (int i = 1; i <= MANY; i++) {
            int tree = 1 + (i - 1) / 24;
            if (i % 24 == 1) {
                sources.add(Row.of("feed " + tree).with("type", "4"));
                switches.add(Row.of("edge " + tree).with("ports", "24").with("uplink_right", "extended"));
                runs.add(run("trunk " + tree, "feed " + tree, "edge " + tree));
            }
            devices.add(Row.of("cam " + i).with("draw", 1 + i % 9 + " W"));
            runs.add(run("run cam " + i, "edge " + tree, "cam " + i));
        }
        Plan plan = Plan.EMPTY
                .with(Table.SOURCES, Rows.of(sources))
                .with(Table.SWITCHES, Rows.of(switches))
                .with(Table.RUNS, Rows.of(runs))
                .with(Table.DEVICES, Rows.of(devices));
        for (int i = 1; i <= COLUMNS; i++) {
            plan = plan.and(
                    Table.COLUMNS,
                    Row.of("share_" + i)
                            .with("table", "devices")
                            .with("is", Cell.text("volts / run.volts_near * " + i)));
        }
        return plan;
    }

    private static Row run(String id, String from, String to) {
        return Row.of(id).with("from", from).with("to", to).with("length", "20 m");
    }
}
