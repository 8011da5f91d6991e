package farwatt.engine;

import farwatt.language.Type;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import java.util.Optional;

/**
 * A value as people and programs outside read it.
 *
 * @param inside SI; 1/0, place of a word or number of a text where the type says so; without meaning if there is a
 *     fault
 * @param type how to read it
 * @param unit in which a quantity is shown
 * @param words the text of a text, a word or a row; "" for others
 * @param fault why there is no value
 */
public record Value(double inside, Type type, Unit unit, String words, Optional<Fault> fault) {
    public boolean isPresent() {
        return fault.isEmpty();
    }

    /** True for a quantity, a temperature or a gauge. */
    public boolean isNumber() {
        return type instanceof Type.Amount || type == Type.Plain.TEMPERATURE || type == Type.Plain.GAUGE;
    }

    /** As a person reads it, with unit; a dash where there is none. */
    public String text() {
        if (fault.isPresent()) {
            return "–";
        }
        if (type == Type.Plain.YES_NO) {
            return inside == 0 ? "no" : "yes";
        }
        return isNumber() ? Show.text(inside, unit) : words;
    }
}
