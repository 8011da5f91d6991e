package farwatt.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a person wants a list to be read.
 *
 * @param mapping columns and answers laid down
 * @param password of a locked workbook
 * @param mends cells put right in place, for rows that were held back
 */
public record Wishes(Mapping mapping, Optional<String> password, List<Mend> mends) {
    /** Nothing laid down. */
    public static final Wishes NONE = new Wishes(Mapping.NONE, Optional.empty(), List.of());

    /**
     * A cell put right.
     *
     * @param place the row's place as the report has it
     * @param heading the column's heading as shown
     * @param text what shall stand there
     */
    public record Mend(String place, String heading, String text) {}

    public Wishes {
        mends = List.copyOf(mends);
    }

    public Wishes with(Mapping other) {
        return new Wishes(other, password, mends);
    }

    public Wishes withPassword(String word) {
        return new Wishes(mapping, Optional.of(word), mends);
    }

    /** One more cell put right. */
    public Wishes mended(String place, String heading, String text) {
        List<Mend> more = new ArrayList<>(mends);
        more.add(new Mend(place, heading, text));
        return new Wishes(mapping, password, more);
    }
}
