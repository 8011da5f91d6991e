package farwatt.study;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Points of a study that are kept: a table of columns and rows. Not to be changed once handed out. */
public final class Points {
    private final List<Heading> columns;
    private double[] values;
    private final Map<Long, String> words = new HashMap<>();
    private final Map<Long, String> why = new HashMap<>();
    private int size;

    Points(List<Heading> columns, int room) {
        this.columns = List.copyOf(columns);
        values = new double[Math.max(1, room) * Math.max(1, columns.size())];
    }

    public List<Heading> columns() {
        return columns;
    }

    public int size() {
        return size;
    }

    /** The inside value of a point in a column; a NaN where there is none, or where it is a text or a row. */
    public double inside(int point, int column) {
        return values[point * columns.size() + column];
    }

    /** The value as a person reads it; a dash where there is none. */
    public String text(int point, int column) {
        String word = words.get(key(point, column));
        return word != null ? word : columns.get(column).text(inside(point, column));
    }

    /** Why there is no value; empty where there is one. */
    public Optional<String> why(int point, int column) {
        return Optional.ofNullable(why.get(key(point, column)));
    }

    /** Hands every point on. */
    public void to(Sink sink) throws java.io.IOException {
        for (int i = 0; i < size; i++) {
            sink.take(point(i));
        }
    }

    private Point point(int at) {
        return new Point() {
            @Override
            public long number() {
                return at;
            }

            @Override
            public double inside(int column) {
                return Points.this.inside(at, column);
            }

            @Override
            public String text(int column) {
                return Points.this.text(at, column);
            }

            @Override
            public Optional<String> why(int column) {
                return Points.this.why(at, column);
            }
        };
    }

    private long key(int point, int column) {
        return (long) point * columns.size() + column;
    }

    /** Takes one more point over. */
    void add(Point point) {
        int width = columns.size();
        if ((size + 1) * width > values.length) {
            values = Arrays.copyOf(values, values.length * 2);
        }
        for (int c = 0; c < width; c++) {
            double inside = point.inside(c);
            values[size * width + c] = inside;
            if (Double.isNaN(inside)) {
                long key = key(size, c);
                Optional<String> reason = point.why(c);
                if (reason.isPresent()) {
                    why.put(key, reason.get());
                } else {
                    words.put(key, point.text(c));
                }
            }
        }
        size++;
    }
}
