package farwatt.engine;

import farwatt.language.FaultKind;
import farwatt.language.Formula;
import farwatt.language.Frame;
import farwatt.report.Messages;
import farwatt.report.Place;
import farwatt.report.Span;

/** Works out formulas of cells; a fault that begins in one carries the cell as its origin. */
final class Cells implements CellVertex.Evaluator {
    private final Layout layout;
    private final Faults faults;
    private final Frame frame;
    private Place origin = Place.NONE;

    Cells(Layout layout, Faults faults) {
        this.layout = layout;
        this.faults = faults;
        frame = new Frame(this::raise);
    }

    Frame frame() {
        return frame;
    }

    @Override
    public double value(Bound bound, Col col, int place) {
        origin = place(col, place);
        return bound.planned().formula().value(frame.at(col.base + place));
    }

    /** Works out a formula that stands in no row. */
    double ask(Formula formula) {
        origin = Place.NONE;
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

    private double raise(FaultKind kind, Span span) {
        return faults.raise(new Fault(Fault.Kind.ARITHMETIC, origin, origin.text() + ": " + Messages.text(kind)));
    }
}
