package farwatt.script;

import java.util.Optional;

/**
 * A picture of a result.
 *
 * @param table the whole result
 * @param column the name of the column that is drawn
 * @param file a plain file name if it is to be saved
 */
public record ResultPicture(ResultTable table, String column, Optional<String> file) {}
