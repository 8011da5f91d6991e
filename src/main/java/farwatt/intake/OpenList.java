package farwatt.intake;

import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.util.Optional;

/**
 * A customer's list that was understood and stays open: a cell put right has its row read anew, and the rest is put
 * together again without another look at the file. For one thread at a time.
 */
public final class OpenList {
    private final ListFile file;
    private final Cancel cancel;
    private Wishes wishes;
    private Reading reading;
    private Outcome outcome;

    OpenList(ListFile file, Wishes wishes, Cancel cancel) {
        this.file = file;
        this.wishes = wishes;
        this.cancel = cancel;
        reading = new Reading(file, wishes, cancel);
        outcome = reading.outcome();
    }

    /** What the list says as it was put right so far. */
    public Outcome outcome() {
        return outcome;
    }

    /** How it is read, what was put right included. */
    public Wishes wishes() {
        return wishes;
    }

    /**
     * Puts one cell right; its row may then be taken.
     *
     * @param place the row's place as the report has it: {@code line 7} or {@code Sheet1!A7}
     * @param heading the column's heading as the report has it
     * @param text what shall stand there
     * @throws Refusal if the list has no such row or column
     */
    public Outcome mend(String place, String heading, String text) throws Refusal {
        boolean there = outcome.report().stream()
                .anyMatch(line -> line.place().equals(place) && line.original().containsKey(heading));
        if (!there) {
            throw Refusal.of(IntakeSays.NO_PLACE, place, heading);
        }
        wishes = wishes.mended(place, heading, text);
        Wishes.Mend mend = new Wishes.Mend(place, heading, text);
        Optional<Outcome> quick = reading.mended(mend);
        outcome = quick.isPresent() ? quick.get() : anew();
        return outcome;
    }

    private Outcome anew() {
        reading = new Reading(file, wishes, cancel);
        return reading.outcome();
    }
}
