package farwatt.intake;

import farwatt.report.Messages;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Places and feeding switches that are named once for the rows below them, as lists do that were merged once. Taken so
 * only when the column looks like it: it begins filled, has gaps, and no name follows itself.
 */
final class FillDown {
    private static final String ABOVE = "as above";
    private static final String EMPTY = "empty";

    private final Listing listing;
    private final Set<Integer> filled = new HashSet<>();
    private final List<Question> questions = new ArrayList<>();

    FillDown(Listing listing) {
        this.listing = listing;
    }

    /** The rows with gaps filled. */
    List<Sorted> fill(List<Sorted> rows) {
        List<Sorted> result = rows;
        for (Meaning meaning : List.of(Meaning.ZONE, Meaning.FEEDER)) {
            Optional<Column> column = listing.column(meaning);
            if (column.isPresent() && isSparse(rows, column.get().at())) {
                String key = "fill:" + column.get().shown();
                String used = listing.answers().answer(key, ABOVE);
                questions.add(new Question(
                        key, Messages.text(IntakeSays.ASK_FILL, column.get().shown()), List.of(ABOVE, EMPTY), used));
                if (used.equals(ABOVE)) {
                    result = filled(result, column.get().at());
                }
            }
        }
        return result;
    }

    private static boolean isSparse(List<Sorted> rows, int column) {
        int gaps = 0;
        int names = 0;
        int devices = 0;
        String last = "";
        for (Sorted row : rows) {
            if (row.kind() != Sorted.Kind.DEVICE) {
                continue;
            }
            devices++;
            String text = Spelling.fold(row.row().cell(column).text());
            if (devices == 1 && text.isEmpty()) {
                return false;
            }
            if (text.isEmpty()) {
                gaps++;
            } else if (text.equals(last)) {
                return false;
            } else {
                names++;
                last = text;
            }
        }
        return names >= 2 && gaps * 10 >= devices * 3;
    }

    private List<Sorted> filled(List<Sorted> rows, int column) {
        List<Sorted> result = new ArrayList<>(rows.size());
        RawCell last = RawCell.EMPTY;
        for (Sorted row : rows) {
            RawCell cell = row.row().cell(column);
            if (row.kind() != Sorted.Kind.DEVICE) {
                result.add(row);
            } else if (cell.isBlank()) {
                result.add(new Sorted(row.row().with(column, last.filledDown()), row.kind(), row.section()));
                filled.add(row.row().number());
            } else {
                last = cell;
                result.add(row);
            }
        }
        return result;
    }

    boolean isFilled(RawRow row) {
        return filled.contains(row.number());
    }

    List<Question> questions() {
        return questions;
    }
}
