package farwatt.intake;

import farwatt.quantity.Decimal;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads one row of a list of readings: what was measured on one run. */
final class RowReadings {
    private static final Map<Meaning, ListUnit> UNITS = units();

    private final Listing listing;
    private final RawRow row;
    private final Draft draft;

    RowReadings(Listing listing, RawRow row, Draft draft) {
        this.listing = listing;
        this.row = row;
        this.draft = draft;
    }

    private static Map<Meaning, ListUnit> units() {
        Map<Meaning, ListUnit> units = new EnumMap<>(Meaning.class);
        units.put(Meaning.SEEN_VOLTS_NEAR, ListUnit.VOLT);
        units.put(Meaning.SEEN_VOLTS_FAR, ListUnit.VOLT);
        units.put(Meaning.SEEN_AMPS, ListUnit.AMPERE);
        units.put(Meaning.SEEN_WATTS, ListUnit.WATT);
        units.put(Meaning.SEEN_TEMP, ListUnit.of("degC").orElseThrow());
        return units;
    }

    void read() {
        draft.part();
        UNITS.forEach((meaning, unit) -> listing.column(meaning).ifPresent(column -> put(column, unit)));
        if (draft.readings().isEmpty()) {
            draft.say(Remark.out(IntakeSays.NO_READING));
        }
    }

    private void put(Column column, ListUnit usual) {
        RawCell cell = row.cell(column.at());
        Optional<Remark> unusable = Cells.unusable(cell, column.shown());
        String text = Spelling.tidy(cell.text());
        if (unusable.isPresent()) {
            draft.say(unusable.get());
        } else if (!Cells.isMissing(text)) {
            figure(column, cell, text, usual);
        }
    }

    private void figure(Column column, RawCell cell, String text, ListUnit usual) {
        Optional<Decimal> habit = cell.isExact() ? Optional.of(Decimal.POINT) : column.decimal();
        boolean minus = text.startsWith("-") || text.startsWith("−");
        Figures read = FigureReader.read(minus ? text.substring(1) : text, habit);
        ListUnit unit = column.heading().unit().orElse(usual);
        boolean one = read.list().size() == 1
                && !read.broken()
                && !read.negative()
                && read.list().get(0).bound() == Figure.Bound.NONE
                && read.list().get(0).other().isEmpty()
                && read.list().get(0).measure(unit) == usual.measure()
                && (!minus || usual.measure() == Measure.TEMPERATURE);
        if (!one) {
            draft.say(Remark.hold(IntakeSays.READING_NOT_READ, column.shown(), text));
            return;
        }
        ListUnit own = read.list().get(0).unit().orElse(unit);
        var value = own.base(read.list().get(0).value());
        String key = column.meaning().name().toLowerCase(Locale.ROOT);
        draft.reading(key, PowerReader.plain(minus ? value.negate() : value) + " " + own.symbol());
    }
}
