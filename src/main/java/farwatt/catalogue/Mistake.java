package farwatt.catalogue;

import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;

/** Readings of cells that their column cannot hold. */
final class Mistake {
    private Mistake() {}

    static Reading of(Name name, String row, CatalogueCode code, Object... parts) {
        return new Reading.Wrong(Notice.of(Level.FAIL, code, place(name, row), parts));
    }

    /** The cell's place; a constant of ours stands in the file under its row's {@code is}. */
    static Place place(Name name, String row) {
        return new Place(name.table().key(), row, name.table() == Table.PRACTICE ? "is" : name.key());
    }
}
