package farwatt.language;

import farwatt.report.Span;

/** Where a formula reports that it has no value. */
@FunctionalInterface
public interface Faults {
    /**
     * Takes note of a fault.
     *
     * @param span the place in the text
     * @return the NaN that stands for it from now on
     */
    double raise(FaultKind kind, Span span);
}
