package farwatt.language;

import java.util.List;
import java.util.Optional;

/**
 * A gather ready to be worked out, with what the host needs to know of it.
 *
 * @param expr as it stands in the text
 * @param set the table's rows
 * @param base gives the node after {@code on} or {@code under}, read outside the gather
 * @param baseWays how that node is reached
 * @param body what is gathered; empty for a count
 * @param where which rows count
 * @param type of the result
 * @param uses what body and condition look at; {@link Way.Start#HERE} is a row of the gather
 * @param formula gives the result
 */
public record GatherPlan(
        Expr.Gather expr,
        RowSet set,
        Optional<Formula> base,
        List<Way> baseWays,
        Optional<Formula> body,
        Optional<Formula> where,
        Type type,
        Uses uses,
        Formula formula) {

    /** All, on or under. */
    public Reach reach() {
        return expr.rows().reach();
    }

    /** Equal for gathers that mean the same wherever they stand, if they need no row from outside. */
    public String key() {
        return Language.print(expr);
    }

    /** True if the result is the same in every cell. */
    public boolean standsAlone() {
        return reach() == Reach.ALL && !uses.needsSelf();
    }
}
