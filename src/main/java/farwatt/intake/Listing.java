package farwatt.intake;

import java.util.List;
import java.util.Optional;

/**
 * A sheet with its heading found and its columns understood.
 *
 * @param sheet the rows
 * @param heading empty when none was found
 * @param columns those with a heading or content
 * @param answers how open questions were answered
 * @param rivals columns that could have meant the same as another
 */
record Listing(Sheet sheet, Optional<Heading> heading, List<Column> columns, Mapping answers, List<Rival> rivals) {
    /**
     * A column that lost its likeliest meaning to a surer one.
     *
     * @param heading as shown
     * @param winner heading of the column that has the meaning
     */
    record Rival(String heading, String winner) {}

    Listing {
        columns = List.copyOf(columns);
        rivals = List.copyOf(rivals);
    }

    Optional<Column> column(Meaning meaning) {
        for (Column column : columns) {
            if (column.meaning() == meaning) {
                return Optional.of(column);
            }
        }
        return Optional.empty();
    }

    boolean has(Meaning... meanings) {
        for (Meaning meaning : meanings) {
            if (column(meaning).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** The text of a row under a meaning, blanks tidied; "" where there is no such column. */
    String text(RawRow row, Meaning meaning) {
        return column(meaning).map(c -> Spelling.tidy(row.cell(c.at()).text())).orElse("");
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
