package farwatt.picture;

import farwatt.language.Type;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import java.util.List;

/**
 * What is shown along an axis: a name and the unit its values are shown in. Values themselves are SI inside.
 *
 * @param name as a person asked for it
 * @param unit for showing
 * @param words what the whole numbers from 0 on stand for; empty for quantities
 */
public record Measure(String name, Unit unit, List<String> words) {
    private static final int DIGITS = 3;

    public Measure {
        words = List.copyOf(words);
    }

    /** A quantity. */
    public Measure(String name, Unit unit) {
        this(name, unit, List.of());
    }

    /** What stands above a column of a study. */
    static Measure of(farwatt.study.Heading heading) {
        if (heading.type() == Type.Plain.YES_NO) {
            return new Measure(heading.name(), Unit.ONE, List.of("no", "yes"));
        }
        return heading.type() instanceof Type.Choice choice
                ? new Measure(heading.name(), Unit.ONE, choice.words())
                : new Measure(heading.name(), heading.unit());
    }

    /** Name and unit, for an axis. */
    String label() {
        String plain = Fit.plain(name);
        return unit.symbol().isEmpty() ? plain : plain + ", " + unit.symbol();
    }

    /** How a mark on an axis is labelled: a word at whole numbers only. */
    String mark(double shown, int digits) {
        if (words.isEmpty()) {
            return Show.number(shown, digits);
        }
        boolean whole = shown == Math.rint(shown) && shown >= 0 && shown < words.size();
        return whole ? words.get((int) shown) : " ";
    }

    /** A value with its unit; a dash where it is no number. */
    String text(double inside) {
        return words.isEmpty() ? Show.text(inside, unit, DIGITS) : word(inside);
    }

    private String word(double inside) {
        boolean whole = inside == Math.rint(inside) && inside >= 0 && inside < words.size();
        return whole ? words.get((int) inside) : "–";
    }

    /** The bare number in the unit, or the word. */
    String number(double inside) {
        if (!words.isEmpty()) {
            return word(inside);
        }
        return Double.isFinite(inside) ? Show.number(unit.fromInside(inside), DIGITS) : "–";
    }
}
