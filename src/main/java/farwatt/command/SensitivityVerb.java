package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.picture.StudyCharts;
import farwatt.quantity.Decimal;
import farwatt.quantity.Reader;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.study.Effect;
import farwatt.study.Effects;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Heading;
import farwatt.study.Sensitivity;
import farwatt.workbook.StudyTable;
import java.io.IOException;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which input matters how much. */
@Command(
        name = "sensitivity",
        description =
                "Moves every number of the plan a step up and down and orders them by what that does. Temperatures"
                        + " move by a kelvin for each per cent, gauges and counts by one.")
final class SensitivityVerb extends StudyVerb {
    @Option(names = "--read", required = true, paramLabel = "EXPR", description = "What to look at.")
    private String read = "";

    @Option(names = "--step", paramLabel = "SHARE", description = "The step; 5 %% unless said.")
    private String step = "5 %";

    @Mixin
    private StudyPicture picture = new StudyPicture();

    @Override
    void study(Ground ground, Effort effort) throws Refusal, IOException {
        picture.check(scenario());
        Units units = new Units(ground.plan().currency());
        Effects effects = effects(ground, effort);
        if (json) {
            json(effects, units);
        } else {
            text(effects);
        }
        if (picture.isWanted()) {
            picture.write(output(), List.of(StudyCharts.of(effects, picture.below(ground))));
        }
    }

    private Effects effects(Ground ground, Effort effort) throws Refusal {
        Units units = new Units(ground.plan().currency());
        double share = Reader.read(step, units, Decimal.POINT)
                .filter(typed -> typed.unit().symbol().equals("%"))
                .orElseThrow(() -> Refusal.of(CommandCode.BAD_SHARE, step))
                .inside();
        return Sensitivity.of(ground, read, share, effort);
    }

    @Override
    List<StudyTable> sheets(Ground ground, Effort effort) throws Refusal {
        return List.of(sheetsOf(ground).sensitivity(effects(ground, effort)));
    }

    private void text(Effects effects) {
        Heading read = effects.read();
        output().line(Messages.text(CommandCode.AS_IT_IS, read.name(), read.text(effects.now())));
        output().line("");
        TextTable table = new TextTable(List.of("input", "now", "down to", "gives", "up to", "gives"));
        for (Effect effect : effects.effects()) {
            Heading input = effect.input();
            table.row(List.of(
                    input.name(),
                    input.text(effect.now()),
                    input.text(effect.low()),
                    read.text(effect.down()),
                    input.text(effect.high()),
                    read.text(effect.up())));
        }
        table.lines().forEach(output()::line);
        output().line("");
        output().line(Messages.text(CommandCode.WITHOUT_EFFECT, effects.without()));
    }

    private void json(Effects effects, Units units) throws IOException {
        try (JsonOut out = new JsonOut(output())) {
            JsonGenerator json = out.json();
            String unit = effects.read().type().unit(units).symbol();
            json.writeStartObject();
            json.writeArrayFieldStart("columns");
            for (String[] column : new String[][] {
                {"input", ""}, {"input_unit", ""}, {"now", ""}, {"low", ""}, {"high", ""}, {"down", unit}, {"up", unit}
            }) {
                json.writeStartObject();
                json.writeStringField("name", column[0]);
                json.writeStringField("unit", column[1]);
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("points");
            for (Effect effect : effects.effects()) {
                json.writeStartArray();
                json.writeString(effect.input().name());
                json.writeString(effect.input().type().unit(units).symbol());
                for (double each :
                        new double[] {effect.now(), effect.low(), effect.high(), effect.down(), effect.up()}) {
                    out.number(each);
                }
                json.writeEndArray();
            }
            json.writeEndArray();
            json.writeObjectFieldStart("summary");
            json.writeStringField("read", effects.read().name());
            out.number("now", effects.now());
            json.writeNumberField("without_effect", effects.without());
            json.writeEndObject();
            json.writeObjectFieldStart("why");
            for (Effect effect : effects.effects()) {
                if (!effect.why().isEmpty()) {
                    json.writeStringField(effect.input().name(), effect.why());
                }
            }
            json.writeEndObject();
            json.writeEndObject();
        }
    }
}
