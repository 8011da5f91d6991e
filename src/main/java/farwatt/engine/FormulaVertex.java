package farwatt.engine;

import java.util.List;

/** A column of a person's own that is one expression for every row. */
final class FormulaVertex extends RowVertex {
    private final Bound bound;
    private final CellVertex.Evaluator evaluator;

    FormulaVertex(Col out, Bound bound, CellVertex.Evaluator evaluator) {
        super(out);
        this.bound = bound;
        this.evaluator = evaluator;
    }

    Bound bound() {
        return bound;
    }

    @Override
    double value(int place) {
        return evaluator.value(bound, out, place);
    }

    @Override
    List<Dep> deps() {
        return bound.deps();
    }

    @Override
    void reads(int row, CellReads.Visitor visitor) {
        CellReads.cells(bound.planned().uses(), row, visitor);
    }
}
