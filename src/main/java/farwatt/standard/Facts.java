package farwatt.standard;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the data files of this room; one that is missing or broken is a bug. */
final class Facts {
    private Facts() {}

    static List<NamedCsvRecord> rows(String file) {
        try (InputStream in = Facts.class.getResourceAsStream(file + ".csv")) {
            if (in == null) {
                throw new IllegalStateException("no data file " + file);
            }
            try (CsvReader<NamedCsvRecord> csv =
                    CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                return csv.stream().toList();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double number(NamedCsvRecord row, String field) {
        String text = row.getField(field);
        return text.isEmpty() ? Double.NaN : Double.parseDouble(text);
    }

    static int whole(NamedCsvRecord row, String field) {
        return Integer.parseInt(row.getField(field));
    }
}
