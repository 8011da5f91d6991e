package farwatt.engine;

import farwatt.catalogue.Bounds;
import farwatt.catalogue.Name;
import farwatt.language.Column;
import farwatt.plan.Table;
import org.jspecify.annotations.Nullable;

/**
 * One column of values: SI doubles, 1/0 for yes/no, the index of a word, a row's number, the number of a text, or a
 * fault (a NaN, see {@link Faults}). Rows are numbered over all tables; this column covers one table's.
 */
final class Col implements Column {
    final Table table;
    final Name name;
    /** The number of its name among {@link Faults}. */
    final int number;

    final int base;
    /** Values by place in the table. */
    double[] v;
    /** Rows that became different in the pass that is running. */
    final Marks changed = new Marks();
    /** What fills it; null where only cells do. */
    @Nullable
    Vertex maker;
    /** What a formula in it cannot give, once found out. */
    @Nullable
    Bounds bounds;

    Col(Table table, Name name, int number, int base, int size) {
        this.table = table;
        this.name = name;
        this.number = number;
        this.base = base;
        this.v = new double[size];
    }

    @Override
    public double at(int row) {
        return v[row - base];
    }

    String key() {
        return name.key();
    }

    /** Puts a value at a place and marks the row if it is another one than before. */
    void put(int place, double value) {
        if (!Faults.same(v[place], value)) {
            v[place] = value;
            changed.add(base + place);
        }
    }
}
