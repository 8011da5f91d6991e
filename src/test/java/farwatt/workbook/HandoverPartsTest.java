package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import farwatt.review.Reviewer;
import farwatt.review.TakeOff;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFPictureData;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a hand-over holds beside its tables: a picture, studies with charts, what scenarios need more or less. */
class HandoverPartsTest {
    @TempDir
    Path folder;

    static BookPicture picture() throws Exception {
        BufferedImage image = new BufferedImage(600, 300, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, 600, 300);
        pen.setColor(Color.DARK_GRAY);
        pen.drawLine(20, 150, 580, 150);
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return new BookPicture(ByteBuffer.wrap(out.toByteArray()), 600, 300, "feed, trunk, gate from left to right");
    }

    static List<StudyTable> studies() {
        Column draw = Column.of("draw", "draw of camera 3", Form.ONE).in("W");
        Column left = Column.of("left", "least reserve", Form.SHARE);
        Column lost = Column.of("lost", "lost", Form.ONE).in("W");
        List<List<Entry>> sweep = new ArrayList<>();
        List<List<Entry>> heat = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            Entry reserve = i == 20 ? Entry.NONE : Entry.number(0.4 - i * 0.02);
            sweep.add(List.of(Entry.number(i), reserve, Entry.number(3 + i * i / 40.0)));
            for (int j = 0; j < 6; j++) {
                heat.add(List.of(Entry.number(i), Entry.number(20 + 10 * j), Entry.number(0.4 - i * 0.01 - j * 0.02)));
            }
        }
        Column air = Column.of("air", "air", Form.WHOLE).in("°C");
        Column range = Column.of("range", "volts at the gate", Form.WORD);
        Column times = Column.of("times", "times", Form.WHOLE);
        Column count = Column.of("count", "devices added", Form.WHOLE);
        return List.of(
                new StudyTable(
                        "Sweep of draw", "In the heat.", StudyTable.Shape.LINE, List.of(draw, left, lost), sweep),
                new StudyTable("Draw and air", "", StudyTable.Shape.HEAT, List.of(draw, air, left), heat),
                new StudyTable(
                        "Tolerances",
                        "",
                        StudyTable.Shape.HISTOGRAM,
                        List.of(range, times),
                        List.of(
                                List.of(Entry.words("47 to 48"), Entry.number(12)),
                                List.of(Entry.words("48 to 49"), Entry.number(71)),
                                List.of(Entry.words("49 to 50"), Entry.number(17)))),
                new StudyTable(
                        "Growth",
                        "",
                        StudyTable.Shape.STEPS,
                        List.of(count, left),
                        List.of(
                                List.of(Entry.number(0), Entry.number(0.3)),
                                List.of(Entry.number(1), Entry.number(0.2)),
                                List.of(Entry.number(2), Entry.number(0.1)))));
    }

    private XSSFWorkbook written(Handover content) throws Exception {
        Path file = folder.resolve("parts.xlsx");
        assertEquals(List.of(), Workbook.write(file, content, Progress.SILENT, new Cancel()));
        return new XSSFWorkbook(Files.newInputStream(file));
    }

    @Test
    void thePictureStandsOnTheSummaryInItsShapeWithWords() throws Exception {
        BookPicture drawn = picture();
        try (XSSFWorkbook book = written(Landing.handover(Landing.plan()).with(drawn))) {
            XSSFSheet summary = book.getSheetAt(0);
            XSSFPicture there =
                    (XSSFPicture) summary.getDrawingPatriarch().getShapes().get(0);
            assertEquals(
                    drawn.alt(), there.getCTPicture().getNvPicPr().getCNvPr().getDescr());
            XSSFPictureData data = there.getPictureData();
            byte[] bytes = new byte[drawn.png().remaining()];
            drawn.png().get(bytes);
            assertArrayEquals(bytes, data.getData());
            int top = there.getClientAnchor().getRow1();
            assertEquals("Diagram", summary.getRow(top - 1).getCell(0).getStringCellValue());
            int after = there.getClientAnchor().getRow2();
            for (int row = top; row <= after; row++) {
                boolean bare =
                        summary.getRow(row) == null || summary.getRow(row).getPhysicalNumberOfCells() == 0;
                assertTrue(bare || (row == after && there.getClientAnchor().getDy2() == 0), "covered row " + row);
            }
            double high = 15.0 * (after - top) + there.getClientAnchor().getDy2() / 12_700.0;
            assertEquals(300, high, 1, "300 points, as wide as asked for");
        }
    }

    @Test
    void whatIsNoPictureIsRefused() {
        ByteBuffer text = ByteBuffer.wrap("no picture".getBytes(StandardCharsets.UTF_8));
        assertThrows(IllegalArgumentException.class, () -> new BookPicture(text, 10, 10, "nothing"));
    }

    @Test
    void everyStudyHasItsChartThatRefersToItsCells() throws Exception {
        try (XSSFWorkbook book = written(Landing.handover(Landing.plan()).with(studies()))) {
            for (String name : List.of("Sweep of draw", "Tolerances", "Growth")) {
                XSSFSheet sheet = book.getSheet(name);
                XSSFChart chart = sheet.getDrawingPatriarch().getCharts().get(0);
                String xml = chart.getCTChart().xmlText();
                assertTrue(xml.contains("'" + name + "'!$A$4:$A$"), xml);
                assertTrue(xml.contains("'" + name + "'!$B$4:$B$"), xml);
                String said = sheet.getDrawingPatriarch().getCTDrawing().xmlText();
                assertTrue(said.contains("points from the table beside it"), said);
                assertEquals(3, sheet.getPaneInformation().getHorizontalSplitPosition(), "headings in view");
            }
            String sweep = book.getSheet("Sweep of draw")
                    .getDrawingPatriarch()
                    .getCharts()
                    .get(0)
                    .getCTChart()
                    .xmlText();
            assertTrue(sweep.contains("scatterChart"), sweep);
            assertEquals(1, sweep.split("<c:ser>", -1).length - 1, "watts do not stand on an axis of shares");
        }
    }

    @Test
    void aHeatMapIsShadedFromPaleToDeepWithItsLegend() throws Exception {
        try (XSSFWorkbook book = written(Landing.handover(Landing.plan()).with(studies()))) {
            XSSFSheet sheet = book.getSheet("Draw and air");
            assertEquals("least reserve from", sheet.getRow(2).getCell(0).getStringCellValue());
            int headings = HandoverTest.headings(sheet, "air, °C").getRowNum();
            Set<Short> grounds = new HashSet<>();
            Set<String> colours = new HashSet<>();
            for (int i = 1; i <= 6; i++) {
                assertEquals(
                        20 + 10 * (i - 1), sheet.getRow(headings + i).getCell(0).getNumericCellValue());
                for (int j = 1; j <= 21; j++) {
                    Cell cell = sheet.getRow(headings + i).getCell(j);
                    double expected = 0.4 - (j - 1) * 0.01 - (i - 1) * 0.02;
                    assertEquals(expected, cell.getNumericCellValue(), 1e-12);
                    colours.add(((org.apache.poi.xssf.usermodel.XSSFCellStyle) cell.getCellStyle())
                            .getFillForegroundColorColor()
                            .getARGBHex());
                    grounds.add(cell.getCellStyle().getIndex());
                }
            }
            assertEquals(5, colours.size(), colours::toString);
            assertEquals(5, grounds.size(), "styles are shared");
        }
    }

    @Test
    void theTakeOffIsWhatTheReviewCountsAndItsSlackIsLive() throws Exception {
        Handover content = Landing.handover(Landing.plan());
        List<TakeOff.Line> lines = TakeOff.of(content.calc()).lines();
        try (XSSFWorkbook book = written(content)) {
            XSSFSheet sheet = book.getSheet(Titles.TAKE_OFF);
            var headings = HandoverTest.headings(sheet, "what");
            int order = HandoverTest.column(headings, "with slack");
            for (int i = 0; i < lines.size(); i++) {
                var row = sheet.getRow(headings.getRowNum() + 1 + i);
                assertEquals(lines.get(i).part().word(), row.getCell(0).getStringCellValue());
                assertEquals(lines.get(i).order(), row.getCell(order).getNumericCellValue(), 1e-9);
                assertEquals(CellType.FORMULA, row.getCell(order).getCellType());
            }
            assertFalse(lines.isEmpty());
        }
    }

    @Test
    void whatAScenarioNeedsMoreIsLaidBesideTheBase() throws Exception {
        Plan base = Landing.plan();
        List<Row> rows = new ArrayList<>();
        for (Row row : base.rows(Table.RUNS)) {
            rows.add(row.id().equals("trunk") ? row.with("gauge", "22 AWG") : row);
        }
        Plan thicker = base.with(Table.RUNS, Rows.of(rows));
        List<ScenarioTable.Side> sides = new ArrayList<>();
        for (Plan plan : List.of(base, thicker)) {
            Calculation calc = Calculation.of(plan);
            sides.add(new ScenarioTable.Side(plan.equals(base) ? "base" : "thicker", calc, Reviewer.review(calc)));
        }
        Schedule orders = TakeOffTable.differences(sides);
        assertTrue(orders.lines().size() >= 2, "the old gauge goes, the new one comes");
        double more = 0;
        for (int i = 0; i < orders.lines().size(); i++) {
            List<Entry> line = orders.lines().at(i);
            assertEquals(Entry.words("thicker"), line.get(0));
            assertTrue(line.get(5).shown() instanceof Entry.Amount, line.toString());
            more += ((Entry.Amount) line.get(5).shown()).value();
        }
        assertEquals(0, more, 1e-9, "as many metres as before");
        assertEquals(
                0,
                TakeOffTable.differences(List.of(sides.get(0), sides.get(0)))
                        .lines()
                        .size());
        Path file = folder.resolve("orders.xlsx");
        Workbook.write(
                file,
                List.of(orders),
                new Imprint("Ferry landing", "1.0.0", java.util.Optional.empty(), Landing.DAY, Paper.LETTER),
                Progress.SILENT,
                new Cancel());
        assertTrue(Files.size(file) > 0);
    }

    @Test
    void aHandoverWithEverythingIsTheSameBytesTwice() throws Exception {
        Handover content = Landing.handover(Landing.plan()).with(picture()).with(studies());
        Path one = folder.resolve("one.xlsx");
        Path two = folder.resolve("two.xlsx");
        Workbook.write(one, content, Progress.SILENT, new Cancel());
        Workbook.write(two, content, Progress.SILENT, new Cancel());
        assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(two));
    }
}
