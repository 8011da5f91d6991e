package farwatt.study;

import farwatt.engine.Value;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A point put together by hand. */
final class MadePoint implements Point {
    private final List<Heading> columns;
    private final double[] insides;
    private final Map<Integer, String> words = new HashMap<>();
    private final Map<Integer, String> why = new HashMap<>();

    private MadePoint(List<Heading> columns, double[] insides) {
        this.columns = columns;
        this.insides = insides;
    }

    static MadePoint of(List<Heading> columns, double[] insides) {
        return new MadePoint(columns, insides);
    }

    /** Puts a word into a column. */
    MadePoint word(int column, String word) {
        insides[column] = Double.NaN;
        words.put(column, word);
        return this;
    }

    /** Takes over a value with its words, or the reason why there is none. */
    MadePoint because(int column, Value value) {
        insides[column] = value.isPresent() ? value.inside() : Double.NaN;
        value.fault().ifPresent(fault -> why.put(column, fault.text()));
        if (value.isPresent() && columns.get(column).isText()) {
            word(column, value.words());
        }
        return this;
    }

    @Override
    public long number() {
        return 0;
    }

    @Override
    public double inside(int column) {
        return insides[column];
    }

    @Override
    public String text(int column) {
        String word = words.get(column);
        return word != null ? word : columns.get(column).text(insides[column]);
    }

    @Override
    public Optional<String> why(int column) {
        return Optional.ofNullable(why.get(column));
    }
}
