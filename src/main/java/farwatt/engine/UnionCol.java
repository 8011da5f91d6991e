package farwatt.engine;

import farwatt.language.Column;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** The columns of one name in several tables, read as one; a row whose table lacks the name gives a fault. */
final class UnionCol implements Column {
    private final List<Col> parts;
    private final IntToDoubleFunction missing;

    /** @param missing gives the fault of a row that has no such name */
    UnionCol(List<Col> parts, IntToDoubleFunction missing) {
        this.parts = parts;
        this.missing = missing;
    }

    List<Col> parts() {
        return parts;
    }

    @Override
    public double at(int row) {
        for (Col col : parts) {
            int place = row - col.base;
            if (place >= 0 && place < col.v.length) {
                return col.v[place];
            }
        }
        return missing.applyAsDouble(row);
    }
}
