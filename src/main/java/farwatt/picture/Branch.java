package farwatt.picture;

import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;

/** A node of a tree while it is laid out: who it is, what hangs on it, where it comes to stand. */
final class Branch {
    static final int NO_RUN = -1;

    final Table table;
    final int place;
    final String id;
    /** Place of the run that feeds it. */
    final int run;

    final List<Branch> children = new ArrayList<>();

    /** Column of cards it stands in, counted from its tree's source. */
    int column;
    /** Which of the lanes above its row the line to it takes, counted from the card up; 0 for straight in. */
    int lane;
    /** Height of its middle above or below its parent's. */
    double down;
    /** Middle in the drawing. */
    double y;
    /** Left edge of its tree's first column in the drawing. */
    double left;
    /** How far its rail reaches above and below its middle. */
    double railTop;

    double railBottom;

    Branch(Table table, int place, String id, int run) {
        this.table = table;
        this.place = place;
        this.id = id;
        this.run = run;
    }

    boolean isLeaf() {
        return children.isEmpty();
    }
}
