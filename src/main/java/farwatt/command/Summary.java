package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.study.Heading;
import farwatt.study.Point;
import farwatt.study.Sink;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;

/** What there is to say of many points: how many, how many without a value, least and greatest of every number read. */
final class Summary implements Sink {
    private final List<Heading> columns;
    private final int varied;
    private final double[] least;
    private final double[] greatest;
    private final long[] without;
    private long count;

    Summary(List<Heading> columns, int varied) {
        this.columns = columns;
        this.varied = varied;
        least = new double[columns.size()];
        greatest = new double[columns.size()];
        without = new long[columns.size()];
        Arrays.fill(least, Double.NaN);
        Arrays.fill(greatest, Double.NaN);
    }

    @Override
    public void take(Point point) {
        count++;
        for (int c = varied; c < columns.size(); c++) {
            double inside = point.inside(c);
            if (!Double.isNaN(inside)) {
                least[c] = inside >= least[c] ? least[c] : inside;
                greatest[c] = inside <= greatest[c] ? greatest[c] : inside;
            } else if (point.why(c).isPresent()) {
                without[c]++;
            }
        }
    }

    /** Writes it and ends the object. */
    void write(JsonOut out) throws IOException {
        JsonGenerator json = out.json();
        json.writeNumberField("points", count);
        json.writeArrayFieldStart("read");
        for (int c = varied; c < columns.size(); c++) {
            json.writeStartObject();
            json.writeStringField("name", columns.get(c).name());
            if (columns.get(c).isNumber()) {
                out.number("least", least[c]);
                out.number("greatest", greatest[c]);
            }
            json.writeNumberField("without", without[c]);
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
