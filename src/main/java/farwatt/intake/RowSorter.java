package farwatt.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Tells rows that stand for devices from headings, sections, totals and notes. */
final class RowSorter {
    private final Listing listing;
    private final List<RawRow> rows;
    private final Set<String> places = new HashSet<>();
    private final boolean takeHidden;
    private boolean grouped;
    private final List<List<String>> headingTexts = new ArrayList<>();

    RowSorter(Listing listing) {
        this.listing = listing;
        this.rows = listing.sheet().rows();
        this.takeHidden = listing.answers().answer("hidden_rows", "leave out").equals("take");
        listing.column(Meaning.ZONE)
                .ifPresent(zone -> rows.stream()
                        .map(row -> row.cell(zone.at()).text())
                        .distinct()
                        .forEach(text -> places.add(Spelling.fold(text))));
        places.remove("");
        listing.heading().ifPresent(heading -> {
            for (RawRow row : rows.subList(heading.first(), heading.after())) {
                headingTexts.add(
                        row.cells().stream().map(c -> Spelling.fold(c.text())).toList());
            }
        });
    }

    /** Every row with its kind. */
    List<Sorted> sorted() {
        List<Sorted> all = new ArrayList<>(rows.size());
        int first = listing.heading().map(Heading::first).orElse(0);
        int after = listing.heading().map(Heading::after).orElse(0);
        int lastFull = lastFull(after);
        grouped = listing.answers().answer("sections", "devices").equals("groups") || hasGroups(after, lastFull);
        String section = "";
        for (int i = 0; i < rows.size(); i++) {
            Sorted.Kind kind = i < first
                    ? Sorted.Kind.TITLE
                    : i < after ? Sorted.Kind.HEADING : kind(rows.get(i), i > lastFull, i);
            if (kind == Sorted.Kind.SECTION) {
                section = Spelling.tidy(onlyText(rows.get(i)));
                section = section.endsWith(":") ? Spelling.tidy(section.substring(0, section.length() - 1)) : section;
                places.add(Spelling.fold(section));
            }
            all.add(new Sorted(rows.get(i), kind, section));
        }
        return all;
    }

    /** One heading of a group that is surely one makes lone names in the whole list such headings. */
    private boolean hasGroups(int after, int lastFull) {
        for (int i = after; i < lastFull; i++) {
            RawRow row = rows.get(i);
            if (row.full() == 1 && listing.columns().size() > 1 && isSection(row, i)) {
                return true;
            }
        }
        return false;
    }

    /** The last row that fills more than one cell. */
    private int lastFull(int after) {
        int last = rows.size();
        while (last > after && rows.get(last - 1).full() < 2) {
            last--;
        }
        return last - 1;
    }

    private Sorted.Kind kind(RawRow row, boolean afterLast, int at) {
        if (row.look() == Look.HIDDEN && !takeHidden) {
            return Sorted.Kind.HIDDEN;
        }
        if (isRule(row)) {
            return Sorted.Kind.RULE;
        }
        if (isHeadingAgain(row)) {
            return Sorted.Kind.HEADING_AGAIN;
        }
        if (isTotal(row)) {
            return Sorted.Kind.TOTAL;
        }
        boolean lone = row.full() == 1 && listing.columns().size() > 1;
        if (!lone) {
            return Sorted.Kind.DEVICE;
        }
        if (afterLast && !isNameOnlyList()) {
            return Sorted.Kind.NOTE;
        }
        return isSection(row, at) ? Sorted.Kind.SECTION : Sorted.Kind.DEVICE;
    }

    /** In a list in which most rows are a name alone, a name alone is a device. */
    private boolean isNameOnlyList() {
        int lone = 0;
        for (RawRow row : rows) {
            lone += row.full() == 1 ? 1 : 0;
        }
        return lone * 2 > rows.size();
    }

    private boolean isSection(RawRow row, int at) {
        int column = row.firstFull();
        boolean nameColumn = listing.column(Meaning.NAME)
                .or(() -> listing.column(Meaning.KIND))
                .filter(c -> c.at() == column)
                .isPresent();
        boolean merged = listing.sheet().areas().stream()
                .anyMatch(a -> a.top() == row.number() - 1 && a.left() == column && a.right() - column >= 2);
        boolean followed = at + 1 < rows.size() && rows.get(at + 1).full() > 1;
        boolean colon = onlyText(row).strip().endsWith(":");
        return followed && (!nameColumn || merged || colon || grouped);
    }

    private static String onlyText(RawRow row) {
        return row.cell(row.firstFull()).text();
    }

    private static boolean isRule(RawRow row) {
        for (RawCell cell : row.cells()) {
            String text = cell.text().strip();
            for (int i = 0; i < text.length(); i++) {
                if ("-=_:+*–—".indexOf(text.charAt(i)) < 0) {
                    return false;
                }
            }
        }
        return row.full() > 1 || onlyText(row).strip().length() > 2;
    }

    private boolean isHeadingAgain(RawRow row) {
        int full = row.full();
        for (List<String> original : headingTexts) {
            int differ = 0;
            for (int column = 0; column < row.cells().size() && differ * 5 <= full; column++) {
                if (row.isFull(column)) {
                    String there = column < original.size() ? original.get(column) : "";
                    differ += there.equals(Spelling.fold(row.cell(column).text())) ? 0 : 1;
                }
            }
            if (full - differ >= 2 && differ * 5 <= full) {
                return true;
            }
        }
        return false;
    }

    /** A total's word stands first in its row; a device that only has such a word in its name stays a device. */
    private boolean isTotal(RawRow row) {
        for (int column = 0; column < row.cells().size(); column++) {
            RawCell cell = row.cell(column);
            if (row.isFull(column) && cell.form() == RawCell.Form.TEXT && !startsWithDigit(cell.text())) {
                String folded = Spelling.fold(cell.text());
                return isTotalText(folded)
                        && !isNamedOtherwise(row, folded)
                        && (row.full() > 1 || folded.split(" ", -1).length <= 3);
            }
        }
        return false;
    }

    private boolean isNamedOtherwise(RawRow row, String folded) {
        String name = Spelling.fold(listing.text(row, Meaning.NAME));
        return !name.isEmpty() && !name.equals(folded) && !isTotalText(name);
    }

    private boolean isTotalText(String folded) {
        if (Words.isRemark("total", folded)) {
            return true;
        }
        int blank = folded.indexOf(' ');
        while (blank > 0) {
            String rest = folded.substring(blank + 1);
            if (Words.isRemark("total", folded.substring(0, blank))
                    && (places.contains(rest)
                            || Words.isRemark("noise", rest)
                            || ListUnit.of(rest).isPresent())) {
                return true;
            }
            blank = folded.indexOf(' ', blank + 1);
        }
        return false;
    }

    private static boolean startsWithDigit(String text) {
        String plain = text.strip();
        return !plain.isEmpty() && Character.isDigit(plain.charAt(0));
    }
}
