package farwatt.script;

import farwatt.language.Type;
import farwatt.study.Effect;
import farwatt.study.Effects;
import farwatt.study.Fit;
import farwatt.study.Grown;
import farwatt.study.Heading;
import farwatt.study.Limited;
import farwatt.study.Points;
import farwatt.study.Scatter;
import java.util.List;
import java.util.Optional;

/** What studies found, as the plain data that a script sees. */
final class StudyJson {
    private static final List<String> LEVELS =
            List.of("least", "1 %", "5 %", "25 %", "50 %", "75 %", "95 %", "99 %", "greatest");

    private StudyJson() {}

    static String sweep(List<String> varied, Points points) {
        JsonText json = new JsonText().open('{').key("varied").open('[');
        varied.forEach(json::text);
        points(json.close(']'), points);
        return json.close('}').toString();
    }

    static String grown(Grown grown) {
        JsonText json = new JsonText()
                .open('{')
                .number("fitted", grown.fitted())
                .text("stopped_by", grown.stoppedBy())
                .key("reached")
                .bool(grown.reached());
        maybe(json.key("first_dark"), grown.firstDark().map(Integer::doubleValue));
        points(json.text("dark", grown.darkId()), grown.points());
        return json.close('}').toString();
    }

    static String limited(Limited limited) {
        JsonText json = new JsonText().open('{');
        maybe(json.key("farthest"), limited.farthest());
        json.text("text", limited.farthest().map(limited.heading()::text).orElse("–"));
        maybe(json.key("beyond"), limited.beyond());
        points(json.key("monotonic").bool(limited.monotonic()), limited.points());
        return json.close('}').toString();
    }

    /** A line a figure and a column an expression; all of it once more by expression. */
    static String scatter(List<Scatter> all) {
        JsonText json = new JsonText().open('{').key("columns").open('[');
        column(json, "figure", "");
        all.forEach(scatter -> column(
                json,
                scatter.heading().name(),
                isCondition(scatter) ? "%" : scatter.heading().unit().symbol()));
        json.close(']').key("points").open('[');
        line(
                json,
                "mean",
                all.stream().map(s -> isCondition(s) ? Double.NaN : s.mean()).toList());
        line(
                json,
                "deviation",
                all.stream()
                        .map(s -> isCondition(s) ? Double.NaN : s.deviation())
                        .toList());
        for (int i = 0; i < LEVELS.size(); i++) {
            int level = i;
            line(
                    json,
                    LEVELS.get(i),
                    all.stream()
                            .map(s -> isCondition(s) ? Double.NaN : s.levels().get(level))
                            .toList());
        }
        line(
                json,
                "failing",
                all.stream().map(s -> isCondition(s) ? s.failing() : Double.NaN).toList());
        json.close(']').key("read").open('{');
        all.forEach(scatter -> {
            json.key(scatter.heading().name()).open('{');
            json.number("runs", (double) scatter.runs())
                    .number("without", (double) scatter.without())
                    .number("mean", scatter.mean())
                    .number("deviation", scatter.deviation());
            for (int i = 0; i < LEVELS.size(); i++) {
                json.number(LEVELS.get(i), scatter.levels().get(i));
            }
            json.number("failing", scatter.failing())
                    .number("failing_least", scatter.failingLeast())
                    .number("failing_most", scatter.failingMost())
                    .close('}');
        });
        return json.close('}').close('}').toString();
    }

    private static boolean isCondition(Scatter scatter) {
        return scatter.heading().type() == Type.Plain.YES_NO;
    }

    private static void line(JsonText json, String name, List<Double> values) {
        json.open('[').text(name);
        values.forEach(json::number);
        json.close(']');
    }

    static String effects(Effects effects) {
        String unit = effects.read().unit().symbol();
        JsonText json = new JsonText()
                .open('{')
                .text("read", effects.read().name())
                .number("now", effects.now())
                .number("without", effects.without())
                .key("columns")
                .open('[');
        for (String name : List.of("input", "now", "low", "high")) {
            column(json, name, "");
        }
        String difference = effects.read().type() == Type.Plain.TEMPERATURE ? "K" : unit;
        column(json, "down", unit);
        column(json, "up", unit);
        column(json, "effect", difference);
        json.close(']').key("points").open('[');
        for (Effect effect : effects.effects()) {
            Heading input = effect.input();
            json.open('[')
                    .text(input.name())
                    .text(input.text(effect.now()))
                    .text(input.text(effect.low()))
                    .text(input.text(effect.high()))
                    .number(effect.down())
                    .number(effect.up())
                    .number(effect.size())
                    .close(']');
        }
        return json.close(']').close('}').toString();
    }

    static String room(List<Fit> fits) {
        JsonText json = new JsonText().open('{').key("columns").open('[');
        for (String name : List.of("node", "kind", "copy", "more", "ports", "stopped_by")) {
            column(json, name, "");
        }
        json.close(']').key("points").open('[');
        for (Fit fit : fits) {
            json.open('[')
                    .text(fit.node())
                    .text(fit.kind())
                    .text(fit.pattern())
                    .number(fit.more())
                    .number(fit.ports())
                    .text(fit.stoppedBy())
                    .close(']');
        }
        return json.close(']').close('}').toString();
    }

    private static void maybe(JsonText json, Optional<Double> number) {
        json.number(number.orElse(Double.NaN));
    }

    private static void points(JsonText json, Points points) {
        List<Heading> columns = points.columns();
        json.key("columns").open('[');
        columns.forEach(heading ->
                column(json, heading.name(), heading.isNumber() ? heading.unit().symbol() : ""));
        json.close(']').key("points").open('[');
        for (int point = 0; point < points.size(); point++) {
            json.open('[');
            for (int i = 0; i < columns.size(); i++) {
                cell(json, columns.get(i), points.inside(point, i), points.text(point, i));
            }
            json.close(']');
        }
        json.close(']');
    }

    private static void cell(JsonText json, Heading heading, double inside, String text) {
        if (heading.isNumber()) {
            json.number(inside);
        } else if (Double.isNaN(inside) && !heading.isText()) {
            json.number(Double.NaN);
        } else if (heading.type() == Type.Plain.YES_NO) {
            json.bool(inside != 0);
        } else {
            json.text(text);
        }
    }

    private static void column(JsonText json, String name, String unit) {
        json.open('{').text("name", name).text("unit", unit).close('}');
    }
}
