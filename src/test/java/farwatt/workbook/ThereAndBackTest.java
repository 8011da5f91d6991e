package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.file.PlanReader;
import farwatt.plan.Cell;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workbook of a plan that somebody changed, taken into the plan as it was, gives the changed plan. */
class ThereAndBackTest {
    private static final Map<Table, List<String>> TYPED = Map.of(
            Table.RUNS, List.of("length", "gauge", "seen_volts_near", "seen_volts_far", "seen_amps"),
            Table.DEVICES, List.of("class", "draw", "priority"),
            Table.SWITCHES, List.of("own_draw", "efficiency", "budget"),
            Table.ZONES, List.of("ambient", "hottest", "setting", "sun"));

    @TempDir
    Path folder;

    private static String any(String name, Random random) {
        return switch (name) {
            case "length" -> (1 + random.nextInt(900)) / 10.0 + " m";
            case "gauge" -> 22 + random.nextInt(3) + " AWG";
            case "seen_volts_near", "seen_volts_far" -> (4000 + random.nextInt(1500)) / 100.0 + " V";
            case "seen_amps" -> random.nextInt(1000) / 1000.0 + " A";
            case "class" -> "" + (1 + random.nextInt(4));
            case "priority" -> "" + (1 + random.nextInt(3));
            case "draw", "own_draw" -> (5 + random.nextInt(100)) / 10.0 + " W";
            case "budget" -> (30 + random.nextInt(60)) + " W";
            case "efficiency" -> (80 + random.nextInt(19)) + " %";
            case "sun" -> random.nextInt(20) + " K";
            case "setting" -> List.of("open", "tray", "conduit").get(random.nextInt(3));
            default -> random.nextInt(50) - 20 + " degC";
        };
    }

    /** Canonical form: no digits that say nothing. */
    private static Cell cell(String name, Random random) {
        String text = any(name, random).replaceAll("\\.0( |$)", "$1");
        return text.matches("[0-9]+") ? Cell.number(text) : Cell.text(text);
    }

    private static Plan changed(Plan plan, Random random) {
        Plan other = plan;
        for (Map.Entry<Table, List<String>> one : TYPED.entrySet()) {
            List<Row> rows = new ArrayList<>();
            for (Row row : other.rows(one.getKey())) {
                Row edited = row;
                for (String name : one.getValue()) {
                    boolean rule = row.text(name).startsWith("if ");
                    boolean shown = name.startsWith("seen_") || row.cell(name).isPresent();
                    if (!rule && shown && random.nextInt(3) == 0) {
                        edited = edited.with(name, cell(name, random));
                    }
                }
                rows.add(edited);
            }
            other = other.with(one.getKey(), Rows.of(rows));
        }
        return other;
    }

    /** The workbook of a plan, with what differs in another one typed over it. */
    private Path edited(Plan plan, Plan other) throws Exception {
        Path file = folder.resolve("handover.xlsx");
        Path wanted = folder.resolve("wanted.xlsx");
        Workbook.write(file, Landing.handover(plan), Progress.SILENT, new Cancel());
        Workbook.write(wanted, Landing.handover(other), Progress.SILENT, new Cancel());
        try (XSSFWorkbook there = new XSSFWorkbook(Files.newInputStream(file));
                XSSFWorkbook then = new XSSFWorkbook(Files.newInputStream(wanted))) {
            for (Table table : TYPED.keySet()) {
                for (Row row : plan.rows(table)) {
                    for (String name : TYPED.get(table)) {
                        Row now = other.rows(table).row(row.id()).orElseThrow();
                        if (!now.text(name).equals(row.text(name))) {
                            type(there, then, table, row.id(), name);
                        }
                    }
                }
            }
            try (OutputStream out = Files.newOutputStream(file)) {
                there.write(out);
            }
        }
        return file;
    }

    private static void type(XSSFWorkbook there, XSSFWorkbook then, Table table, String id, String name) {
        boolean reading = name.startsWith("seen_");
        String title = reading ? Titles.TEST : Parts.SITE.get(table);
        String heading = name.replace("seen_", "").replace('_', ' ');
        var headings = HandoverTest.headings(there.getSheet(title), reading ? "run" : "id");
        int column = -1;
        for (var cell : headings) {
            boolean named = cell.toString().equals(heading) || cell.toString().startsWith(heading + ", ");
            // of two alike the second is for readings
            column = named && (column < 0 || reading) ? cell.getColumnIndex() : column;
        }
        for (var row : there.getSheet(title)) {
            if (row.getCell(0) != null && row.getCell(0).toString().equals(id)) {
                var cell = row.getCell(column);
                var wanted = then.getSheet(title).getRow(row.getRowNum()).getCell(column);
                cell.setBlank();
                if (wanted.getCellType() == CellType.NUMERIC) {
                    cell.setCellValue(wanted.getNumericCellValue());
                } else {
                    cell.setCellValue(wanted.getStringCellValue());
                }
                return;
            }
        }
        throw new AssertionError("no line " + id + " on " + title);
    }

    @Test
    void whatWasChangedAndNothingElseComesBack() throws Exception {
        int turns = Boolean.getBoolean("farwatt.soak") ? 60 : 4;
        List<Plan> plans = List.of(
                Landing.plan(),
                PlanReader.read(Path.of("scenarios/orchard-packing-shed.farwatt.json"))
                        .plan(),
                PlanReader.read(Path.of("scenarios/ferry-landing.farwatt.json")).plan());
        for (int turn = 0; turn < turns; turn++) {
            long seed = 900L + turn;
            Random random = new Random(seed);
            Plan plan = plans.get(turn % plans.size());
            Plan other = changed(plan, random);
            Path file = edited(plan, other);
            Back back = WayBack.read(file, plan, Calculation.of(plan), new Cancel());
            assertTrue(back.batch().isPresent(), "seed " + seed);
            Plan after = Edit.apply(plan, back.batch().get()).plan();
            for (Table table : Table.values()) {
                assertEquals(other.rows(table), after.rows(table), "seed " + seed + " " + table);
            }
            Path fresh = folder.resolve("fresh.xlsx");
            Workbook.write(fresh, Landing.handover(after), Progress.SILENT, new Cancel());
            Back again = WayBack.read(fresh, after, Calculation.of(after), new Cancel());
            assertEquals(Optional.empty(), again.batch(), "seed " + seed + " " + again.edited());
            assertEquals(List.of(), again.left(), "seed " + seed);
        }
    }
}
