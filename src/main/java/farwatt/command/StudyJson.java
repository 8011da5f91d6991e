package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.language.Type;
import farwatt.quantity.Units;
import farwatt.study.Heading;
import farwatt.study.Point;
import farwatt.study.Points;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A study as JSON: columns, points as they come, a summary, and why values are missing. */
final class StudyJson implements AutoCloseable {
    private static final int MOST_REASONS = 10_000;

    private final JsonOut out;
    private final JsonGenerator json;
    private final List<Heading> columns;
    private final Map<String, String> why = new LinkedHashMap<>();
    private long count;

    StudyJson(Output output, List<Heading> columns, Units units) throws IOException {
        out = new JsonOut(output);
        json = out.json();
        this.columns = columns;
        json.writeStartObject();
        json.writeArrayFieldStart("columns");
        for (Heading heading : columns) {
            json.writeStartObject();
            json.writeStringField("name", heading.name());
            json.writeStringField(
                    "unit", heading.isNumber() ? heading.type().unit(units).symbol() : "");
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("points");
    }

    void point(Point point) throws IOException {
        json.writeStartArray();
        for (int c = 0; c < columns.size(); c++) {
            double inside = point.inside(c);
            if (point.why(c).isPresent()) {
                json.writeNull();
                if (why.size() < MOST_REASONS) {
                    why.put(count + "/" + columns.get(c).name(), point.why(c).get());
                }
            } else if (columns.get(c).isNumber()) {
                out.number(inside);
            } else if (columns.get(c).type() == Type.Plain.YES_NO) {
                json.writeBoolean(inside != 0);
            } else {
                json.writeString(point.text(c));
            }
        }
        json.writeEndArray();
        count++;
    }

    void points(Points points) throws IOException {
        points.to(this::point);
    }

    /** Ends the points; what is written until the end belongs to the summary. */
    JsonOut summary() throws IOException {
        json.writeEndArray();
        json.writeObjectFieldStart("summary");
        return out;
    }

    @Override
    public void close() throws IOException {
        json.writeEndObject();
        json.writeObjectFieldStart("why");
        for (Map.Entry<String, String> entry : why.entrySet()) {
            json.writeStringField(entry.getKey(), entry.getValue());
        }
        json.writeEndObject();
        json.writeEndObject();
        out.close();
    }
}
