package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.study.Effort;
import farwatt.study.Fit;
import farwatt.study.Ground;
import farwatt.study.Room;
import farwatt.workbook.StudyTable;
import java.io.IOException;
import java.util.List;
import picocli.CommandLine.Command;

/** What still fits where. */
@Command(
        name = "room",
        description = "For every node, how many more of each kind of device in the plan fit with the plan's reserve.")
final class RoomVerb extends StudyVerb {
    @Override
    void study(Ground ground, Effort effort) throws IOException {
        List<Fit> fits = Room.of(ground, effort);
        if (json) {
            json(fits);
            return;
        }
        TextTable table = new TextTable(List.of("node", "kind", "as", "more", "free ports", "one more"));
        for (Fit fit : fits) {
            table.row(List.of(
                    fit.node(),
                    fit.kind(),
                    fit.pattern(),
                    Integer.toString(fit.more()),
                    Integer.toString(fit.ports()),
                    fit.stoppedBy()));
        }
        table.lines().forEach(output()::line);
    }

    @Override
    List<StudyTable> sheets(Ground ground, Effort effort) {
        return List.of(sheetsOf(ground).room(Room.of(ground, effort)));
    }

    private void json(List<Fit> fits) throws IOException {
        try (JsonOut out = new JsonOut(output())) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            json.writeArrayFieldStart("columns");
            for (String name : List.of("node", "kind", "as", "more", "ports", "stopped_by")) {
                json.writeStartObject();
                json.writeStringField("name", name);
                json.writeStringField("unit", "");
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("points");
            for (Fit fit : fits) {
                json.writeStartArray();
                json.writeString(fit.node());
                json.writeString(fit.kind());
                json.writeString(fit.pattern());
                json.writeNumber(fit.more());
                json.writeNumber(fit.ports());
                json.writeString(fit.stoppedBy());
                json.writeEndArray();
            }
            json.writeEndArray();
            json.writeObjectFieldStart("summary");
            json.writeNumberField("rows", fits.size());
            json.writeEndObject();
            json.writeObjectFieldStart("why");
            json.writeEndObject();
            json.writeEndObject();
        }
    }
}
