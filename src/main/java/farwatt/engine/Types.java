package farwatt.engine;

import farwatt.catalogue.Kind;
import farwatt.language.Type;
import farwatt.language.Wanted;
import farwatt.plan.Table;
import farwatt.quantity.Units;

/** Kinds of the catalogue as types of the language. */
final class Types {
    private final Units units;

    Types(Units units) {
        this.units = units;
    }

    Type of(Kind kind) {
        if (kind instanceof Kind.Quantity quantity) {
            return Type.of(quantity.unit(units));
        }
        if (kind instanceof Kind.Choice choice) {
            return new Type.Choice(choice.words());
        }
        if (kind instanceof Kind.RowOf row) {
            return new Type.RowOf(
                    row.tables().size() == 1 ? RowKinds.of(row.tables().get(0)) : both(row));
        }
        if (kind instanceof Kind.Gauge) {
            return Type.Plain.GAUGE;
        }
        return kind instanceof Kind.YesNo ? Type.Plain.YES_NO : Type.Plain.TEXT;
    }

    private static String both(Kind.RowOf row) {
        return row.tables().contains(Table.SOURCES) ? RowKinds.NODE : RowKinds.FED;
    }

    /** What a cell of this kind asks of an expression. */
    Wanted wanted(Kind kind) {
        return kind instanceof Kind.Quantity quantity ? Wanted.in(quantity.unit(units)) : gaugeOr(kind);
    }

    private Wanted gaugeOr(Kind kind) {
        return kind instanceof Kind.Gauge ? Wanted.in(units.need("AWG")) : Wanted.a(of(kind));
    }
}
