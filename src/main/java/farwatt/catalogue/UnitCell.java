package farwatt.catalogue;

import farwatt.plan.Cell;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;

/** A column that names units: a text whose known spellings have one plain form. */
final class UnitCell implements CellReader {
    private final TextCell plain;
    private final Units units;

    UnitCell(Name name, Units units) {
        this.plain = new TextCell(name);
        this.units = units;
    }

    @Override
    public Reading read(String row, Cell cell) {
        Reading reading = plain.read(row, cell);
        if (!(reading instanceof Reading.TextValue text)) {
            return reading;
        }
        String spelling = text.text().strip();
        return new Reading.TextValue(units.of(spelling).map(Unit::symbol).orElse(text.text()));
    }
}
