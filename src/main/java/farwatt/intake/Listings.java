package farwatt.intake;

import farwatt.quantity.Decimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds a sheet's heading and what its columns mean. */
final class Listings {
    private Listings() {}

    static Listing of(Sheet raw, Mapping mapping) {
        Optional<Heading> heading = Heading.find(raw, mapping);
        int after = heading.map(Heading::after).orElse(0);
        List<RawRow> rows = raw.rows().subList(after, raw.rows().size());
        List<HeadingText> texts = heading.map(Heading::texts).orElseGet(() -> blank(raw.width()));
        boolean leave = !mapping.answer("hidden_columns", "leave out").equals("take");
        Set<Integer> left = leave ? raw.hiddenColumns() : Set.of();
        Mapper mapper = new Mapper(texts, rows, mapping, left);
        List<Column> columns = decimals(readings(answered(mapper.columns(), mapping)), rows, mapping);
        return new Listing(raw, heading, columns, mapping, mapper.rivals());
    }

    private static List<HeadingText> blank(int width) {
        List<HeadingText> texts = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            texts.add(HeadingText.of(""));
        }
        return texts;
    }

    /** Units and the place of the watts as a person answered. */
    private static List<Column> answered(List<Column> plain, Mapping mapping) {
        boolean behind = mapping.answer("watts_at", "").equals("behind the converter");
        boolean before = mapping.answer("watts_at", "").equals("network input");
        List<Column> columns = new ArrayList<>();
        for (Column column : plain) {
            Column changed = column;
            if (behind && column.meaning() == Meaning.WATTS) {
                changed = column.meaning(Meaning.LOAD);
            } else if (before && column.meaning() == Meaning.LOAD) {
                changed = column.meaning(Meaning.WATTS);
            }
            Optional<ListUnit> unit = ListUnit.of(mapping.answer("unit:" + column.shown(), ""));
            columns.add(unit.isPresent() ? changed.with(unit.get()) : changed);
        }
        return columns;
    }

    /** Beside volts of both ends amps, watts and degrees were read on site too. */
    private static List<Column> readings(List<Column> plain) {
        boolean read = plain.stream().anyMatch(c -> c.meaning() == Meaning.SEEN_VOLTS_FAR);
        if (!read) {
            return plain;
        }
        Map<Meaning, Meaning> seen = Map.of(
                Meaning.VOLTS, Meaning.SEEN_VOLTS_NEAR,
                Meaning.CURRENT, Meaning.SEEN_AMPS,
                Meaning.WATTS, Meaning.SEEN_WATTS);
        List<Column> columns = new ArrayList<>();
        for (Column column : plain) {
            Meaning meaning = seen.getOrDefault(column.meaning(), column.meaning());
            boolean free = plain.stream().noneMatch(c -> c.meaning() == meaning);
            columns.add(free ? column.meaning(meaning) : column);
        }
        return columns;
    }

    /** Finds each column's decimal mark; a column without evidence follows the others. */
    private static List<Column> decimals(List<Column> plain, List<RawRow> rows, Mapping mapping) {
        List<Habit> habits = new ArrayList<>();
        for (Column column : plain) {
            Habit habit = new Habit();
            if (column.meaning().isMeasured() || column.heading().unit().isPresent()) {
                for (RawRow row : rows) {
                    RawCell cell = row.cell(column.at());
                    if (cell.form() == RawCell.Form.TEXT) {
                        habit.look(cell.text());
                    }
                }
            }
            habits.add(habit);
        }
        Optional<Decimal> together = Habit.together(habits);
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < plain.size(); i++) {
            Optional<Decimal> answer = decimal(plain.get(i).shown(), mapping);
            Optional<Decimal> own = habits.get(i).found();
            columns.add(plain.get(i).with(answer.or(() -> own).or(() -> together)));
        }
        return columns;
    }

    private static Optional<Decimal> decimal(String heading, Mapping mapping) {
        return switch (mapping.answer("decimal:" + heading, mapping.answer("decimal", ""))) {
            case "point" -> Optional.of(Decimal.POINT);
            case "comma" -> Optional.of(Decimal.COMMA);
            default -> Optional.empty();
        };
    }

    /** True when a sheet reads like a list of devices: something to call them by, and something a plan can use. */
    static boolean isList(Listing listing) {
        boolean named = listing.has(Meaning.NAME, Meaning.KIND);
        boolean useful = listing.saysPower()
                || listing.saysReadings()
                || listing.has(
                        Meaning.LENGTH,
                        Meaning.FIXED_LENGTH,
                        Meaning.QUANTITY,
                        Meaning.FEEDER,
                        Meaning.PORT,
                        Meaning.SERIAL,
                        Meaning.MAC,
                        Meaning.ASSET);
        return listing.heading().isPresent() && named && useful;
    }

    /** True when nearly all rows of a sheet stand in an earlier one as they are. */
    static boolean isCopy(Listing later, Listing earlier) {
        Set<String> there = new HashSet<>();
        for (RawRow row : earlier.sheet().rows()) {
            there.add(text(row));
        }
        int same = 0;
        for (RawRow row : later.sheet().rows()) {
            same += there.contains(text(row)) ? 1 : 0;
        }
        return same >= 3 && same * 5 >= later.sheet().rows().size() * 4;
    }

    private static String text(RawRow row) {
        StringBuilder out = new StringBuilder();
        for (RawCell cell : row.cells()) {
            out.append(Spelling.fold(cell.text())).append('\t');
        }
        return out.toString();
    }
}
