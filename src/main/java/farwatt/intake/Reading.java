package farwatt.intake;

import farwatt.plan.Row;
import farwatt.quantity.Decimal;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Notice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One pass over a file's sheets: headings, columns, rows, totals. */
final class Reading {
    private static final int BETWEEN_CHECKS = 1024;

    private final ListFile file;
    private final Wishes wishes;
    private final Cancel cancel;
    private final List<Assembler.Item> items = new ArrayList<>();
    private final List<ColumnMeaning> columns = new ArrayList<>();
    private final Map<String, Row> ownColumns = new LinkedHashMap<>();
    private final List<Question> questions = new ArrayList<>();
    private final List<Notice> notices = new ArrayList<>();
    private final List<TotalsCheck> totals = new ArrayList<>();

    Reading(ListFile file, Wishes wishes, Cancel cancel) {
        this.file = file;
        this.wishes = wishes;
        this.cancel = cancel;
        questions.addAll(file.questions());
        notices.addAll(file.notices());
    }

    Outcome outcome() {
        for (Sheet sheet : file.sheets()) {
            sheet(sheet);
        }
        Assembler assembler = new Assembler(items);
        assembler.assemble();
        return new Outcome(
                assembler.devices(),
                assembler.runs(),
                List.of(),
                assembler.zones(),
                List.copyOf(ownColumns.values()),
                assembler.held(),
                columns,
                assembler.report(),
                questions,
                totals,
                notices,
                wishes.mapping());
    }

    private void sheet(Sheet raw) {
        Listing listing = listing(raw);
        List<Sorted> sorted = new RowSorter(listing).sorted();
        List<RawRow> rows = sorted.stream()
                .filter(s -> s.kind() == Sorted.Kind.DEVICE)
                .map(Sorted::row)
                .toList();
        OwnColumns own = new OwnColumns(listing, rows);
        own.rows().forEach(row -> ownColumns.putIfAbsent(row.id(), row));
        for (Column column : listing.columns()) {
            String name = own.all().stream()
                    .filter(o -> o.column().at() == column.at())
                    .map(OwnColumns.Own::name)
                    .findFirst()
                    .orElse("");
            columns.add(new ColumnMeaning(
                    raw.name(), column.shown(), column.meaning(), column.confidence(), column.reason(), name));
        }
        RowReader reader = new RowReader(listing, own);
        int first = items.size();
        for (Sorted row : sorted) {
            if (items.size() % BETWEEN_CHECKS == 0) {
                cancel.check();
            }
            items.add(new Assembler.Item(listing, row, draft(row, reader)));
        }
        duplicates(listing, items.subList(first, items.size()));
    }

    private static Draft draft(Sorted row, RowReader reader) {
        if (row.kind() == Sorted.Kind.DEVICE) {
            return reader.read(row);
        }
        Draft draft = new Draft();
        draft.say(Remark.out(reason(row.kind())));
        return draft;
    }

    private static IntakeSays reason(Sorted.Kind kind) {
        return switch (kind) {
            case TITLE -> IntakeSays.OUT_TITLE;
            case HEADING -> IntakeSays.OUT_HEADING;
            case HEADING_AGAIN -> IntakeSays.OUT_HEADING_AGAIN;
            case SECTION -> IntakeSays.OUT_SECTION;
            case TOTAL -> IntakeSays.OUT_TOTAL;
            case NOTE -> IntakeSays.OUT_NOTE;
            case RULE -> IntakeSays.OUT_RULE;
            case HIDDEN -> IntakeSays.OUT_HIDDEN;
            case DEVICE -> throw new IllegalArgumentException("a device is not left out");
        };
    }

    private Listing listing(Sheet sheet) {
        Optional<Heading> heading = Heading.find(sheet);
        int after = heading.map(Heading::after).orElse(0);
        List<RawRow> rows = sheet.rows().subList(after, sheet.rows().size());
        List<HeadingText> texts = heading.map(Heading::texts).orElseGet(() -> blank(sheet.width()));
        Mapper mapper = new Mapper(texts, rows, wishes.mapping(), Set.of());
        return new Listing(sheet, heading, decimals(mapper.columns(), rows), wishes.mapping());
    }

    private static List<HeadingText> blank(int width) {
        List<HeadingText> texts = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            texts.add(HeadingText.of(""));
        }
        return texts;
    }

    /** Finds each column's decimal mark; a column without evidence follows the others. */
    private List<Column> decimals(List<Column> plain, List<RawRow> rows) {
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
            Optional<Decimal> answered = answered(plain.get(i).shown());
            Optional<Decimal> own = habits.get(i).found();
            columns.add(plain.get(i).with(answered.or(() -> own).or(() -> together)));
        }
        return columns;
    }

    private Optional<Decimal> answered(String heading) {
        String answer =
                wishes.mapping().answer("decimal:" + heading, wishes.mapping().answer("decimal", ""));
        return switch (answer) {
            case "point" -> Optional.of(Decimal.POINT);
            case "comma" -> Optional.of(Decimal.COMMA);
            default -> Optional.empty();
        };
    }

    private static void duplicates(Listing listing, List<Assembler.Item> items) {
        for (Column column : Identifiers.unique(listing)) {
            List<Assembler.Item> devices = items.stream()
                    .filter(i -> i.sorted().kind() == Sorted.Kind.DEVICE)
                    .toList();
            List<String> texts = devices.stream()
                    .map(i -> Spelling.strip(i.sorted().row().cell(column.at()).text()))
                    .toList();
            Identifiers.twice(texts, column.meaning()).forEach((later, first) -> {
                devices.get(later)
                        .draft()
                        .say(Remark.flag(
                                IntakeSays.SAME_IDENTIFIER,
                                column.shown(),
                                devices.get(first).place()));
                devices.get(first)
                        .draft()
                        .say(Remark.flag(
                                IntakeSays.SAME_IDENTIFIER,
                                column.shown(),
                                devices.get(later).place()));
            });
        }
    }

    static String question(IntakeSays code, Object... parts) {
        return Messages.text(code, parts);
    }
}
