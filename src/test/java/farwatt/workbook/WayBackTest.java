package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hand-over that people worked in comes back: what they changed, and nothing else. */
class WayBackTest {
    @TempDir
    Path folder;

    /** What a person does to a workbook. */
    private interface Hand {
        void works(XSSFWorkbook book);
    }

    private Back back(Plan plan, Hand hand) throws Exception {
        Path file = folder.resolve("handover.xlsx");
        Workbook.write(file, Landing.handover(plan), Progress.SILENT, new Cancel());
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            hand.works(book);
            try (OutputStream out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
        return WayBack.read(file, plan, Calculation.of(plan), new Cancel());
    }

    private static Plan after(Plan plan, Back back) {
        return Edit.apply(plan, back.batch().orElseThrow()).plan();
    }

    @Test
    void anUntouchedWorkbookChangesNothing() throws Exception {
        for (Plan plan : List.of(Landing.plan(), Landing.overloaded(), Landing.partlyUsed(), Landing.halls(60))) {
            Back back = back(plan, book -> {});
            assertEquals(Optional.empty(), back.batch(), back.toString());
            assertEquals(List.of(), back.left());
            assertEquals(List.of(), back.formulas());
            assertEquals(List.of(), back.missing());
        }
    }

    @Test
    void givenCellsAndReadingsBecomeOneStep() throws Exception {
        Plan plan = Landing.plan();
        Back back = back(plan, book -> {
            cell(book, "Runs", "trunk", "length, m").setCellValue(97.5);
            cell(book, "Runs", "trunk", "gauge, AWG").setCellValue(22);
            cell(book, "Devices", "mast radio", "class").setCellValue(3);
            type(cell(book, "Devices", "mast radio", "draw, W"), "12.5 W");
            cell(book, "Switches", "gate", "efficiency").setCellValue(0.925);
            cell(book, "Test sheet", "trunk", "volts near, V", 1).setCellValue(54.6);
            cell(book, "Test sheet", "trunk", "volts far, V", 1).setCellValue(48.25);
        });
        Plan after = after(plan, back);
        assertEquals("97.5 m", after.rows(Table.RUNS).row("trunk").orElseThrow().text("length"));
        assertEquals("22 AWG", after.rows(Table.RUNS).row("trunk").orElseThrow().text("gauge"));
        assertEquals("54.6 V", after.rows(Table.RUNS).row("trunk").orElseThrow().text("seen_volts_near"));
        assertEquals(
                "48.25 V", after.rows(Table.RUNS).row("trunk").orElseThrow().text("seen_volts_far"));
        assertEquals(
                "3", after.rows(Table.DEVICES).row("mast radio").orElseThrow().text("class"));
        assertEquals(
                "12.5 W",
                after.rows(Table.DEVICES).row("mast radio").orElseThrow().text("draw"));
        assertEquals(
                "92.5 %", after.rows(Table.SWITCHES).row("gate").orElseThrow().text("efficiency"));
        assertEquals(7, back.edited().size());
        assertEquals(List.of(), back.left());
        Back again = back(after, book -> {});
        assertEquals(Optional.empty(), again.batch(), "taken in, written and read back: " + again.edited());
    }

    @Test
    void whatCannotBeTakenIsNamedWithItsPlaceAndReason() throws Exception {
        Back back = back(Landing.plan(), book -> {
            cell(book, "Runs", "trunk", "loss, W").setCellValue(1);
            cell(book, "Devices", "cam 1", "draw, W").setCellValue(12);
            type(cell(book, "Devices", "cam 2", "class"), "ninety");
            type(cell(book, "Runs", "run cam 1", "length, m"), "as far as the pole");
        });
        assertEquals(Optional.empty(), back.batch());
        List<String> typed = back.left().stream().map(Back.Left::typed).sorted().toList();
        assertEquals(
                List.of("1", "12", "as far as the pole", "ninety"),
                typed,
                back.left().toString());
        assertTrue(back.left().stream().allMatch(l -> l.where().matches("(Runs|Devices)![A-Z]+[0-9]+")));
        assertTrue(
                back.left().stream().allMatch(l -> l.why().endsWith(".")),
                back.left().toString());
    }

    @Test
    void aFormulaOfAPersonsOwnIsNamedAndItsResultUsed() throws Exception {
        Plan plan = Landing.plan();
        Back back = back(plan, book -> {
            Cell length = cell(book, "Runs", "trunk", "length, m");
            length.setCellFormula("90+12");
            length.setCellValue(102);
            book.createSheet("my sums").createRow(2).createCell(1).setCellFormula("1+1");
        });
        assertEquals(
                "102 m",
                after(plan, back).rows(Table.RUNS).row("trunk").orElseThrow().text("length"));
        assertEquals(
                List.of("=90+12", "=1+1"),
                back.formulas().stream().map(Back.Formula::text).toList());
        assertEquals("my sums!B3", back.formulas().get(1).where());
    }

    @Test
    void linesMovedAddedAndTakenAwayAreUnderstood() throws Exception {
        Plan plan = Landing.plan();
        Back back = back(plan, book -> {
            Sheet sheet = book.getSheet("Devices");
            int sign = cell(book, "Devices", "ticket sign", "id").getRowIndex();
            int cam = cell(book, "Devices", "cam 1", "id").getRowIndex();
            String name = sheet.getRow(sign).getCell(0).getStringCellValue();
            type(sheet.getRow(sign).getCell(0), "gate lamp");
            assertEquals("ticket sign", name);
            Row moved = sheet.createRow(sheet.getLastRowNum() + 1);
            for (Cell cell : sheet.getRow(cam)) {
                Cell copy = moved.createCell(cell.getColumnIndex());
                if (cell.getCellType() == org.apache.poi.ss.usermodel.CellType.NUMERIC) {
                    copy.setCellValue(cell.getNumericCellValue());
                } else {
                    copy.setCellValue(cell.getStringCellValue());
                }
            }
            sheet.removeRow(sheet.getRow(cam));
            sheet.shiftRows(0, sheet.getLastRowNum(), 2);
        });
        assertEquals(1, back.added().size(), back.toString());
        assertEquals("gate lamp", back.added().get(0).row());
        assertEquals(
                List.of("ticket sign"),
                back.missing().stream().map(p -> p.row()).toList());
        Plan after = after(plan, back);
        assertEquals(
                "9 W", after.rows(Table.DEVICES).row("gate lamp").orElseThrow().text("draw"));
        assertTrue(after.rows(Table.DEVICES).row("ticket sign").isPresent(), "what is missing stays");
        assertEquals(List.of(), back.edited());
    }

    @Test
    void rulesComeBackAsTyped() throws Exception {
        Plan plan = Landing.plan();
        Back back = back(plan, book -> {
            Sheet sheet = book.getSheet(Titles.TYPED);
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == org.apache.poi.ss.usermodel.CellType.STRING
                            && cell.getStringCellValue().startsWith("if dark")) {
                        type(cell, "if dark then 10 W else 6 W");
                    }
                    if (cell.toString().equals("0.05 ohm")) {
                        type(cell, "0.05 ohm +");
                    }
                }
            }
        });
        assertEquals(
                "if dark then 10 W else 6 W",
                after(plan, back).rows(Table.DEVICES).row("cam 1").orElseThrow().text("draw"));
        assertEquals(
                List.of("0.05 ohm +"),
                back.left().stream().map(Back.Left::typed).toList());
    }

    @Test
    void aHandoverIsKnownAgainAndAnythingElseIsNot() throws Exception {
        Path file = folder.resolve("known.xlsx");
        Workbook.write(file, Landing.handover(Landing.plan()), Progress.SILENT, new Cancel());
        Origin origin = WayBack.origin(file).orElseThrow();
        assertEquals(new Origin("", farwatt.engine.Corner.MOST, "3f0a 91c2 77de 5b10"), origin);
        assertTrue(origin.isOlderThan("another"));
        Path other = folder.resolve("other.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(other)) {
            book.createSheet("Notes").createRow(0).createCell(0).setCellValue("id");
            book.write(out);
        }
        assertEquals(Optional.empty(), WayBack.origin(other));
        Path text = Files.writeString(folder.resolve("text.xlsx"), "Name;Watts\ncam 1;5\n");
        assertEquals(Optional.empty(), WayBack.origin(text));
        Plan plan = Landing.plan();
        assertThrows(Refusal.class, () -> WayBack.read(other, plan, Calculation.of(plan), new Cancel()));
        assertThrows(Refusal.class, () -> WayBack.read(text, plan, Calculation.of(plan), new Cancel()));
    }

    /** The library keeps a text that stands in its cell beside a new one unless the cell is emptied before. */
    private static void type(Cell cell, String text) {
        cell.setBlank();
        cell.setCellValue(text);
    }

    private static Cell cell(XSSFWorkbook book, String sheet, String id, String heading) {
        return cell(book, sheet, id, heading, 0);
    }

    /** The cell of a line under a heading; of several alike the one that is so many further on. */
    private static Cell cell(XSSFWorkbook book, String name, String id, String heading, int skip) {
        Sheet sheet = book.getSheet(name);
        Map<Integer, String> there = new java.util.TreeMap<>();
        for (Row row : sheet) {
            there.put(row.getRowNum(), String.valueOf(row.getCell(0)));
        }
        int column = -1;
        int skipped = skip;
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (column < 0 && cell.toString().equals(heading) && skipped-- == 0) {
                    column = cell.getColumnIndex();
                }
            }
        }
        assertTrue(column >= 0, "no heading " + heading + " on " + name);
        for (Map.Entry<Integer, String> one : there.entrySet()) {
            if (one.getValue().equals(id)) {
                Row row = sheet.getRow(one.getKey());
                return row.getCell(column) == null ? row.createCell(column) : row.getCell(column);
            }
        }
        throw new AssertionError("no line " + id + " on " + name);
    }
}
