package farwatt.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What can be seen of harm done to identifiers before they came here. */
final class Identifiers {
    private static final Pattern ROUNDED = Pattern.compile("\\d[.,]\\d+[eE]\\+?\\d{1,3}|\\d+[eE]\\+\\d{1,3}");
    private static final int SAFE_DIGITS = 15;

    private Identifiers() {}

    /** A number with an exponent, or one with more digits than a sheet program keeps: digits are lost. */
    static boolean isRounded(RawCell cell, Meaning meaning, String text) {
        boolean exponent = text.indexOf('e') > 0 || text.indexOf('E') > 0;
        if (exponent && ROUNDED.matcher(text).matches()) {
            return true;
        }
        return cell.form() == RawCell.Form.NUMBER && meaning.isIdentifier() && text.length() > SAFE_DIGITS;
    }

    /** The zero day of either date system: mostly a cell that was empty. */
    static boolean isDateBase(String isoDate) {
        return isoDate.startsWith("1904-01-01") || isoDate.startsWith("1899-12-3") || isoDate.startsWith("1900-01-0");
    }

    /** Says of rows with the same identifier that they have it. */
    static void flagTwice(Listing listing, List<Assembler.Item> items) {
        List<Assembler.Item> devices = items.stream()
                .filter(i -> i.sorted().kind() == Sorted.Kind.DEVICE)
                .toList();
        for (Column column : unique(listing)) {
            List<String> texts = devices.stream()
                    .map(i -> Spelling.strip(i.sorted().row().cell(column.at()).text()))
                    .toList();
            boolean bare = column.meaning() == Meaning.MAC;
            Twice twice = new Twice(texts, bare ? Twice.Counts.LETTERS_AND_DIGITS : Twice.Counts.EVERY_SIGN);
            for (int later = 0; later < texts.size(); later++) {
                if (twice.length(later) < 2 || Cells.isMissing(texts.get(later))) {
                    continue;
                }
                int first = twice.first(later);
                if (first != later) {
                    flag(devices.get(later), column, devices.get(first));
                    flag(devices.get(first), column, devices.get(later));
                }
            }
        }
    }

    private static void flag(Assembler.Item item, Column column, Assembler.Item other) {
        item.draft().say(Remark.flag(IntakeSays.SAME_IDENTIFIER, column.shown(), other.place()));
    }

    /** The columns in which two devices should never be alike. */
    private static List<Column> unique(Listing listing) {
        List<Column> columns = new ArrayList<>();
        for (Column column : listing.columns()) {
            if (isOneEach(column)) {
                columns.add(column);
            }
        }
        return columns;
    }

    /** True for identifiers that no two devices share. */
    static boolean isOneEach(Column column) {
        return column.meaning().isIdentifier() && !isShared(column);
    }

    /** Article numbers and the like are the same for all devices of a kind. */
    private static boolean isShared(Column column) {
        String words = column.heading().words();
        return words.contains("part")
                || words.contains("art")
                || words.contains("order")
                || words.contains("bestell")
                || words.contains("ref")
                || words.contains("cod")
                || words.contains("kod");
    }
}
