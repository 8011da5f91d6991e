package farwatt.review;

import farwatt.engine.Corner;
import farwatt.report.Level;
import java.util.Collections;
import java.util.EnumMap;
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
        Verdict verdict, Map<Corner, CornerVerdict> corners, List<Finding> findings, List<String> cautions) {
    public Review {
        corners = Collections.unmodifiableMap(new EnumMap<>(corners));
        findings = List.copyOf(findings);
        cautions = List.copyOf(cautions);
    }

    /** How many findings fail: the plan's {@code fails}. */
    public int fails() {
        return count(Level.FAIL);
    }

    /** How many findings warn: the plan's {@code warnings}. */
    public int warnings() {
        return count(Level.WARN);
    }

    private int count(Level level) {
        return (int) findings.stream().filter(f -> f.level() == level).count();
    }
}
