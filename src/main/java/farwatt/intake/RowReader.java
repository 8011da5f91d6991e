package farwatt.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one row that stands for devices. */
final class RowReader {
    private static final Pattern PORT = Pattern.compile("(?i)(?:port|p|ge|gi|eth|#|nr\\.?|no\\.?)?\\s*(\\d{1,2})");
    /** A switch with its port in one cell: SW-H1 / 3, yard switch port 4. */
    private static final Pattern SWITCH_PORT =
            Pattern.compile("(?i)(.*\\p{L}.*?)(?:\\s*[/,:;]\\s*(?:port|p)?\\s*|\\s+(?:port|p)\\s*)(\\d{1,2})");

    private static final Pattern PORT_PATH = Pattern.compile("(?i)(?:port|ge|gi|eth)?\\s*(?:\\d{1,2}/){1,2}(\\d{1,2})");

    /** A port such as 1/2 that a sheet program showed as a date: 2-Jan. */
    private static final Pattern MONTH = month("jan|feb|m[aä]r|apr|ma[iy]|jun|jul|aug|sep|o[ck]t|nov|de[cz]");

    private final Listing listing;
    private final Map<String, ClassWord> classes = new HashMap<>();
    private final OwnColumns own;
    private final String place;

    /** @param place where everything on the sheet is unless a section says otherwise, "" if nothing says so */
    RowReader(Listing listing, OwnColumns own, String place) {
        this.listing = listing;
        this.own = own;
        this.place = place;
    }

    private static Pattern month(String names) {
        return Pattern.compile("(?i)\\d{1,2}[-. ]+(?:" + names + ")[a-z]*\\.?(?:[- ]\\d{2,4})?|(?:" + names
                + ")[a-z]*[-. ]+\\d{1,4}|\\d{4}-\\d{2}-\\d{2}.*");
    }

    /** Everything the row says; what cannot be understood is among the remarks. */
    Draft read(Sorted sorted) {
        RawRow row = sorted.row();
        Draft draft = new Draft();
        name(row, draft);
        listing.column(Meaning.QUANTITY).ifPresent(column -> {
            QuantityReader quantity = QuantityReader.read(row.cell(column.at()), column);
            draft.count(quantity.count());
            draft.say(quantity.remarks());
        });
        String zone = listing.text(row, Meaning.ZONE);
        draft.zone(Cells.isMissing(zone) ? elsewhere(sorted) : zone);
        if (row.look() == Look.STRUCK) {
            draft.say(Remark.hold(IntakeSays.STRUCK_OUT));
        }
        new RowPower(listing, row, draft, classes).read();
        new RowCable(listing, row, draft).read();
        feeder(row, draft);
        gear(row, draft);
        ownCells(row, draft);
        return draft;
    }

    /** Where a row is that has no cell for it: its section, else its sheet. */
    private String elsewhere(Sorted sorted) {
        if (listing.has(Meaning.ZONE)) {
            return "";
        }
        return sorted.section().isEmpty() ? place : sorted.section();
    }

    private void name(RawRow row, Draft draft) {
        String kind = listing.text(row, Meaning.KIND);
        if (!kind.isEmpty()) {
            draft.device("kind", kind);
        }
        Optional<Column> column = listing.column(Meaning.NAME);
        RawCell cell = column.map(c -> row.cell(c.at())).orElse(RawCell.EMPTY);
        Optional<Remark> unusable =
                Cells.unusable(cell, column.map(Column::shown).orElse(""));
        String name = Spelling.tidy(cell.text());
        if (unusable.isPresent()) {
            draft.say(unusable.get());
        } else if (name.isEmpty() && kind.isEmpty()) {
            draft.say(Remark.hold(IntakeSays.NO_NAME));
        } else if (name.isEmpty() && column.isPresent()) {
            draft.say(Remark.change(IntakeSays.NAMED_BY_KIND, kind));
        }
        draft.name(name.isEmpty() ? kind : name);
    }

    private void feeder(RawRow row, Draft draft) {
        String feeder = listing.text(row, Meaning.FEEDER);
        if (!Cells.isMissing(feeder)) {
            Matcher both = SWITCH_PORT.matcher(feeder);
            boolean split = both.matches() && !listing.has(Meaning.PORT);
            draft.run("from", split ? both.group(1) : feeder);
            if (split) {
                draft.run("port", String.valueOf(Integer.parseInt(both.group(2))));
            }
        }
        listing.column(Meaning.PORT).ifPresent(column -> port(row.cell(column.at()), column, draft));
    }

