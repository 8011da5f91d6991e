package farwatt.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts cells right that a person mended, before the list is read again. */
final class Mends {
    private Mends() {}

    static List<Sheet> applied(List<Sheet> sheets, Wishes wishes) {
        if (wishes.mends().isEmpty()) {
            return sheets;
        }
        List<Sheet> mended = new ArrayList<>();
        for (Sheet sheet : sheets) {
            mended.add(sheet.rows().isEmpty() ? sheet : mended(sheet, wishes));
        }
        return mended;
    }

    private static Sheet mended(Sheet sheet, Wishes wishes) {
        Listing listing = Listings.of(sheet, wishes.mapping());
        Map<String, List<Wishes.Mend>> byPlace = new HashMap<>();
        for (Wishes.Mend mend : wishes.mends()) {
            byPlace.computeIfAbsent(mend.place(), p -> new ArrayList<>()).add(mend);
        }
        List<RawRow> rows = new ArrayList<>();
        for (RawRow row : sheet.rows()) {
            RawRow changed = row;
            for (Wishes.Mend mend : byPlace.getOrDefault(sheet.place(row), List.of())) {
                Optional<Column> column = column(listing, mend.heading());
                if (column.isPresent()) {
                    changed = changed.with(column.get().at(), RawCell.text(mend.text()));
                }
            }
            rows.add(changed);
        }
        return sheet.withRows(rows);
    }

    /** The column of a heading as the report shows it. */
    static Optional<Column> column(Listing listing, String heading) {
        return listing.columns().stream()
                .filter(c -> c.shown().equals(heading) || ("column " + (c.at() + 1)).equals(heading))
                .findFirst();
    }
}
