package farwatt.engine;

import farwatt.catalogue.Bounds;
import farwatt.catalogue.CatalogueCode;
import farwatt.catalogue.Kind;
import farwatt.language.FaultKind;
import farwatt.language.Formula;
import farwatt.language.Frame;
import farwatt.quantity.Show;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import farwatt.report.Place;
import farwatt.report.Span;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Works out formulas of cells; a fault that begins in one carries the cell as its origin. */
final class Cells implements CellVertex.Evaluator {
    private static final int NOWHERE = -1;

    private final Layout layout;
    private final Faults faults;
    private final Frame frame;
    private final Units units;
    private final Map<Col, Bounds> bounds = new HashMap<>();
    /** Where the formula stands that is being worked out: a column's place, a row as a whole, or nowhere. */
    private @Nullable Col originCol;

    private int originAt = NOWHERE;

    Cells(Layout layout, Faults faults, Units units) {
        this.layout = layout;
        this.units = units;
        this.faults = faults;
        frame = new Frame(this::raise);
    }

    @Override
    public double cell(Bound bound, Col col, int place) {
        double value = value(bound, col, place);
        if (Double.isNaN(value) || !(col.name.kind() instanceof Kind.Quantity kind)) {
            return value;
        }
        Optional<CatalogueCode> broken = bounds.computeIfAbsent(col, c -> Bounds.of(c.name, kind.unit(units)))
                .broken(value);
        if (broken.isEmpty()) {
            return value;
        }
        String said = Show.text(value, kind.unit(units));
        Place origin = origin();
        return faults.raise(
                new Fault(Fault.Kind.UNREADABLE, origin, origin.text() + ": " + Messages.text(broken.get(), said)));
    }

    /** The frame on a row of a gather; a fault that begins there carries the row as its origin. */
    Frame at(int row) {
        originCol = null;
        originAt = row;
        return frame.at(row);
    }

    @Override
    public double value(Bound bound, Col col, int place) {
        originCol = col;
        originAt = place;
        return bound.planned().formula().value(frame.at(col.base + place));
    }

    /** Works out a formula that stands in no row. */
    double ask(Formula formula) {
        originCol = null;
        originAt = NOWHERE;
        return formula.value(frame.at(0));
    }

    @Override
    public double empty(Col col, int place) {
        return faults.lack(Lack.EMPTY, col.base + place, col.number);
    }

    Place place(Col col, int place) {
        int row = col.base + place;
        // a gather that many read stands in no row
        return row < layout.rows() ? layout.place(row, col.key()) : new Place("", "", col.key());
    }

    private Place origin() {
        if (originCol != null) {
            return place(originCol, originAt);
        }
        return originAt == NOWHERE ? Place.NONE : layout.place(originAt);
    }

    private double raise(FaultKind kind, Span span) {
        Place origin = origin();
        return faults.raise(new Fault(Fault.Kind.ARITHMETIC, origin, origin.text() + ": " + Messages.text(kind)));
    }
}
