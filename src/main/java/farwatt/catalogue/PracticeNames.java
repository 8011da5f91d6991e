package farwatt.catalogue;

import farwatt.plan.Table;
import farwatt.standard.Constant;
import java.util.List;

/** The named constants that a plan may replace, each with a reason. They come from the standard room's data files. */
final class PracticeNames {
    private PracticeNames() {}

    static List<Name> all() {
        Define names = new Define(Table.PRACTICE);
        for (Constant c : Constant.all()) {
            names.constant(c.name(), Define.in(c.unit()), c.literal(), c.sentence(), c.source());
            if (!Double.isNaN(c.low())) {
                names.within(c.low(), c.high());
            }
        }
        return names.names();
    }
}
