package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Name;
import farwatt.quantity.Units;
import farwatt.report.Refusal;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Shows the catalogue. */
@Command(
        name = "names",
        mixinStandardHelpOptions = true,
        description = "The names of everything, with unit, stage, default, formula and source.")
final class NamesVerb implements Callable<Integer> {
    @ParentCommand
    private Farwatt farwatt = new Farwatt(Output.standard());

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "WORD",
            description = "A name or a part of one: run.loss, volts.")
    private String word = "";

    @Option(names = "--json", description = "Answers as JSON.")
    private boolean json;

    @Option(names = "--page", description = "Writes the reference page: every name and every sentence of the program.")
    private boolean page;

    @Override
    public Integer call() throws Exception {
        if (page) {
            farwatt.output.raw().print(ReferencePage.text());
            return Exit.DONE;
        }
        List<Name> names = Catalogue.all().stream().filter(this::matches).toList();
        if (names.isEmpty()) {
            throw Refusal.of(CommandCode.NO_NAME, word);
        }
        if (json) {
            json(names);
            return Exit.DONE;
        }
        for (Name name : names) {
            text(name);
        }
        return Exit.DONE;
    }

    private boolean matches(Name name) {
        String asked = word.toLowerCase(java.util.Locale.ROOT);
        String singular = name.path().replaceFirst("(?:e?s)?\\.", ".").replaceFirst("^switch\\.", "switch.");
        return name.path().contains(asked) || singular.contains(asked);
    }

    private void text(Name name) {
        String unit = name.kind().symbol(new Units("EUR"));
        StringBuilder head = new StringBuilder(name.path());
        if (!unit.isEmpty()) {
            head.append(", ").append(unit);
        }
        head.append("  (").append(name.stage().word()).append(')');
        if (!name.fallback().text().isEmpty()) {
            head.append("  default ").append(name.fallback().text());
        }
        farwatt.output.line(head.toString());
        farwatt.output.line("    " + name.sentence());
        if (!name.formula().isEmpty()) {
            farwatt.output.line("    = " + name.formula());
        }
        if (!name.source().isEmpty()) {
            farwatt.output.line("    from " + name.source());
        }
    }

    private void json(List<Name> names) throws IOException {
        try (JsonOut out = new JsonOut(farwatt.output)) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            json.writeArrayFieldStart("names");
            for (Name name : names) {
                json.writeStartObject();
                json.writeStringField("table", name.table().key());
                json.writeStringField("name", name.key());
                json.writeStringField("unit", name.kind().symbol(new Units("EUR")));
                json.writeStringField("stage", name.stage().word());
                json.writeStringField("default", name.fallback().text());
                json.writeStringField("sentence", name.sentence());
                json.writeStringField("formula", name.formula());
                json.writeStringField("source", name.source());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
    }
}
