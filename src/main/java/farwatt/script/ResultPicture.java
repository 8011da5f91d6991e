package farwatt.script;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A picture of a result.
 *
 * @param table the whole result
 * @param column the name of the column that is drawn
 * @param varied the columns of a sweep that were varied, in order; empty for other results
 * @param read what the effects of inputs are effects on; "" for other results
 * @param now its value as the plan stands, SI
 * @param file a plain file name if it is to be saved
 */
public record ResultPicture(
        ResultTable table, String column, List<String> varied, String read, OptionalDouble now, Optional<String> file) {
    public ResultPicture {
        varied = List.copyOf(varied);
    }
}
