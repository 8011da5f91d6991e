package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * An office program that is none of ours, set up for a country with a decimal comma, opens a hand-over, works every
 * formula out anew and saves it. Runs where the property {@code farwatt.office} names the program.
 */
class OfficeTest {
    private static final String OFFICE = System.getProperty("farwatt.office", "");
    private static final String ALWAYS = """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:items xmlns:oor="http://openoffice.org/2001/registry">
            <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
            <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
            <item oor:path="/org.openoffice.Setup/L10N">
            <prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>de-DE</value></prop></item>
            </oor:items>
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void onlyWithAnOfficeProgram() {
        assumeFalse(OFFICE.isEmpty(), "no office program was named");
    }

    private Path saved(Path file, String form) throws Exception {
        Path user = Files.createDirectories(folder.resolve("office/user"));
        Files.writeString(user.resolve("registrymodifications.xcu"), ALWAYS);
        Path out = Files.createDirectories(folder.resolve("out"));
        File said = folder.resolve("said.txt").toFile();
        Process process = new ProcessBuilder(
                        OFFICE,
                        "-env:UserInstallation=" + folder.resolve("office").toUri(),
                        "--headless",
                        "--convert-to",
                        form,
                        "--outdir",
                        out.toString(),
                        file.toString())
                .redirectErrorStream(true)
                .redirectOutput(said)
                .start();
        assertTrue(process.waitFor(3, TimeUnit.MINUTES), "the office program did not end");
        assertEquals(0, process.exitValue(), Files.readString(said.toPath()));
        String name = file.getFileName().toString().replace(".xlsx", "." + form.split(":", -1)[0]);
        return out.resolve(name);
    }

    @Test
    void formulasWorkedOutElsewhereGiveWhatWeStored() throws Exception {
        for (Plan plan : List.of(ChoiceTest.withScenarios(), Landing.partlyUsed())) {
            Path file = folder.resolve("handover.xlsx");
            Workbook.write(file, ChoiceTest.whole(plan), Progress.SILENT, new Cancel());
            Path again = saved(file, "xlsx:Calc MS Excel 2007 XML");
            int formulas = 0;
            try (XSSFWorkbook ours = new XSSFWorkbook(Files.newInputStream(file));
                    XSSFWorkbook theirs = new XSSFWorkbook(Files.newInputStream(again))) {
                for (Sheet sheet : ours) {
                    for (Row row : sheet) {
                        for (Cell cell : row) {
                            formulas += cell.getCellType() == CellType.FORMULA
                                    ? compare(cell, theirs.getSheet(sheet.getSheetName()))
                                    : 0;
                        }
                    }
                }
            }
            assertTrue(formulas > 60, formulas + " formulas");
            Back back = WayBack.read(again, plan, Calculation.of(plan), new Cancel());
            assertEquals(Optional.empty(), back.batch(), back.edited().toString());
            assertEquals(List.of(), back.left());
            assertEquals(List.of(), back.formulas(), "ours are no formulas of anybody's own");
            assertTrue(WayBack.origin(again).isPresent(), "the mark is kept");
        }
    }

    private static int compare(Cell ours, Sheet sheet) {
        Cell theirs = sheet.getRow(ours.getRowIndex()).getCell(ours.getColumnIndex());
        String where = sheet.getSheetName() + "!" + ours.getAddress() + " " + ours.getCellFormula();
        if (ours.getCachedFormulaResultType() == CellType.NUMERIC) {
            double stored = ours.getNumericCellValue();
            assertEquals(stored, theirs.getNumericCellValue(), 1e-9 * Math.max(1, Math.abs(stored)), where);
        } else {
            assertEquals(ours.getStringCellValue(), theirs.getStringCellValue(), where);
        }
        return 1;
    }

    @Test
    void theHandoverGoesOntoPaper() throws Exception {
        for (Paper paper : Paper.values()) {
            Path file = folder.resolve(paper + ".xlsx");
            Handover whole = ChoiceTest.whole(ChoiceTest.withScenarios());
            Workbook.write(
                    file, Landing.on(paper).beside(whole.sides()).with(whole.studies()), Progress.SILENT, new Cancel());
            byte[] bytes = Files.readAllBytes(saved(file, "pdf"));
            String pages = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);
            assertTrue(pages.startsWith("%PDF"), paper + " " + bytes.length + " bytes");
            // points of the long side of a page
            String size = paper == Paper.A4 ? "/MediaBox[0 0 84" : "/MediaBox[0 0 79";
            int there = pages.split("/MediaBox\\[", -1).length - 1;
            assertTrue(there > 20, there + " pages");
            // the root of all pages has a size of its own
            assertEquals(there - 1, pages.split(java.util.regex.Pattern.quote(size), -1).length - 1, paper.toString());
        }
    }
}
