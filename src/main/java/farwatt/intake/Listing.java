package farwatt.intake;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A sheet with its heading found and its columns understood. */
final class Listing {
    /**
     * A column that lost its likeliest meaning to a surer one.
     *
     * @param heading as shown
     * @param winner heading of the column that has the meaning
     */
    record Rival(String heading, String winner) {}

    private final Sheet sheet;
    private final Optional<Heading> heading;
    private final List<Column> columns;
    private final Mapping answers;
    private final List<Rival> rivals;
    private final Map<Meaning, Optional<Column>> byMeaning = new EnumMap<>(Meaning.class);

    /**
     * @param sheet the rows
     * @param heading empty when none was found
     * @param columns those with a heading or content
     * @param answers how open questions were answered
     * @param rivals columns that could have meant the same as another
     */
    Listing(Sheet sheet, Optional<Heading> heading, List<Column> columns, Mapping answers, List<Rival> rivals) {
        this.sheet = sheet;
        this.heading = heading;
        this.columns = List.copyOf(columns);
        this.answers = answers;
        this.rivals = List.copyOf(rivals);
        for (Column column : columns) {
            byMeaning.putIfAbsent(column.meaning(), Optional.of(column));
        }
    }

    Sheet sheet() {
        return sheet;
    }

    Optional<Heading> heading() {
        return heading;
    }

    List<Column> columns() {
        return columns;
    }

    Mapping answers() {
        return answers;
    }

    List<Rival> rivals() {
        return rivals;
    }

    Optional<Column> column(Meaning meaning) {
        return byMeaning.getOrDefault(meaning, Optional.empty());
    }

    boolean has(Meaning... meanings) {
        for (Meaning meaning : meanings) {
            if (byMeaning.containsKey(meaning)) {
                return true;
            }
        }
        return false;
    }

    /** The text of a row under a meaning, blanks tidied; "" where there is no such column. */
    String text(RawRow row, Meaning meaning) {
        return column(meaning).map(c -> Spelling.tidy(row.cell(c.at()).text())).orElse("");
    }

    /** True for a list of readings: its rows name runs that were built. */
    boolean saysReadings() {
        return has(Meaning.SEEN_VOLTS_NEAR, Meaning.SEEN_VOLTS_FAR);
    }

    /** True when the list says anything about power at all. */
    boolean saysPower() {
        return has(
                Meaning.WATTS,
                Meaning.WATTS_TYPICAL,
                Meaning.WATTS_START,
                Meaning.LOAD,
                Meaning.CURRENT,
                Meaning.CLASS);
    }
}
