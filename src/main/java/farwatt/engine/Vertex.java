package farwatt.engine;

import java.util.List;

/** Something that works out columns from columns. */
abstract class Vertex {
    /** What it reads; may change when a cell's expression does. */
    abstract List<Dep> deps();

    /** The columns it fills. */
    abstract List<Col> outs();

    /** Visits the cells that one row of it reads. */
    abstract void reads(int row, CellReads.Visitor visitor);

    /** Works everything out. */
    abstract void all();

    /** Works out what the marks on the columns it reads make necessary, and marks what became different. */
    abstract void some();
}
