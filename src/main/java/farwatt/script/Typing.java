package farwatt.script;

import farwatt.catalogue.CatalogueCode;
import farwatt.catalogue.Reading;
import farwatt.catalogue.Wording;
import farwatt.plan.Cell;
import farwatt.quantity.Decimal;
import farwatt.report.Notice;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import org.graalvm.polyglot.Value;

/**
 * Turns what a script hands over into a cell, as if it were typed; what a cell cannot hold is refused.
 *
 * @param cell in canonical form
 * @param reading what it was understood as
 */
record Typing(Cell cell, Reading reading) {
    private static final Set<String> UNIT_MISSING =
            Set.of(CatalogueCode.TAKEN_AS.key(), CatalogueCode.TAKEN_IMPLAUSIBLE.key());

    /** Beyond this not every whole number is a double of its own. */
    private static final double MOST_EXACT = 0x1p53;

    static Typing of(Target target, Value value, Wording wording) {
        Cell typed = cell(target, value);
        Reading reading = target.reader().read(target.row(), typed);
        if (reading instanceof Reading.Wrong wrong) {
            throw ScriptFailure.said(wrong.notice().line());
        }
        if (reading instanceof Reading.Empty) {
            throw ScriptFailure.of(ScriptCode.BLANK, place(target));
        }
        if (reading instanceof Reading.Literal literal) {
            Optional<Notice> unit = literal.notice().filter(n -> UNIT_MISSING.contains(n.code()));
            if (unit.isPresent()) {
                throw ScriptFailure.of(
                        ScriptCode.NO_UNIT,
                        typed.text(),
                        place(target),
                        literal.typed().text());
            }
        }
        Cell whole = typed.form() == Cell.Form.TEXT
                ? target.reader().typed(typed.text(), Decimal.POINT, wording)
                : target.reader().canonical(typed, wording);
        return new Typing(whole, reading);
    }

    private static Cell cell(Target target, Value value) {
        if (value.isString()) {
            return Cell.text(value.asString());
        }
        if (value.isBoolean()) {
            return value.asBoolean() ? Cell.YES : Cell.NO;
        }
        if (value.isNumber()) {
            return Cell.number(number(target, value).stripTrailingZeros().toPlainString());
        }
        if (value.isNull()) {
            throw ScriptFailure.of(ScriptCode.NOTHING, place(target), Shown.of(value));
        }
        throw ScriptFailure.of(ScriptCode.NO_CELL_VALUE, place(target), Shown.of(value));
    }

    /** Whole numbers with more digits than arithmetic keeps are refused: their last digits are others already. */
    private static BigDecimal number(Target target, Value value) {
        if (!value.fitsInDouble()) {
            return new BigDecimal(value.asBigInteger());
        }
        double number = value.asDouble();
        if (!Double.isFinite(number)) {
            throw ScriptFailure.of(ScriptCode.NOT_FINITE, place(target), Shown.of(value));
        }
        if (Math.abs(number) > MOST_EXACT) {
            throw ScriptFailure.of(ScriptCode.TOO_MANY_DIGITS, place(target), Shown.of(value));
        }
        return new BigDecimal(Double.toString(number));
    }

    private static String place(Target target) {
        return target.row().isEmpty() ? target.name() : target.row() + " · " + target.name();
    }
}
