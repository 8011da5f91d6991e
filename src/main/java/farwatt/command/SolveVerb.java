package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.Stage;
import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Fault;
import farwatt.engine.Value;
import farwatt.plan.Table;
import farwatt.review.Finding;
import farwatt.review.Review;
import farwatt.review.Reviewer;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;

/** Shows every table with its answers. */
@Command(name = "solve", description = "Every table with solved values, in one corner or in all.")
final class SolveVerb extends PlanVerb {
    private static final List<Table> TABLES = List.of(Table.SOURCES, Table.SWITCHES, Table.RUNS, Table.DEVICES);

    @Override
    public Integer call() throws Exception {
        Calculation calculation = calculation();
        sayNotices();
        if (json) {
            json(calculation);
        } else if (allCorners()) {
            for (Corner corner : Corner.values()) {
                calculation.look(corner);
                text(calculation);
            }
        } else {
            text(calculation);
        }
        return Exit.DONE;
    }

    private void text(Calculation calculation) {
        output().line(calculation.plan().name() + " – " + calculation.corner().word() + ", " + status(calculation));
        output().line("");
        for (Table table : TABLES) {
            List<Name> names = answers(calculation, table).stream()
                    .filter(name -> says(calculation, table, name))
                    .toList();
            List<String> headings = new ArrayList<>(List.of(table.key()));
            names.forEach(name -> headings.add(name.key()));
            TextTable lines = new TextTable(headings);
            for (int place = 0; place < calculation.rows(table); place++) {
                if (inUse(calculation, table, place)) {
                    List<String> cells = new ArrayList<>(List.of(calculation.id(table, place)));
                    for (Name name : names) {
                        cells.add(calculation.value(table, place, name.key()).text());
                    }
                    lines.row(cells);
                }
            }
            if (!lines.isEmpty()) {
                lines.lines().forEach(output()::line);
                output().line("");
            }
        }
        for (Name name : answers(calculation, Table.PLAN)) {
            Value value = calculation.value(Table.PLAN, 0, name.key());
            if (value.isPresent()) {
                output().line("plan." + name.key() + " = " + value.text());
            }
        }
        output().line("");
    }

    /** True if some row has something to show there. */
    private static boolean says(Calculation calculation, Table table, Name name) {
        for (int place = 0; place < calculation.rows(table); place++) {
            Value value = calculation.value(table, place, name.key());
            if (value.isPresent() && !value.text().isEmpty()) {
                return true;
            }
        }
        return calculation.rows(table) == 0;
    }

    private static List<Name> answers(Calculation calculation, Table table) {
        return calculation.names(table).stream()
                .filter(name -> name.stage() != Stage.GIVEN)
                .toList();
    }

    private static boolean inUse(Calculation calculation, Table table, int place) {
        return calculation.figures(table, "in_use").at(place) != 0;
    }

    private void json(Calculation calculation) throws IOException {
        try (JsonOut out = new JsonOut(output())) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            json.writeStringField("plan", calculation.plan().name());
            json.writeStringField("scenario", scenario());
            if (allCorners()) {
                json.writeObjectFieldStart("corners");
                for (Corner corner : Corner.values()) {
                    calculation.look(corner);
                    json.writeObjectFieldStart(corner.word());
                    corner(out, calculation);
                    json.writeEndObject();
                }
                json.writeEndObject();
            } else {
                json.writeStringField("corner", calculation.corner().word());
                corner(out, calculation);
            }
            json.writeEndObject();
        }
    }

    private void corner(JsonOut out, Calculation calculation) throws IOException {
        JsonGenerator json = out.json();
        json.writeStringField("status", status(calculation));
        for (Table table : TABLES) {
            json.writeObjectFieldStart(table.key());
            for (int place = 0; place < calculation.rows(table); place++) {
                if (inUse(calculation, table, place)) {
                    row(out, calculation, table, place);
                }
            }
            json.writeEndObject();
        }
        json.writeObjectFieldStart("plan_values");
        for (Name name : answers(calculation, Table.PLAN)) {
            Value value = calculation.value(Table.PLAN, 0, name.key());
            out.value(name.key(), value, "plan//" + name.key());
        }
        json.writeEndObject();
        Review review = Reviewer.review(calculation, calculation.corner());
        List<Finding> findings = new ArrayList<>(review.findings());
        notices().stream().map(FindingsOut::of).forEach(findings::add);
        FindingsOut.json(out, findings);
        out.why();
    }

    private static void row(JsonOut out, Calculation calculation, Table table, int place) throws IOException {
        String id = calculation.id(table, place);
        out.json().writeObjectFieldStart(id);
        for (Name name : calculation.names(table)) {
            if (name.kind() instanceof Kind.RowOf) {
                String typed = calculation.plan().rows(table).at(place).text(name.key());
                if (!typed.isEmpty()) {
                    out.json().writeStringField(name.key(), typed);
                }
                continue;
            }
            Value value = calculation.value(table, place, name.key());
            boolean unsaid =
                    value.fault().map(f -> f.kind() == Fault.Kind.EMPTY).orElse(false);
            if (name.stage() != Stage.GIVEN || !unsaid) {
                out.value(name.key(), value, table.key() + "/" + id + "/" + name.key());
            }
        }
        out.json().writeEndObject();
    }

    /** The worst over the trees. */
    static String status(Calculation calculation) {
        String worst = "solved";
        for (Table table : TABLES) {
            for (int place = 0; place < calculation.rows(table); place++) {
                String name = table == Table.DEVICES ? "volts" : "sent";
                Value value = calculation.value(table, place, name);
                if (value.isPresent() || !inUse(calculation, table, place)) {
                    continue;
                }
                switch (value.fault().orElseThrow().kind()) {
                    case NO_OPERATING_POINT -> {
                        return "no operating point";
                    }
                    case RUNAWAY -> worst = "runaway";
                    case OUT_OF_USE -> {
                        // what hangs on a row out of use is left out with it
                    }
                    default -> worst = worst.equals("runaway") ? worst : "incomplete";
                }
            }
        }
        return worst;
    }
}
