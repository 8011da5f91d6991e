package farwatt.engine;

import farwatt.language.Column;
import java.util.List;

/** The columns of one name in several tables, read as one; a row whose table lacks the name gives a fault. */
final class UnionCol implements Column {
    private final List<Col> parts;
    private final double[] missing;

    /** @param missing by row: the fault of a row that has no such name */
    UnionCol(List<Col> parts, double[] missing) {
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
        return missing[row];
    }
}
