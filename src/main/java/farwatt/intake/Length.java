package farwatt.intake;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What a cell says about a length.
 *
 * @param text canonical, in the unit it was written in
 * @param metres the same in metres
 * @param remarks what is to be said
 */
record Length(Optional<String> text, Optional<BigDecimal> metres, List<Remark> remarks) {
    Length {
        remarks = List.copyOf(remarks);
    }

    static Length none(List<Remark> remarks) {
        return new Length(Optional.empty(), Optional.empty(), remarks);
    }
}
