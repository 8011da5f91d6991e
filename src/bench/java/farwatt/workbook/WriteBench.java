package farwatt.workbook;

import farwatt.bench.Heap;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
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

/** A table of 100,000 lines and 20 columns written with 512 MB, beside the bare streaming writer doing no more. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 4)
@Fork(value = 1, jvmArgs = "-Xmx512m")
public class WriteBench {
    private static final int LINES = 100_000;
    private static final int COLUMNS = 20;

    private final Heap heap = Heap.watched();
    private Path file = Path.of("");

    @Setup(Level.Trial)
    public void begin() throws IOException {
        file = Files.createTempFile("large", ".xlsx");
    }

    @TearDown(Level.Trial)
    public void end(BenchmarkParams params) throws IOException {
        Files.delete(file);
        heap.say(params.getBenchmark());
    }

    private static boolean isText(int column) {
        return column % 4 == 0;
    }

    @Benchmark
    public Object ours() throws Exception {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < COLUMNS; i++) {
            columns.add(Column.of("c" + i, "column " + i, isText(i) ? Form.WORD : Form.TWO));
        }
        Schedule table = new Schedule("Large", "", columns, new Schedule.Lines() {
            @Override
            public int size() {
                return LINES;
            }

            @Override
            public List<Entry> at(int line) {
                List<Entry> entries = new ArrayList<>(COLUMNS);
                for (int i = 0; i < COLUMNS; i++) {
                    entries.add(isText(i) ? Entry.words("cam " + line) : Entry.number(line / (i + 1.0)));
                }
                return entries;
            }
        });
        Imprint imprint = new Imprint("Large", "1", Optional.empty(), LocalDate.of(2025, 3, 14), Paper.A4);
        return Workbook.write(file, List.of(table), imprint, Progress.SILENT, new Cancel());
    }

    @Benchmark
    public void bare() throws IOException {
        try (SXSSFWorkbook book = new SXSSFWorkbook(64);
                OutputStream out = Files.newOutputStream(file)) {
            SXSSFSheet sheet = book.createSheet("Large");
            for (int line = 0; line < LINES; line++) {
                SXSSFRow row = sheet.createRow(line);
                for (int i = 0; i < COLUMNS; i++) {
                    if (isText(i)) {
                        row.createCell(i).setCellValue("cam " + line);
                    } else {
                        row.createCell(i).setCellValue(line / (i + 1.0));
                    }
                }
            }
            book.write(out);
        }
    }
}
