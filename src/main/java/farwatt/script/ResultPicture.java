package farwatt.script;

import java.util.List;
import java.util.Optional;

/**
 * A picture of a result.
 *
 * @param table the whole result
 * @param column the name of the column that is drawn
 * @param varied the columns of a sweep that were varied, in order; empty for other results
 * @param file a plain file name if it is to be saved
 */
public record ResultPicture(ResultTable table, String column, List<String> varied, Optional<String> file) {}
