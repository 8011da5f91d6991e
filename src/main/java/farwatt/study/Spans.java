package farwatt.study;

import farwatt.engine.Value;
import farwatt.language.Type;
import farwatt.plan.Cell;
import farwatt.quantity.Decimal;
import farwatt.quantity.Dimension;
import farwatt.quantity.Reader;
import farwatt.quantity.Show;
import farwatt.quantity.Typed;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Refusal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads the values that one cell is to take. */
final class Spans {
    private static final int MOST_STEPS = 10_000_000;
    private static final double MEETS = 1e-9;

    private final Ground ground;
    private final Heading heading;
    private final Value now;
    private final Units units;

    Spans(Ground ground, Heading heading, Value now) {
        this.ground = ground;
        this.heading = heading;
        this.now = now;
        this.units = ground.units();
    }

    Values read(String text) throws Refusal {
        if (heading.type() == Type.Plain.UNKNOWN) {
            throw Refusal.of(StudyCode.NO_TYPE, heading.name());
        }
        if (!heading.isNumber()) {
            return list(text);
        }
        int dots = text.indexOf("..");
        if (dots >= 0) {
            return span(text, dots);
        }
        for (String sign : List.of("±", "+-", "~")) {
            int at = text.indexOf(sign);
            if (at > 0) {
                Values.Law law = sign.equals("~") ? Values.Law.NORMAL : Values.Law.UNIFORM;
                return band(
                        law,
                        text.substring(0, at),
                        text.substring(at + sign.length()).strip());
            }
        }
        return list(text);
    }

