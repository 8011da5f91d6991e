package farwatt.window.studies;

import farwatt.picture.Chart;
import farwatt.report.Refusal;
import java.util.List;

/**
 * Charts that each stand for one figure.
 *
 * @param rows for every tip of the first chart's picture the row of the table; empty where tips are no rows
 */
record Charts(List<String> figures, List<Maker> makers, List<Integer> rows) implements Drawing {
    /** Makes one chart. */
    @FunctionalInterface
    interface Maker {
        Chart make() throws Refusal;
    }

    Charts {
        figures = List.copyOf(figures);
        makers = List.copyOf(makers);
        rows = List.copyOf(rows);
    }

    /** Nothing to be drawn. */
    static Charts none() {
        return new Charts(List.of(), List.of(), List.of());
    }

    static Charts one(String figure, Chart chart, List<Integer> rows) {
        return new Charts(List.of(figure), List.of(() -> chart), rows);
    }

    @Override
    public Drawn draw(int figure, List<Integer> at) throws Refusal {
        return new Drawn(makers.get(figure).make(), rows);
    }
}
