package farwatt.intake;

import java.math.BigDecimal;
import java.util.Optional;

/** What holds for every kind of cell. */
final class Cells {
    private Cells() {}

    /** Words and signs that say that nothing is known: N/A, tbd, ?, -. */
    static boolean isMissing(String text) {
        if (!text.isEmpty() && text.charAt(0) >= '0' && text.charAt(0) <= '9') {
            return false;
        }
        String folded = Spelling.fold(text);
        return folded.isEmpty() ? isDashes(text) : Words.isRemark("missing", folded);
    }

    /** Watts as text. */
    static String watts(double value) {
        return PowerReader.plain(BigDecimal.valueOf(value)) + " W";
    }

    private static boolean isDashes(String text) {
        for (int i = 0; i < text.length(); i++) {
            if ("-–—−.?_ /*".indexOf(text.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    /** Why a cell cannot be a quantity whatever its digits: an error, a formula without a result, a date. */
    static Optional<Remark> unusable(RawCell cell, String heading) {
        return switch (cell.form()) {
            case ERROR -> Optional.of(Remark.hold(IntakeSays.FORMULA_ERROR, heading, cell.text()));
            case MISSING -> Optional.of(Remark.hold(IntakeSays.FORMULA_EMPTY, heading, cell.text()));
            case DATE -> Optional.of(Remark.hold(IntakeSays.DATE_FOR_NUMBER, heading, cell.text()));
            case TEXT, NUMBER, WORKED_OUT -> Optional.empty();
        };
    }
}
