package farwatt.engine;

import farwatt.report.Code;
import farwatt.report.Messages;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Faults as values: a fault travels through columns and formulas as a NaN whose payload is its number here, so that a
 * result without a value still knows where that began. The same fault always has the same number. One a calculation;
 * not for several threads.
 */
final class Faults {
    private static final long QUIET = 0x7ff8_0000_0000_0000L;
    private static final long NUMBER = 0x0000_0000_ffff_ffffL;

    private final List<Fault> known = new ArrayList<>();
    private final Map<Fault, Integer> numbers = new HashMap<>();

    Faults() {
        // number 0 is a plain NaN: no fault of ours may look like it
        raise(new Fault(Fault.Kind.ARITHMETIC, Place.NONE, Messages.text(EngineCode.NO_NUMBER)));
    }

    /** The value that stands for this fault. */
    double raise(Fault fault) {
        Integer number = numbers.get(fault);
        if (number == null) {
            number = known.size();
            known.add(fault);
            numbers.put(fault, number);
        }
        return Double.longBitsToDouble(QUIET | number);
    }

    double raise(Fault.Kind kind, Place origin, Code code, Object... parts) {
        return raise(new Fault(kind, origin, Messages.text(code, parts)));
    }

    /** The fault that a NaN stands for. */
    Fault of(double value) {
        int number = (int) (Double.doubleToRawLongBits(value) & NUMBER);
        return known.get(number < known.size() ? number : 0);
    }

    /** True for a NaN that is no fault of ours: a rule that has no value to give. */
    static boolean isPlain(double value) {
        return (Double.doubleToRawLongBits(value) & NUMBER) == 0;
    }

    /** True when two results are the same to the last bit, a fault being the same as itself. */
    static boolean same(double a, double b) {
        return Double.doubleToRawLongBits(a) == Double.doubleToRawLongBits(b);
    }
}