    private void port(RawCell cell, Column column, Draft draft) {
        String text = Spelling.tidy(cell.text());
        if (Cells.isMissing(text)) {
            return;
        }
        Matcher plain = PORT.matcher(text);
        Matcher path = PORT_PATH.matcher(text);
        Matcher both = SWITCH_PORT.matcher(text);
        if (cell.form() == RawCell.Form.DATE) {
            draft.say(Remark.flag(IntakeSays.DATE_FOR_PORT, column.shown(), text));
        } else if (plain.matches()) {
            draft.run("port", String.valueOf(Integer.parseInt(plain.group(1))));
        } else if (MONTH.matcher(text).matches()) {
            draft.say(Remark.flag(IntakeSays.DATE_FOR_PORT, column.shown(), text));
        } else if (path.matches()) {
            draft.run("port", String.valueOf(Integer.parseInt(path.group(1))));
            draft.say(Remark.change(IntakeSays.PORT_PATH, text, path.group(1)));
        } else if (both.matches() && !listing.has(Meaning.FEEDER)) {
            draft.run("from", both.group(1));
            draft.run("port", String.valueOf(Integer.parseInt(both.group(2))));
        } else {
            draft.say(Remark.flag(IntakeSays.PORT_NOT_READ, text));
        }
    }

    private void gear(RawRow row, Draft draft) {
        text(row, draft, Meaning.NOTE, "note");
        text(row, draft, Meaning.INGRESS, "ingress");
        quantity(row, draft, Meaning.BITRATE, "bitrate", "Mb/s");
        quantity(row, draft, Meaning.COLDEST_RATED, "coldest_rated", "degC");
        quantity(row, draft, Meaning.HOTTEST_RATED, "hottest_rated", "degC");
        String priority = listing.text(row, Meaning.PRIORITY);
        if (priority.length() == 1 && priority.charAt(0) >= '1' && priority.charAt(0) <= '9') {
            draft.device("priority", priority);
        }
    }

    private void text(RawRow row, Draft draft, Meaning meaning, String key) {
        String text = listing.text(row, meaning);
        if (!text.isEmpty()) {
            draft.device(key, text);
        }
    }

    private void quantity(RawRow row, Draft draft, Meaning meaning, String key, String unit) {
        Optional<Column> column = listing.column(meaning);
        if (column.isEmpty() || row.cell(column.get().at()).isBlank()) {
            return;
        }
        RawCell cell = row.cell(column.get().at());
        if (Cells.isMissing(Spelling.tidy(cell.text()))) {
            return;
        }
        ListUnit usual =
                column.get().heading().unit().or(() -> ListUnit.of(unit)).orElseThrow();
        HeadingText heading = column.get().heading();
        HeadingText withUnit = new HeadingText(
                heading.shown(), heading.words(), Optional.of(usual), heading.volts(), heading.bracketed());
        Column measured = new Column(
                column.get().at(),
                withUnit,
                meaning,
                1,
                column.get().reason(),
                column.get().decimal());
        Optional<String> read = OwnColumns.quantity(cell, measured);
        read.ifPresentOrElse(
                value -> draft.device(key, value),
                () -> draft.say(
                        Remark.flag(IntakeSays.CELL_NOT_READ, column.get().shown(), cell.text())));
    }

    private void ownCells(RawRow row, Draft draft) {
        for (OwnColumns.Own column : own.all()) {
            RawCell cell = row.cell(column.column().at());
            if (cell.isBlank()) {
                continue;
            }
            if (!column.unit().isEmpty()) {
                OwnColumns.quantity(cell, column.column()).ifPresent(value -> draft.device(column.name(), value));
            } else {
                String text = Spelling.strip(cell.text());
                draft.device(column.name(), text);
                draft.say(doubts(cell, column.column(), text));
            }
        }
    }

    private static List<Remark> doubts(RawCell cell, Column column, String text) {
        if (Identifiers.isRounded(cell, column.meaning(), text)) {
            return List.of(Remark.flag(IntakeSays.ROUNDED, column.shown(), text));
        }
        if (cell.form() == RawCell.Form.DATE && Identifiers.isDateBase(text)) {
            return List.of(Remark.flag(IntakeSays.DATE_BASE, column.shown(), text));
        }
        if (cell.form() == RawCell.Form.DATE && column.meaning().isIdentifier()) {
            return List.of(Remark.flag(IntakeSays.DATE_FOR_IDENTIFIER, column.shown(), text));
        }
        if (cell.form() == RawCell.Form.ERROR || cell.form() == RawCell.Form.MISSING) {
            return List.of(Remark.flag(IntakeSays.CELL_NOT_READ, column.shown(), text));
        }
        return List.of();
    }
}
