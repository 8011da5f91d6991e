package farwatt.engine;

import farwatt.language.Checked;
import farwatt.language.Column;
import farwatt.language.Formula;
import farwatt.language.Frame;
import farwatt.language.Planned;
import farwatt.language.Read;
import farwatt.language.Ref;
import farwatt.language.Type;
import farwatt.language.Uses;
import farwatt.language.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * In place of an expression that uses something of which nobody knows what it is: a value that is empty, cannot be read
 * or needs itself. It has no value for the reason for which that has none.
 *
 * @param otherwise the fault where what is waited for has a value though its type is not known
 */
record Waiting(Column column, Way way, double otherwise) implements Formula {
    /** The first thing an expression uses whose type is not known. */
    static Optional<Ref> of(Checked checked) {
        return checked.known().stream()
                .map(Checked.Known::ref)
                .filter(Waiting::isUnknown)
                .findFirst();
    }

    private static boolean isUnknown(Ref ref) {
        return (ref instanceof Ref.Cell cell && cell.type() == Type.Plain.UNKNOWN)
                || (ref instanceof Ref.Reads reads && reads.type() == Type.Plain.UNKNOWN);
    }

    /** The expression as planned, its formula waiting instead. */
    static Planned on(Ref ref, Checked checked, Planned planned, double otherwise) {
        List<Read> reads = new ArrayList<>(planned.uses().reads());
        Column column = ref instanceof Ref.Cell cell ? cell.column() : ((Ref.Reads) ref).column();
        Way way = ref instanceof Ref.Cell cell
                ? new Way(Way.Start.FIXED, cell.row(), List.of())
                : reads.stream()
                        .filter(read -> read.column().equals(column))
                        .map(Read::way)
                        .findFirst()
                        // inside a gather any row may be meant
                        .orElse(new Way(Way.Start.ANY, -1, List.of()));
        reads.add(new Read(column, way, Type.Plain.UNKNOWN, checked.expr()));
        Uses uses = new Uses(reads, planned.uses().ways(), planned.uses().gathers());
        return new Planned(new Waiting(column, way, otherwise), Type.Plain.UNKNOWN, uses);
    }

    @Override
    public double value(Frame frame) {
        int row = CellReads.target(way, frame.row, frame.self);
        if (row < 0) {
            return otherwise;
        }
        double value = column.at(row);
        return Double.isNaN(value) ? value : otherwise;
    }
}
