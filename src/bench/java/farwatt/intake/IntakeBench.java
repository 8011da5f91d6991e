package farwatt.intake;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import farwatt.bench.Heap;
import farwatt.report.Cancel;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.eventusermodel.XSSFSheetXMLHandler;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.xml.sax.InputSource;
import org.xml.sax.XMLReader;

/**
 * A list of 100,000 rows taken apart, understood and made into devices, beside the bare libraries that read the same
 * file and throw every cell away: FastCSV for the text, POI's event reader for the workbook of 15 columns.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4)
@Measurement(iterations = 6)
@Fork(value = 1, jvmArgs = "-Xmx1g")
public class IntakeBench {
    private static final int ROWS = 100_000;
    private static final List<String> HEADINGS = List.of(
            "Name",
            "Type",
            "Area",
            "Power (W)",
            "Class",
            "Length (m)",
            "Switch",
            "Port",
            "Serial",
            "MAC",
            "Asset tag",
            "Bitrate (Mb/s)",
            "Price",
            "IP",
            "Remark");

    private final Heap heap = Heap.watched();
    private Path csv = Path.of("");
    private Path xlsx = Path.of("");

    /** Writes both files. */
    @Setup(Level.Trial)
    public void write() throws IOException {
        Poi.start();
        csv = Files.createTempFile("list", ".csv");
        xlsx = Files.createTempFile("list", ".xlsx");
        try (BufferedWriter out = Files.newBufferedWriter(csv, StandardCharsets.UTF_8)) {
            out.write(String.join(";", HEADINGS) + "\n");
            for (int i = 0; i < ROWS; i++) {
                out.write(String.join(";", row(i)) + "\n");
            }
        }
        try (SXSSFWorkbook book = new SXSSFWorkbook(64);
                OutputStream out = Files.newOutputStream(xlsx)) {
            SXSSFSheet sheet = book.createSheet("Devices");
            fill(sheet.createRow(0), HEADINGS);
            for (int i = 0; i < ROWS; i++) {
                fill(sheet.createRow(i + 1), row(i));
            }
            book.write(out);
        }
    }

    private static void fill(org.apache.poi.ss.usermodel.Row row, List<String> cells) {
        for (int column = 0; column < cells.size(); column++) {
            String text = cells.get(column);
            if (text.matches("[1-9][0-9]{0,3}(\\.[0-9]+)?")) {
                row.createCell(column).setCellValue(Double.parseDouble(text));
            } else if (!text.isEmpty()) {
                row.createCell(column).setCellValue(text);
            }
        }
    }

    private static List<String> row(int i) {
        return List.of(
                "cam " + i,
                i % 3 == 0 ? "fixed camera" : "access point",
                "Quay " + i % 40,
                String.valueOf(3 + i % 220 / 10.0),
                String.valueOf(i % 5),
                String.valueOf(5 + i % 90),
                "SW-" + i / 24,
                String.valueOf(1 + i % 24),
                String.format(Locale.ROOT, "%010d", 48_000_017L + i * 7L),
                String.format(Locale.ROOT, "02:00:5e:%02x:%02x:%02x", i >> 16, i >> 8 & 255, i & 255),
                "A-" + (100_000 + i),
                String.valueOf(1 + i % 16),
                String.valueOf(80 + i % 300),
                i % 4 == 0 ? "IP66" : "",
                i % 7 == 0 ? "above the roller door, left" : "");
    }

    @TearDown(Level.Trial)
    public void end(BenchmarkParams params) throws IOException {
        Files.delete(csv);
        Files.delete(xlsx);
        heap.say(params.getBenchmark());
    }

    @Benchmark
    public Outcome text() throws Exception {
        return Intake.read(csv, Wishes.NONE, new Cancel());
    }

    /** Only signs, delimiter, rows and cells: what the bare library does, but with every cell kept. */
    @Benchmark
    public Object textRows() throws IOException {
        return TextList.of(Files.readAllBytes(csv), Mapping.NONE);
    }

    @Benchmark
    public long textBare() throws IOException {
        long signs = 0;
        try (CsvReader<CsvRecord> reader =
                CsvReader.builder().fieldSeparator(';').ofCsvRecord(csv)) {
            for (CsvRecord record : reader) {
                for (String field : record.getFields()) {
                    signs += field.length();
                }
            }
        }
        return signs;
    }

    @Benchmark
    public Outcome workbook() throws Exception {
        return Intake.read(xlsx, Wishes.NONE, new Cancel());
    }

    /** Only sheets, rows and cells. */
    @Benchmark
    public Object workbookRows() throws Exception {
        return new WorkbookFile(xlsx, Optional.empty(), new Cancel()).sheets(FileKind.XLSX);
    }

    @Benchmark
    public long workbookBare() throws Exception {
        Count count = new Count();
        try (OPCPackage files = OPCPackage.open(xlsx.toFile(), PackageAccess.READ)) {
            XSSFReader reader = new XSSFReader(files);
            XMLReader xml = XMLHelper.newXMLReader();
            xml.setContentHandler(new XSSFSheetXMLHandler(
                    reader.getStylesTable(),
                    null,
                    new ReadOnlySharedStringsTable(files),
                    count,
                    new DataFormatter(Locale.ROOT),
                    false));
            for (Iterator<InputStream> sheets = reader.getSheetsData(); sheets.hasNext(); ) {
                try (InputStream in = sheets.next()) {
                    xml.parse(new InputSource(in));
                }
            }
        }
        return count.signs;
    }

    /** Counts the signs of every cell. */
    private static final class Count implements XSSFSheetXMLHandler.SheetContentsHandler {
        private long signs;

        @Override
        public void startRow(int row) {}

        @Override
        public void endRow(int row) {}

        @Override
        public void cell(String place, String text, XSSFComment comment) {
            signs += text.length();
        }
    }
}
