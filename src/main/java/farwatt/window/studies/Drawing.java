package farwatt.window.studies;

import farwatt.picture.Chart;
import farwatt.report.Refusal;
import java.util.List;

/** What can be drawn of a result: of several figures one, and of cells that cannot be axes one value each. */
public interface Drawing {
    /** The figures that can be drawn; none where there is no picture. */
    List<String> figures();

    /** The cells that are held at one value each, in order. */
    default List<String> held() {
        return List.of();
    }

    /** The values that such a cell can be held at. */
    default List<String> values(int held) {
        return List.of();
    }

    /**
     * Draws; may take a moment.
     *
     * @param figure which of the figures
     * @param at for every held cell which of its values
     * @throws Refusal if the figure is none that can be drawn
     */
    Drawn draw(int figure, List<Integer> at) throws Refusal;

    /**
     * A chart with what it stands for.
     *
     * @param rows for every tip of its picture the row of the table, −1 for none; empty where tips are no rows
     */
    record Drawn(Chart chart, List<Integer> rows) {
        public Drawn {
            rows = List.copyOf(rows);
        }
    }
}
