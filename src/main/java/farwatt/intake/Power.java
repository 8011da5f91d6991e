package farwatt.intake;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What a row says about watts.
 *
 * @param most most watts at the device
 * @param typical usual watts, where they differ
 * @param start watts when it starts
 * @param source how the most came about
 * @param original the cell
 * @param remarks what is to be said
 */
record Power(
        Optional<BigDecimal> most,
        Optional<BigDecimal> typical,
        Optional<BigDecimal> start,
        Source source,
        String original,
        List<Remark> remarks) {
    Power {
        remarks = List.copyOf(remarks);
    }

    /** Nothing was said. */
    static Power none(String original) {
        return new Power(Optional.empty(), Optional.empty(), Optional.empty(), Source.TYPED, original, List.of());
    }

    static Power held(String original, Remark why) {
        return new Power(Optional.empty(), Optional.empty(), Optional.empty(), Source.TYPED, original, List.of(why));
    }

    static Power of(BigDecimal most, Source source, String original, List<Remark> remarks) {
        return new Power(Optional.of(most), Optional.empty(), Optional.empty(), source, original, remarks);
    }

    boolean isHeld() {
        for (Remark remark : remarks) {
            if (remark.weight() == Remark.Weight.HOLD) {
                return true;
            }
        }
        return false;
    }

    Power withTypical(BigDecimal usual) {
        return new Power(most, Optional.of(usual), start, source, original, remarks);
    }

    Power withStart(BigDecimal starting) {
        return new Power(most, typical, Optional.of(starting), source, original, remarks);
    }
}
