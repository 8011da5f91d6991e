package farwatt.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.file.KeptMapping;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableCell;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** A customer's messy list on its way into a plan, by keys and mouse, with pictures of every step. */
class ListStoryTest {
    private static final Plan SHED = Plan.EMPTY
            .and(Table.ZONES, Row.of("Yard"))
            .and(
                    Table.SOURCES,
                    Row.of("office feed").with("type", "4").with("ports", "4").with("budget", "250 W"))
            .and(Table.SWITCHES, Row.of("Yard switch").with("ports", "16"))
            .and(Table.SWITCHES, Row.of("Shed switch").with("ports", "24").with("grants_by", "measured"))
            .and(
                    Table.RUNS,
                    Row.of("yard trunk")
                            .with("from", "office feed")
                            .with("to", "Yard switch")
                            .with("length", "58 m")
                            .with("gauge", "22 AWG"))
            .and(
                    Table.RUNS,
                    Row.of("shed trunk")
                            .with("from", "office feed")
                            .with("to", "Shed switch")
                            .with("length", "42 m")
                            .with("gauge", "22 AWG"));

    @TempDir
    Path folder;

    private WindowRun run;
    private int actions;

    @BeforeEach
    void open() {
        run = new WindowRun(folder, SHED);
    }

    @AfterEach
    void close() {
        run.close();
    }

    private Plan plan() {
        return WindowRun.on(() -> run.frame.desk().base());
    }

    private String cell(Table table, String id, String name) {
        return plan().rows(table).row(id).orElseThrow().text(name);
    }