    private Values list(String text) throws Refusal {
        List<Setting> all = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            all.add(setting(part.strip()));
        }
        return new Values.Listed(all);
    }

    private Setting setting(String text) throws Refusal {
        Type type = heading.type();
        if (heading.isNumber()) {
            Typed typed = typed(text);
            return new Setting(Cell.text(typed.text()), typed.inside());
        }
        if (type == Type.Plain.YES_NO && (text.equals("yes") || text.equals("no"))) {
            return new Setting(Cell.text(text), text.equals("yes") ? 1 : 0);
        }
        if (type instanceof Type.Choice choice && choice.words().contains(text)) {
            return new Setting(Cell.text(text), choice.words().indexOf(text));
        }
        boolean row =
                type instanceof Type.RowOf && ground.plan().find(unquoted(text)).isPresent();
        if (row || type == Type.Plain.TEXT) {
            return new Setting(Cell.text(unquoted(text)), Double.NaN);
        }
        throw Refusal.of(StudyCode.NO_VALUE, text, heading.name(), example());
    }

    private static String unquoted(String text) {
        boolean quoted = text.length() > 1 && (text.startsWith("'") || text.startsWith("\""));
        return quoted && text.endsWith(text.substring(0, 1)) ? text.substring(1, text.length() - 1) : text;
    }

    private Typed typed(String text) throws Refusal {
        Optional<Typed> read = Reader.read(text, units, Decimal.POINT);
        if (read.isEmpty()) {
            throw Refusal.of(StudyCode.NO_VALUE, text.isBlank() ? "nothing" : text, heading.name(), example());
        }
        Unit unit = heading.unit();
        boolean bare = read.get().unit().equals(Unit.ONE) && !unit.equals(Unit.ONE);
        Typed typed = bare ? read.get().in(unit) : read.get();
        if (!typed.unit().sameMeasure(unit)) {
            throw Refusal.of(
                    StudyCode.OTHER_MEASURE,
                    text,
                    heading.name(),
                    unit.symbol().isEmpty() ? "plain numbers" : unit.symbol());
        }
        return typed;
    }

    private Values span(String text, int dots) throws Refusal {
        String rest = text.substring(dots + 2);
        int by = rest.indexOf(" by ");
        Typed from = typed(text.substring(0, dots).strip());
        Typed to = typed((by < 0 ? rest : rest.substring(0, by)).strip());
        if (by < 0) {
            return new Values.Span(from.inside(), to.inside(), Optional.empty());
        }
        String step = rest.substring(by + 4).strip();
        return new Values.Span(from.inside(), to.inside(), Optional.of(steps(from, to, step, text)));
    }

    /** Steps in the digits that were typed where all have one unit: ten steps of 0.1 m are 1 m to the last bit. */
    private double[] steps(Typed from, Typed to, String text, String whole) throws Refusal {
        Typed step = step(text);
        double by = Math.copySign(step.inside(), to.inside() - from.inside());
        double many = Math.floor((to.inside() - from.inside()) / by + MEETS);
        if (!(many < MOST_STEPS)) {
            throw Refusal.of(StudyCode.TOO_MANY_STEPS, whole, MOST_STEPS);
        }
        double[] all = new double[(int) many + 1];
        boolean digits = from.inches().isEmpty()
                && step.inches().isEmpty()
                && (step.unit().equals(from.unit()) || isKelvinOf(from.unit(), step.unit()));
        if (digits) {
            BigDecimal start = new BigDecimal(from.number());
            BigDecimal each = new BigDecimal(step.number());
            BigDecimal signed = by < 0 ? each.negate() : each;
            for (int i = 0; i < all.length; i++) {
                all[i] = from.unit()
                        .toInside(start.add(signed.multiply(BigDecimal.valueOf(i)))
                                .doubleValue());
            }
        } else {
            Arrays.setAll(all, i -> from.inside() + i * by);
        }
        return all;
    }

    private static boolean isKelvinOf(Unit from, Unit step) {
        return from.form() == Unit.Form.CELSIUS && step.symbol().equals("K");
    }

    private Typed step(String text) throws Refusal {
        Optional<Typed> read = Reader.read(text, units, Decimal.POINT);
        Unit unit = difference();
        Optional<Typed> step = read.map(t -> t.unit().equals(Unit.ONE) ? t.in(unit) : t)
                .filter(t -> t.unit().sameMeasure(unit) && t.inside() > 0);
        if (step.isEmpty()) {
            throw Refusal.of(
                    StudyCode.STEP_MEASURE,
                    text,
                    heading.name(),
                    unit.symbol().isEmpty() ? "plain numbers" : unit.symbol());
        }
        return step.get();
    }

    /** The unit of a difference between two values. */
    private Unit difference() {
        return heading.unit().isAbsoluteTemperature() ? units.need("K") : heading.unit();
    }

    private Values band(Values.Law law, String about, String width) throws Refusal {
        Typed centre = typed(about.strip());
        Optional<Typed> read = Reader.read(width, units, Decimal.POINT);
        Unit unit = difference();
        boolean share = read.isPresent()
                && read.get().unit().symbol().equals("%")
                && !heading.unit().isAbsoluteTemperature()
                && !heading.unit().isGauge();
        boolean amount = read.isPresent()
                && !share
                && read.get().unit().sameMeasure(unit)
                && !(read.get().unit().equals(Unit.ONE) && !unit.dimension().equals(Dimension.NONE));
        if ((!share && !amount) || read.get().inside() < 0) {
            throw Refusal.of(
                    StudyCode.BAND_MEASURE,
                    width,
                    heading.name(),
                    unit.symbol().isEmpty() ? "plain numbers" : unit.symbol());
        }
        double inside = share
                ? Math.abs(centre.inside()) * read.get().inside()
                : read.get().inside();
        return new Values.Band(law, centre.inside(), inside);
    }

    private String example() {
        if (heading.type() instanceof Type.Choice choice) {
            return String.join(", ", choice.words());
        }
        if (heading.type() == Type.Plain.YES_NO) {
            return "yes, no";
        }
        return heading.isNumber() && now.isPresent()
                ? Show.exact(now.inside(), now.unit())
                : Show.text(heading.unit().toInside(1), heading.unit());
    }
}
