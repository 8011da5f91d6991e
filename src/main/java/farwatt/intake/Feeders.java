package farwatt.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What feeds a row, by which port: two columns, or both in one cell. */
final class Feeders {
    private static final Pattern PORT = Pattern.compile("(?i)(?:port|p|ge|gi|eth|#|nr\\.?|no\\.?)?\\s*(\\d{1,2})");
    private static final Pattern PORT_PATH = Pattern.compile("(?i)(?:port|ge|gi|eth)?\\s*(?:\\d{1,2}/){1,2}(\\d{1,2})");
    /** A switch with its port in one cell: SW-H1 / 3, yard switch port 4. */
    private static final Pattern SWITCH_PORT =
            Pattern.compile("(?i)(.*\\p{L}.*?)(?:\\s*[/,:;]\\s*(?:port|p)?\\s*|\\s+(?:port|p)\\s*)(\\d{1,2})");

    private static final String MONTHS = "(?:jan|feb|m[aä]r|apr|ma[iy]|jun|jul|aug|sep|o[ck]t|nov|de[cz])[a-z]*";
    /** A port such as 1/2 that a sheet program showed as a date: 2-Jan. */
    private static final Pattern MONTH = Pattern.compile("(?i)\\d{1,2}[-. ]+" + MONTHS + "\\.?(?:[- ]\\d{2,4})?|"
            + MONTHS + "[-. ]+\\d{1,4}|\\d{1,2}[-./]\\d{1,2}[-./]\\d{4}|\\d{4}-\\d{2}-\\d{2}.*");

    /**
     * What feeds a row.
     *
     * @param from name of the switch or source, "" if not said
     * @param port its port, "" if not said
     * @param ports of several devices, one each
     * @param remarks what is to be said
     */
    record Fed(String from, String port, List<String> ports, List<Remark> remarks) {
        Fed {
            ports = List.copyOf(ports);
            remarks = List.copyOf(remarks);
        }
    }

    private final Listing listing;
    private final RawRow row;
    private final int count;
    private final List<Remark> remarks = new ArrayList<>();
    private List<String> ports = List.of();
    private String from = "";
    private String port = "";

    private Feeders(Listing listing, RawRow row, int count) {
        this.listing = listing;
        this.row = row;
        this.count = count;
    }

    /** What feeds the devices of a row. */
    static Fed of(Listing listing, RawRow row, int count) {
        Feeders feeders = new Feeders(listing, row, count);
        feeders.read();
        return new Fed(feeders.from, feeders.port, feeders.ports, feeders.remarks);
    }

    private void read() {
        Optional<Column> column = listing.column(Meaning.PORT);
        String feeder = listing.text(row, Meaning.FEEDER);
        if (!Cells.isMissing(feeder)) {
            from = feeder;
            Matcher both = SWITCH_PORT.matcher(feeder);
            if (column.isEmpty() && both.matches()) {
                from = both.group(1);
                port = plain(both.group(2));
            }
        }
        if (column.isPresent()) {
            port(row.cell(column.get().at()), column.get());
        }
        if (count > 1 && !port.isEmpty()) {
            remarks.add(Remark.flag(IntakeSays.SEVERAL_PORTS, port, count));
        }
    }

    private void port(RawCell cell, Column column) {
        String text = Spelling.tidy(cell.text());
        if (count == 1 && isBarePort(text)) {
            port = text;
            return;
        }
        if (Cells.isMissing(text)) {
            return;
        }
        if (cell.form() == RawCell.Form.DATE) {
            remarks.add(Remark.flag(IntakeSays.DATE_FOR_PORT, column.shown(), text));
            return;
        }
        List<String> several = count > 1 ? Ports.of(text) : List.of();
        Matcher plain = PORT.matcher(text);
        if (several.size() == count) {
            ports = several;
        } else if (plain.matches()) {
            port = plain(plain.group(1));
        } else {
            oddPort(text, column);
        }
    }

    private void oddPort(String text, Column column) {
        Matcher path = PORT_PATH.matcher(text);
        Matcher both = SWITCH_PORT.matcher(text);
        if (MONTH.matcher(text).matches()) {
            remarks.add(Remark.flag(IntakeSays.DATE_FOR_PORT, column.shown(), text));
        } else if (path.matches()) {
            port = plain(path.group(1));
            remarks.add(Remark.change(IntakeSays.PORT_PATH, text, port));
        } else if (!listing.has(Meaning.FEEDER) && both.matches()) {
            from = both.group(1);
            port = plain(both.group(2));
        } else {
            remarks.add(Remark.flag(IntakeSays.PORT_NOT_READ, text));
        }
    }

    /** Most ports are a number from 1 to 99 and nothing else. */
    private static boolean isBarePort(String text) {
        boolean first = !text.isEmpty() && text.charAt(0) >= '1' && text.charAt(0) <= '9';
        boolean second = text.length() == 1 || (text.length() == 2 && text.charAt(1) >= '0' && text.charAt(1) <= '9');
        return first && second;
    }

    private static String plain(String digits) {
        return String.valueOf(Integer.parseInt(digits));
    }

    /** A name for comparing: letters and digits only. */
    static String bare(String name) {
        return Spelling.fold(name).replace(" ", "");
    }

    private static String from(Listing listing, RawRow row) {
        if (!listing.has(Meaning.FEEDER) || !listing.has(Meaning.PORT)) {
            return of(listing, row, 1).from();
        }
        String feeder = listing.text(row, Meaning.FEEDER);
        return Cells.isMissing(feeder) ? "" : feeder;
    }

    /** Everything that feeds other rows of a list, bare. */
    static Set<String> named(Listing listing, List<Sorted> rows) {
        Set<String> typed = new HashSet<>();
        if (!listing.has(Meaning.FEEDER, Meaning.PORT)) {
            return typed;
        }
        for (Sorted row : rows) {
            if (row.kind() == Sorted.Kind.DEVICE) {
                String from = from(listing, row.row());
                if (!from.isEmpty() && !from.equals(listing.text(row.row(), Meaning.NAME))) {
                    typed.add(from);
                }
            }
        }
        Set<String> bare = new HashSet<>();
        typed.forEach(from -> bare.add(bare(from)));
        return bare;
    }
}