    private static Path resource(String name) {
        try {
            return Path.of(ListStoryTest.class.getResource(name).toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private void click(String word) {
        run.robot.clickOn(word);
        actions++;
    }

    /** Chooses a file in the dialog, which is one action of a person too. */
    private void openList(Path list) {
        run.answers.files.add(list);
        actions++;
        click("Plan");
        click("Take in a list…");
        shows(list.getFileName() + " – ");
    }

    private void shows(String start) {
        WindowRun.until(
                start,
                () -> run.robot
                        .lookup((Node node) -> node instanceof javafx.scene.control.Label label
                                && label.getText() != null
                                && label.getText().startsWith(start))
                        .tryQuery()
                        .isPresent());
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void answer(String question, String choice) {
        ComboBox<?> box = run.robot
                .lookup((Node node) -> node instanceof ComboBox<?> combo
                        && combo.getAccessibleText() != null
                        && combo.getAccessibleText().contains(question))
                .queryAs(ComboBox.class);
        toSight(box);
        run.robot.clickOn(box);
        actions++;
        WaitForAsyncUtils.waitForFxEvents();
        run.picture("list-answering");
        run.robot.clickOn(run.robot
                .lookup((Node node) -> node instanceof javafx.scene.control.ListCell<?> cell
                        && choice.equals(cell.getText())
                        && cell.isVisible())
                .queryAs(Node.class));
        actions++;
        run.settle();
    }

    /** As the wheel does. */
    private static void toSight(Node node) {
        WindowRun.on(() -> {
            Node up = node;
            while (!(up instanceof ScrollPane)) {
                up = up.getParent();
            }
            ScrollPane roll = (ScrollPane) up;
            double top = roll.getContent().sceneToLocal(node.localToScene(0, 0)).getY();
            double more = roll.getContent().getBoundsInLocal().getHeight()
                    - roll.getViewportBounds().getHeight();
            roll.setVvalue(more <= 0 ? 0 : Math.max(0, Math.min(1, (top - 60) / more)));
            return true;
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void mend(String standing, String text) {
        Node cell = run.robot
                .lookup((Node node) -> node instanceof TableCell<?, ?> table && standing.equals(table.getText()))
                .queryAs(Node.class);
        WindowRun.on(() -> {
            TableCell<?, ?> table = (TableCell<?, ?>) cell;
            table.getTableView()
                    .scrollToColumnIndex(table.getTableView().getColumns().size() - 1);
            return true;
        });
        WaitForAsyncUtils.waitForFxEvents();
        run.robot.doubleClickOn(cell);
        actions++;
        WaitForAsyncUtils.waitForFxEvents();
        run.picture("list-mending");
        run.robot.push(KeyCode.SHORTCUT, KeyCode.A);
        run.robot.write(text);
        run.robot.type(KeyCode.ENTER);
        actions++;
        run.settle();
    }

    @Test
    void fromAMessyListToAComputedPlanInUnderTenActions() {
        openList(resource("/window/packing-shed.csv"));
        run.picture("list-understood");
        answer("Line cabinet", "Shed switch");
        run.picture("list-answered");
        mend("as the old one", "3 W");
        shows("packing-shed.csv – 17 rows: 0 taken, 11 changed, 0 held back, 6 left out");
        run.picture("list-mended");
        click("Take in");
        run.settle();
        run.picture("list-taken");
        assertTrue(actions < 10, actions + " actions");
        assertEquals(24, plan().rows(Table.DEVICES).size());
        assertEquals(26, plan().rows(Table.RUNS).size());
        assertEquals("3 W", cell(Table.DEVICES, "Weather mast", "draw"));
        assertEquals("Shed switch", cell(Table.RUNS, "run Dock camera 1", "from"));
        String verdict = WindowRun.on(
                () -> run.frame.desk().review().orElseThrow().verdict().text());
        assertTrue(verdict.startsWith("Holds"), verdict);
        run.robot.push(KeyCode.SHORTCUT, KeyCode.Z);
        run.settle();
        assertEquals(SHED.rows(Table.DEVICES), plan().rows(Table.DEVICES));
        assertEquals(SHED.rows(Table.RUNS), plan().rows(Table.RUNS));
    }

    @Test
    void howAListWasReadIsKeptAndUsedForTheNextOne() throws Exception {
        Path first = folder.resolve("first.csv");
        Files.writeString(first, "Thing,Juice,Span\ncam,6,20\nhorn,3,10\n");
        openList(first);
        answer("Meaning of Thing", "name");
        answer("Meaning of Juice", "watts");
        answer("Meaning of Span", "length");
        run.answers.texts.add("the orchard's lists");
        toSight(run.robot.lookup("Keep in the plan…").queryAs(Node.class));
        click("Keep in the plan…");
        run.settle();
        run.picture("list-kept");
        assertEquals("watts", KeptMapping.of(plan()).get(0).columns().get("Juice"));
        Path file = folder.resolve("kept.json");
        run.answers.files.add(file);
        toSight(run.robot.lookup("Keep as a file…").queryAs(Node.class));
        click("Keep as a file…");
        run.settle();
        assertEquals("length", KeptMapping.read(file).columns().get("Span"));
        Path next = folder.resolve("next.csv");
        Files.writeString(next, "Thing,Juice,Span\nlamp,8,30\n");
        openList(next);
        answer("Mappings that the plan keeps", "the orchard's lists");
        click("Take in");
        run.settle();
        assertEquals("8 W", cell(Table.DEVICES, "lamp", "draw"));
        assertEquals("30 m", cell(Table.RUNS, "run lamp", "length"));
    }

    @Test
    void aNewerListTellsWhatDiffersAndAsksWhatShallBecomeOfIt() {
        paste("Name\tW\tm\tSwitch\ncam\t6\t20\tYard switch\nhorn\t3\t10\tYard switch\nlamp\t8\t12\tYard switch");
        click("Take in");
        run.settle();
        paste("Name\tW\tm\tSwitch\ncam\t7\t25\tYard switch\nhorn\t3\t10\tYard switch\nsign\t5\t30\tYard switch");
        click("Against the plan (1 new, 2 differ, 1 not in the list)");
        run.settle();
        run.picture("list-against");
        answer("differ from the list", "skip");
        answer("does not name", "remove");
        click("Take in");
        run.settle();
        assertEquals("6 W", cell(Table.DEVICES, "cam", "draw"));
        assertEquals("20 m", cell(Table.RUNS, "run cam", "length"));
        assertEquals(
                List.of("cam", "horn", "sign"),
                plan().rows(Table.DEVICES).list().stream().map(Row::id).toList());
        assertTrue(plan().rows(Table.RUNS).row("run lamp").isEmpty());
    }

    private void paste(String text) {
        WindowRun.on(() -> {
            ClipboardContent content = new ClipboardContent();
            content.putString(text);
            return Clipboard.getSystemClipboard().setContent(content);
        });
        click("Plan");
        click("Take in the list that was copied");
        shows("pasted text – ");
        run.settle();
    }

    @Test
    void rowsHeldBackCanComeInNotInUse() {
        paste("Name\tW\tm\ncam\t6\t20\nhorn\t13d\t10");
        run.picture("list-held");
        click("Take in all, rows held back not in use");
        run.settle();
        assertEquals("no", cell(Table.DEVICES, "horn", "in_use"));
        assertEquals("6 W", cell(Table.DEVICES, "cam", "draw"));
    }

    @Test
    void aLockedWorkbookAsksForItsPassword() {
        run.answers.files.add(resource("/intake/containers/locked_password_orchard.xlsx"));
        click("Plan");
        click("Take in a list…");
        shows("Locked");
        run.picture("list-locked");
        TextInputControl word = run.robot
                .lookup((Node node) -> node instanceof TextInputControl input
                        && "Password of the workbook".equals(input.getAccessibleText()))
                .queryAs(TextInputControl.class);
        run.robot.clickOn(word).write("orchard").type(KeyCode.ENTER);
        shows("locked_password_orchard.xlsx – 3 rows");
        click("Take in");
        run.settle();
        assertEquals(3, plan().rows(Table.DEVICES).size());
    }
}
