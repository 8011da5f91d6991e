package farwatt.picture;

import farwatt.study.Heading;
import farwatt.study.Points;
import java.util.List;

/** A table of figures to be drawn: points of a study, or a table that was made otherwise. */
public interface Figures {
    /** What stands above the columns. */
    List<Heading> columns();

    /** How many points there are. */
    int size();

    /** The inside value of a point in a column; a NaN where there is none, or where it is a text or a row. */
    double inside(int point, int column);

    /** The value as a person reads it. */
    String text(int point, int column);

    /** The points of a study. */
    static Figures of(Points points) {
        return new Figures() {
            @Override
            public List<Heading> columns() {
                return points.columns();
            }

            @Override
            public int size() {
                return points.size();
            }

            @Override
            public double inside(int point, int column) {
                return points.inside(point, column);
            }

            @Override
            public String text(int point, int column) {
                return points.text(point, column);
            }
        };
    }
}
