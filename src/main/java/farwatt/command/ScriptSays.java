package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.plan.Plan;
import farwatt.plan.Scenario;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.script.Outcome;
import farwatt.script.ResultFiles;
import farwatt.script.ResultPicture;
import farwatt.script.ResultTable;
import farwatt.script.ScriptListener;
import farwatt.workbook.Imprint;
import farwatt.workbook.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Passes on what a script says: lines and tables to standard output, results into the folder that was chosen. */
final class ScriptSays implements ScriptListener {
    /** How results are written to standard output. */
    enum Form {
        TEXT,
        JSON
    }

    private final Output output;
    private final Form form;
    private final Optional<ResultFiles> files;
    private final List<String> printed = new ArrayList<>();
    private final List<ResultTable> tables = new ArrayList<>();
    private final List<String> saved = new ArrayList<>();
    private final Set<String> named = new HashSet<>();

    ScriptSays(Output output, Optional<Path> folder, Plan plan, Form form) {
        this.output = output;
        this.form = form;
        this.files = folder.map(path -> new ResultFiles(path, imprint(plan)));
    }

    private static Imprint imprint(Plan plan) {
        return new Imprint(
                plan.name(), Version.number(), Optional.empty(), LocalDate.now(ZoneId.systemDefault()), Paper.A4);
    }

    @Override
    public void print(String text) {
        if (form == Form.JSON) {
            printed.add(text);
        } else {
            text.lines().forEach(output::line);
            if (text.isEmpty()) {
                output.line("");
            }
        }
    }

    @Override
    public void table(ResultTable table) {
        if (form == Form.JSON) {
            tables.add(table);
            return;
        }
        TextTable text = new TextTable(
                table.columns().stream().map(ResultTable.Column::name).toList());
        for (List<ResultTable.Cell> row : table.rows()) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(ResultTable.text(row.get(i), table.columns().get(i)));
            }
            text.row(cells);
        }
        text.lines().forEach(output::line);
    }

    @Override
    public void save(String name, ResultTable table) {
        put(name, into -> into.save(name, table));
    }

    @Override
    public void picture(ResultPicture picture) {
        String name = picture.file().orElseGet(() -> free(ResultFiles.named(picture)));
        put(name, into -> into.save(name, picture));
    }

    /** Two pictures that were given no name never overwrite each other. */
    private String free(String name) {
        String free = name;
        for (int i = 2; !named.add(free); i++) {
            free = name.replaceFirst("(?=[.][^.]+$)", " " + i);
        }
        return free;
    }

    private interface Saving {
        Path into(ResultFiles files) throws Refusal;
    }

    private void put(String name, Saving saving) {
        if (files.isEmpty()) {
            output.say(Messages.text(CommandCode.NO_FOLDER, name));
            return;
        }
        try {
            String path = saving.into(files.get()).toString();
            saved.add(path);
            output.say(Messages.text(CommandCode.SAVED, path));
        } catch (Refusal e) {
            output.say(e.notice().line());
        }
    }

    /** Ends the answer. */
    void end(Outcome outcome) throws IOException {
        if (form == Form.TEXT) {
            return;
        }
        try (JsonOut out = new JsonOut(output)) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            texts(json, "printed", printed);
            json.writeArrayFieldStart("tables");
            for (ResultTable table : tables) {
                table(out, table);
            }
            json.writeEndArray();
            texts(json, "saved", saved);
            texts(json, "kept", outcome.kept().stream().map(Scenario::id).toList());
            json.writeStringField("why", outcome.said());
            json.writeEndObject();
        }
    }

    private static void texts(JsonGenerator json, String key, List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private static void table(JsonOut out, ResultTable table) throws IOException {
        JsonGenerator json = out.json();
        json.writeStartObject();
        json.writeArrayFieldStart("columns");
        for (ResultTable.Column column : table.columns()) {
            json.writeStartObject();
            json.writeStringField("name", column.name());
            json.writeStringField("unit", column.unit().symbol());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("points");
        for (List<ResultTable.Cell> row : table.rows()) {
            json.writeStartArray();
            for (ResultTable.Cell cell : row) {
                cell(out, cell);
            }
            json.writeEndArray();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void cell(JsonOut out, ResultTable.Cell cell) throws IOException {
        if (cell instanceof ResultTable.Amount amount) {
            out.number(amount.inside());
        } else if (cell instanceof ResultTable.YesNo yesNo) {
            out.json().writeBoolean(yesNo.yes());
        } else if (cell instanceof ResultTable.Words words) {
            out.json().writeString(words.text());
        } else {
            out.json().writeNull();
        }
    }
}
