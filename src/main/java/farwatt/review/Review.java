package farwatt.review;

import farwatt.engine.Corner;
import java.util.List;
import java.util.Map;

/**
 * All that the review says of a plan.
 *
 * @param corners in the order of {@link Corner}, those that were looked at
 * @param findings worst first, then by table and row
 * @param cautions what always holds, for every result and workbook
 */
public record Review(
        Verdict verdict, Map<Corner, CornerVerdict> corners, List<Finding> findings, List<String> cautions) {}
