package farwatt.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads one row that stands for devices. */
final class RowReader {
    private static final List<Meaning> RATINGS =
            List.of(Meaning.INGRESS, Meaning.BITRATE, Meaning.COLDEST_RATED, Meaning.HOTTEST_RATED, Meaning.PRIORITY);

    private final Listing listing;
    private final OwnColumns own;
    private final String place;
    private final Set<String> feeders;
    private final Known powers;
    private final Known cables;
    private final Known ratings;

    /**
     * @param place where everything on the sheet is unless a section says otherwise, "" if nothing says so
     * @param feeders what feeds rows of the list, bare
     */
    RowReader(Listing listing, OwnColumns own, String place, Set<String> feeders) {
        this.listing = listing;
        this.own = own;
        this.feeders = feeders;
        this.place = place;
        this.powers = new Known(listing, RowPower.COLUMNS);
        this.cables = new Known(listing, RowCable.COLUMNS);
        this.ratings = new Known(listing, RATINGS);
    }

    /** Everything the row says; what cannot be understood is among the remarks. */
    Draft read(Sorted sorted) {
        RawRow row = sorted.row();
        Draft draft = new Draft();
        name(row, draft);
        if (listing.saysReadings()) {
            new RowReadings(listing, row, draft).read();
            return draft;
        }
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
        if (draft.count() == 1 && feeders.contains(Feeders.bare(draft.name()))) {
            node(row, draft);
        } else if (draft.count() == 1) {
            draft.add(powers.of(row, this::power));
        } else {
            new RowPower(listing, row, draft).read();
        }
        draft.add(cables.of(row, this::cable));
        feeder(row, draft);
        String note = listing.text(row, Meaning.NOTE);
        if (!note.isEmpty()) {
            draft.device("note", note);
        }
        draft.add(ratings.of(row, this::rated));
        ownCells(row, draft);
        return draft;
    }

    private Draft power(RawRow row) {
        Draft draft = new Draft();
        new RowPower(listing, row, draft).read();
        return draft;
    }

    private Draft cable(RawRow row) {
        Draft draft = new Draft();
        new RowCable(listing, row, draft).read();
        return draft;
    }

    /** A row that feeds others: of its power only a class is certain to be that of its uplink. */
    private void node(RawRow row, Draft draft) {
        draft.node();
        draft.say(Remark.change(IntakeSays.AS_SWITCH));
        ClassWord word = ClassWord.read(listing.text(row, Meaning.CLASS));
        if (word.hasRight()) {
            draft.device("uplink_class", String.valueOf(word.topClass()));
        }
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
        Feeders.Fed fed = Feeders.of(listing, row, draft.count());
        if (!fed.from().isEmpty()) {
            draft.run("from", fed.from());
        }
        if (!fed.port().isEmpty()) {
            draft.run("port", fed.port());
        }
        draft.ports(fed.ports());
        draft.say(fed.remarks());
    }

    private Draft rated(RawRow row) {
        Draft draft = new Draft();
        String ingress = listing.text(row, Meaning.INGRESS);
        if (!ingress.isEmpty()) {
            draft.device("ingress", ingress);
        }
        quantity(row, draft, Meaning.BITRATE, "bitrate", "Mb/s");
        quantity(row, draft, Meaning.COLDEST_RATED, "coldest_rated", "degC");
        quantity(row, draft, Meaning.HOTTEST_RATED, "hottest_rated", "degC");
        String priority = listing.text(row, Meaning.PRIORITY);
        if (priority.length() == 1 && priority.charAt(0) >= '1' && priority.charAt(0) <= '9') {
            draft.device("priority", priority);
        }
        return draft;
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
            if (draft.count() > 1 && Identifiers.isOneEach(column.column())) {
                several(column, cell, draft);
            } else if (!column.unit().isEmpty()) {
                OwnColumns.quantity(cell, column.column()).ifPresent(value -> draft.device(column.name(), value));
            } else {
                String text = Spelling.strip(cell.text());
                draft.device(column.name(), text);
                draft.say(doubts(cell, column.column(), text));
            }
        }
    }

    /** Identifiers of several devices in one cell: one for each if they are as many, else the first gets the cell. */
    private static void several(OwnColumns.Own column, RawCell cell, Draft draft) {
        List<String> parts = Arrays.stream(Spelling.strip(cell.text()).split("[,;/\\s]+", -1))
                .filter(part -> !part.isEmpty())
                .toList();
        if (parts.size() == draft.count()) {
            draft.each(column.name(), parts);
        } else {
            draft.each(column.name(), List.of(Spelling.strip(cell.text())));
            draft.say(
                    Remark.flag(IntakeSays.SEVERAL_IDENTIFIERS, column.column().shown(), cell.text()));
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
