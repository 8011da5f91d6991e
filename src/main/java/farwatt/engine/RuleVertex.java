package farwatt.engine;

import java.util.List;

/** Fills a column by a rule of ours. */
final class RuleVertex extends RowVertex {
    private final RowRule rule;
    private final List<Dep> deps;

    RuleVertex(Col out, RowRule rule, List<Dep> deps) {
        super(out);
        this.rule = rule;
        this.deps = deps;
    }

    @Override
    double value(int place) {
        return Faults.sound(rule.at(place), out.base + place);
    }

    @Override
    List<Dep> deps() {
        return deps;
    }
}
