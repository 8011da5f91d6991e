package farwatt.workbook;

import farwatt.engine.Value;
import farwatt.quantity.Unit;

/** Values of the engine as cells: quantities in the unit in which they are shown, shares as ratios. */
final class Figure {
    private Figure() {}

    /** The value, or an empty cell where there is none. */
    static Entry of(Value value) {
        if (!value.isPresent()) {
            return Entry.NONE;
        }
        return value.isNumber() ? Entry.number(number(value.inside(), value.unit())) : Entry.words(value.text());
    }

    /** The number that stands in the cell for an inside value. */
    static double number(double inside, Unit unit) {
        return Form.of(unit) == Form.SHARE ? inside : unit.fromInside(inside);
    }

    /** The unit as headings show it; a cell with a share says per cent itself. */
    static String unit(Unit unit) {
        return unit.symbol().equals("%") ? "" : symbol(unit.symbol());
    }

    /** A unit's plain spelling as people write it. */
    static String symbol(String plain) {
        return plain.replace("ohm", "Ω")
                .replace("degC", "°C")
                .replace("degF", "°F")
                .replace("mm2", "mm²");
    }
}
