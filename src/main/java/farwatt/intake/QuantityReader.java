package farwatt.intake;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How many devices a row stands for.
 *
 * @param count 1 where nothing was said; 0 when the row stands for none
 * @param remarks what is to be said
 */
record QuantityReader(int count, List<Remark> remarks) {
    private static final int MOST = 1000;
    private static final Pattern COUNT = Pattern.compile(
            "[x×*]?\\s*(\\d{1,9}(?:[.,]\\d{1,9})?)\\s*(?:[x×*]|off|pcs?|st(?:k|ück|ck)?|szt|uds?|un|pz|ea|units?|devices?|nos)?\\.?");

    static QuantityReader read(RawCell cell, Column column) {
        if (cell.filled()) {
            return held(Remark.hold(IntakeSays.MERGED_QUANTITY, cell.text()));
        }
        String text = Spelling.lower(Spelling.tidy(cell.text()));
        Optional<Remark> unusable = Cells.unusable(cell, column.shown());
        if (unusable.isPresent()) {
            return held(unusable.get());
        }
        if (text.isEmpty() || Cells.isMissing(text)) {
            return new QuantityReader(1, List.of(Remark.change(IntakeSays.NO_QUANTITY)));
        }
        Matcher m = COUNT.matcher(text);
        if (!m.matches()) {
            return held(Remark.hold(IntakeSays.NOT_A_COUNT, text));
        }
        BigDecimal value = new BigDecimal(m.group(1).replace(',', '.'));
        if (value.stripTrailingZeros().scale() > 0) {
            return held(Remark.hold(IntakeSays.NOT_WHOLE, text));
        }
        if (value.compareTo(BigDecimal.valueOf(MOST)) > 0) {
            return held(Remark.hold(IntakeSays.TOO_MANY, text, MOST));
        }
        int count = value.intValueExact();
        return new QuantityReader(count, count == 0 ? List.of(Remark.out(IntakeSays.QUANTITY_ZERO)) : List.of());
    }

    private static QuantityReader held(Remark why) {
        return new QuantityReader(1, List.of(why));
    }
}
