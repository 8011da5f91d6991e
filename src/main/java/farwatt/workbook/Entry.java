package farwatt.workbook;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What goes into one cell.
 *
 * @param form another form than the column's, where rows differ in it
 */
public record Entry(Content content, Tone tone, Optional<Form> form) {
    /** The kinds of content. */
    public sealed interface Content {}

    /** Nothing; the reason stands elsewhere in the row. */
    public record Blank() implements Content {}

    public record Words(String text) implements Content {}

    /** A finite number in the unit of its column (a ratio for a share), never a negative zero. */
    public record Amount(double value) implements Content {}

    public record Day(LocalDate date) implements Content {}

    /**
     * A formula of the workbook with the result that we worked out.
     *
     * @param formula with {@code {key}} for the cell of another column in the same row; see {@link Places}
     */
    public record Live(String formula, Content result) implements Content {}

    private static final Content NOTHING = new Blank();
    public static final Entry NONE = new Entry(NOTHING, Tone.PLAIN, Optional.empty());

    public static Entry words(String text) {
        return text.isEmpty() ? NONE : of(new Words(text));
    }

    /** A number; what is no finite number is left empty. */
    public static Entry number(double value) {
        return of(content(value));
    }

    public static Entry day(LocalDate date) {
        return of(new Day(date));
    }

    /** A formula whose result is a number; without a result now it is shown as empty until it has one. */
    public static Entry live(String formula, double result) {
        return of(new Live(formula, content(result)));
    }

    /** A formula whose result is a text. */
    public static Entry live(String formula, String result) {
        return of(new Live(formula, new Words(result)));
    }

    private static Content content(double value) {
        // adding zero turns a negative zero into a plain one
        return Double.isFinite(value) ? new Amount(value + 0.0) : NOTHING;
    }

    private static Entry of(Content content) {
        return new Entry(content, Tone.PLAIN, Optional.empty());
    }

    public Entry in(Tone other) {
        return new Entry(content, other, form);
    }

    public Entry as(Form other) {
        return new Entry(content, tone, Optional.of(other));
    }

    /** What stands in the cell before anyone works the formula out again. */
    Content shown() {
        return content instanceof Live live ? live.result() : content;
    }

    boolean isBlank() {
        return content instanceof Blank;
    }
}
