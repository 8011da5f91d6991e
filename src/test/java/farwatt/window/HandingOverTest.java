package farwatt.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import farwatt.window.frame.Asking;
import farwatt.workbook.Handover;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What leaves the window for others, and what comes back from them. */
class HandingOverTest {
    @TempDir
    Path folder;

    private WindowRun run;

    @BeforeEach
    void open() throws Refusal {
        run = new WindowRun(
                folder,
                PlanReader.read(Path.of("scenarios/ferry-landing.farwatt.json")).plan());
    }

    @AfterEach
    void close() {
        run.close();
    }

    private Plan plan() {
        return WindowRun.on(() -> run.frame.desk().base());
    }

    private TableView<?> table(String called) {
        return run.robot
                .lookup((Node node) -> node instanceof TableView<?> view && called.equals(view.getAccessibleText()))
                .queryAs(TableView.class);
    }

    private void menu(String word) {
        run.robot.clickOn("Plan");
        run.robot.clickOn(word);
    }

    @Test
    void theTakeOffFollowsThePlanAndIsCopied() {
        menu("Take-off…");
        WindowRun.until("counted", () -> !table("Take-off").getItems().isEmpty());
        run.picture("take-off");
        run.robot.clickOn("Copy");
        String copied = WindowRun.on(() -> Clipboard.getSystemClipboard().getString());
        assertTrue(copied.startsWith("what\tkind\tplanned"), copied);
        assertTrue(copied.contains("22 AWG"), copied);
        WindowRun.on(() -> {
            run.frame.showTable(Table.RUNS, "trunk", "gauge");
            return true;
        });
        run.robot.type(KeyCode.F2);
        run.robot.push(KeyCode.SHORTCUT, KeyCode.A);
        run.robot.write("26");
        run.robot.type(KeyCode.ENTER);
        run.settle();
        WindowRun.until(
                "counted again",
                () -> table("Take-off").getItems().stream()
                        .anyMatch(line -> line.toString().contains("26 AWG")));
    }

    @Test
    void aWorkbookComesBackAsOneStep() throws IOException {
        Path book = folder.resolve("handover.xlsx");
        run.answers.files.add(book);
        run.answers.picks.add(everything());
        menu("Hand-over workbook…");
        WindowRun.until("written", () -> run.frame.said().contains("handover.xlsx"));
        change(book, "trunk", "95", 97.5);
        run.answers.files.add(book);
        menu("Take a workbook back…");
        WindowRun.until(
                "read", () -> !table("What the workbook brings back").getItems().isEmpty());
        run.picture("workbook-back");
        Plan before = plan();
        run.robot.clickOn("Take back");
        run.settle();
        assertEquals(
                "97.5 m", plan().rows(Table.RUNS).row("trunk").orElseThrow().text("length"));
        WindowRun.on(() -> {
            run.frame.desk().undo();
            return true;
        });
        assertEquals(before, plan());
    }

    private static List<Integer> everything() {
        return IntStream.range(0, Handover.SHEETS.size()).boxed().toList();
    }

    @Test
    void sheetsAndStudiesGoIntoTheWorkbookByChoice() throws IOException {
        WindowRun.on(() -> {
            run.frame.put("Studies");
            run.frame.studies().model().run();
            return true;
        });
        WindowRun.until("found", () -> run.frame.studies().model().result().isPresent());
        run.settle();
        run.robot.clickOn("Into the workbook");
        assertTrue(WindowRun.on(() -> run.frame.studies().model().isHandedOver()));
        Path book = folder.resolve("some.xlsx");
        run.answers.files.add(book);
        int devices = Handover.SHEETS.indexOf("Devices");
        run.answers.picks.add(List.of(devices, Handover.SHEETS.size()));
        menu("Hand-over workbook…");
        WindowRun.until("written", () -> run.frame.said().contains("some.xlsx"));
        var study = run.answers.offered.get(Handover.SHEETS.size());
        assertEquals(Asking.Usual.IN, study.usual(), "it was put in at the bench");
        try (XSSFWorkbook open = new XSSFWorkbook(Files.newInputStream(book))) {
            List<String> names = new ArrayList<>();
            open.forEach(sheet -> names.add(sheet.getSheetName()));
            assertEquals(List.of("Summary", "Devices"), names.subList(0, 2));
            assertTrue(names.size() > 2 && names.get(2).startsWith("Map of"), names::toString);
        }
        run.answers.picks.clear();
        menu("Hand-over workbook…");
        run.settle();
        assertEquals(
                "Which sheets",
                run.answers.asked.get(run.answers.asked.size() - 1).substring(0, 12));
    }

    /** Types another number into the cell of a row that holds one. */
    private static void change(Path book, String id, String was, double now) throws IOException {
        try (XSSFWorkbook open = new XSSFWorkbook(Files.newInputStream(book))) {
            boolean found = false;
            for (Row row : open.getSheet("Runs")) {
                for (var cell : row) {
                    boolean here =
                            row.getCell(0) != null && row.getCell(0).toString().equals(id);
                    if (here && (cell.toString().equals(was) || cell.toString().equals(was + ".0"))) {
                        cell.setCellValue(now);
                        found = true;
                    }
                }
            }
            assertTrue(found, "no cell of " + id + " holds " + was);
            try (OutputStream out = Files.newOutputStream(book)) {
                open.write(out);
            }
        }
    }
}
