package farwatt.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import farwatt.engine.Value;
import farwatt.language.Type;
import farwatt.plan.Cell;
import farwatt.plan.Row;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** JSON to standard output: SI numbers, words as strings, yes/no as booleans, null where there is no value. */
final class JsonOut implements AutoCloseable {
    private final JsonGenerator json;
    private final Output output;
    /** Why a value is null, by {@code table/row id/name}. */
    private final Map<String, String> why = new LinkedHashMap<>();

    JsonOut(Output output) throws IOException {
        this.output = output;
        json = new JsonFactory()
                .createGenerator(output.raw())
                .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                .setPrettyPrinter(new DefaultPrettyPrinter()
                        .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                        .withArrayIndenter(new DefaultIndenter("  ", "\n")));
    }

    JsonGenerator json() {
        return json;
    }

    /** A field with a value; a missing one is null and its reason kept. */
    void value(String name, Value value, String place) throws IOException {
        json.writeFieldName(name);
        value(value);
        value.fault().ifPresent(fault -> why.put(place, fault.text()));
    }

    void value(Value value) throws IOException {
        if (!value.isPresent()) {
            json.writeNull();
        } else if (value.type() == Type.Plain.YES_NO) {
            json.writeBoolean(value.inside() != 0);
        } else if (value.isNumber()) {
            number(value.inside());
        } else {
            json.writeString(value.words());
        }
    }

    /** A number; whole ones without a point, what is none as null. */
    void number(double value) throws IOException {
        if (!Double.isFinite(value)) {
            json.writeNull();
        } else if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            json.writeNumber((long) value);
        } else {
            json.writeNumber(value);
        }
    }

    void number(String name, double value) throws IOException {
        json.writeFieldName(name);
        number(value);
    }

    /** A row as it is typed into a plan. */
    void row(Row row, String idKey) throws IOException {
        json.writeStartObject();
        json.writeStringField(idKey, row.id());
        for (String name : row.names()) {
            Cell cell = row.cell(name).orElseThrow();
            json.writeFieldName(name);
            cell(cell);
        }
        json.writeEndObject();
    }

    void cell(Cell cell) throws IOException {
        switch (cell.form()) {
            case YES_NO -> json.writeBoolean(cell.text().equals("yes"));
            case NUMBER -> json.writeNumber(cell.text());
            case OTHER -> json.writeRawValue(cell.text());
            case TEXT -> json.writeString(cell.text());
        }
    }

    /** Writes the reasons kept so far and forgets them. */
    void why() throws IOException {
        json.writeObjectFieldStart("why");
        for (Map.Entry<String, String> entry : why.entrySet()) {
            json.writeStringField(entry.getKey(), entry.getValue());
        }
        json.writeEndObject();
        why.clear();
    }

    @Override
    public void close() throws IOException {
        json.close();
        output.line("");
    }
}
