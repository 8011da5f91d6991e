package farwatt.picture;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Values over two axes, as a picture: each cell coloured and, where there is room, with its number; a line parts the
 * cells that reach the target from those that do not.
 *
 * @param caption what stands above
 * @param across the axis from left to right
 * @param down the axis from top to bottom
 * @param cells the values
 * @param of what the values are
 * @param target SI; empty for no line
 */
public record HeatMap(Caption caption, Scale across, Scale down, Cells cells, Measure of, OptionalDouble target)
        implements Chart {
    /** The values by column and row, SI; a NaN where there is none. */
    @FunctionalInterface
    public interface Cells {
        double at(int column, int row);
    }

    int columns() {
        return across.steps().size();
    }

    int rows() {
        return down.steps().size();
    }

    double value(int column, int row) {
        double value = cells.at(column, row);
        return Double.isFinite(value) ? value : Double.NaN;
    }

    double least() {
        return all().stream().mapToDouble(v -> v).min().orElse(0);
    }

    double most() {
        return all().stream().mapToDouble(v -> v).max().orElse(0);
    }

    private List<Double> all() {
        return IntStream.range(0, rows() * columns())
                .mapToObj(i -> value(i % columns(), i / columns()))
                .filter(v -> !Double.isNaN(v))
                .toList();
    }

    /** True if every cell has a value. */
    boolean isWhole() {
        return all().size() == rows() * columns();
    }

    /** True where a cell has a value that reaches the target. */
    boolean reaches(int column, int row) {
        return target.isPresent() && value(column, row) >= target.getAsDouble();
    }

    @Override
    public Picture picture(Palette palette) {
        return new HeatPicture(this, palette);
    }
}
