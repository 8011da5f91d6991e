package farwatt.file;

import farwatt.plan.Plan;
import farwatt.report.Notice;
import java.util.List;

/**
 * A plan file as read.
 *
 * @param plan everything that was in it
 * @param notices what can be seen only in the file; mistakes in cells are found by whoever reads the plan's cells
 * @param access whether it may be saved
 * @param fingerprint of the bytes it was read from
 */
public record Opened(Plan plan, List<Notice> notices, Access access, Fingerprint fingerprint) {
    public Opened {
        notices = List.copyOf(notices);
    }
}
