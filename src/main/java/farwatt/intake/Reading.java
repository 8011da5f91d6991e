package farwatt.intake;

import farwatt.plan.Row;
import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A file's sheets understood: headings, columns, rows, totals. Keeps what it needs to read one row again. For one thread. */
final class Reading {
    private static final int BETWEEN_CHECKS = 1024;

    private final ListFile file;
    private Wishes wishes;
    private final Cancel cancel;
    private final List<Assembler.Item> items = new ArrayList<>();
    private final List<ColumnMeaning> columns = new ArrayList<>();
    private final Map<String, Row> ownColumns = new LinkedHashMap<>();
    private final List<Row> switches = new ArrayList<>();
    private final List<Question> questions = new ArrayList<>();
    private final List<Notice> notices = new ArrayList<>();
    /**
     * One listing with what reads its rows, and where its rows stand among all; no reader for a list of ports, whose
     * rows are read together.
     */
    private record Part(Listing listing, Optional<RowReader> reader, int first, int end) {}

    private final List<Part> parts = new ArrayList<>();

    Reading(ListFile file, Wishes wishes, Cancel cancel) {
        this.file = file;
        this.wishes = wishes;
        this.cancel = cancel;
        questions.addAll(file.questions());
        notices.addAll(file.notices());
    }

    Outcome outcome() {
        read();
        return assembled();
    }

    private void read() {
        SheetChoice choice = new SheetChoice(Mends.applied(file.sheets(), wishes), wishes.mapping());
        questions.addAll(choice.questions());
        notices.addAll(choice.notices());
        for (Listing listing : choice.all()) {
            if (choice.isTaken(listing)) {
                taken(listing, choice.taken());
            } else {
                listing.sheet().rows().forEach(row -> out(listing, row, choice.why(listing)));
            }
        }
    }

    /** Puts a cell of one row right and reads that row anew; empty where only reading everything anew will do. */
    Optional<Outcome> mended(Wishes.Mend mend) {
        int at = 0;
        while (at < items.size() && !isDeviceAt(mend.place(), items.get(at))) {
            at++;
        }
        Optional<Part> part = part(at).filter(p -> p.reader().isPresent());
        Optional<Column> column = part.flatMap(p -> Mends.column(p.listing(), mend.heading()));
        if (column.isEmpty()) {
            return Optional.empty();
        }
        Assembler.Item before = items.get(at);
        RawRow row = before.sorted().row().with(column.get().at(), RawCell.text(mend.text()));
        Sorted sorted = new Sorted(row, Sorted.Kind.DEVICE, before.sorted().section());
        Draft draft = part.orElseThrow().reader().orElseThrow().read(sorted);
        wishes = wishes.mended(mend.place(), mend.heading(), mend.text());
        sayMended(before.listing(), sorted, draft);
        draft.settle();
        items.set(at, new Assembler.Item(before.listing(), sorted, draft));
        return Optional.of(assembled());
    }

    private static boolean isDeviceAt(String place, Assembler.Item item) {
        return item.sorted().kind() == Sorted.Kind.DEVICE && item.place().equals(place);
    }

    private Optional<Part> part(int at) {
        return parts.stream().filter(p -> at >= p.first() && at < p.end()).findFirst();
    }

    private Outcome assembled() {
        items.forEach(item -> item.draft().unsettle());
        List<TotalsCheck> totals = new ArrayList<>();
        for (Part part : parts) {
            List<Assembler.Item> here = items.subList(part.first(), part.end());
            Identifiers.flagTwice(part.listing(), here);
            totals.addAll(new Totals(part.listing()).check(here));
        }
        Assembler assembler = new Assembler(items);
        assembler.assemble();
        List<Question> asked = new ArrayList<>(questions);
        asked.addAll(new Asking(items, wishes.mapping()).questions());
        return new Outcome(
                assembler.devices(),
                assembler.runs(),
                switches(assembler),
                assembler.readings(),
                assembler.zones(),
                List.copyOf(ownColumns.values()),
                assembler.held(),
                columns,
                assembler.report(),
                asked,
                totals,
                notices,
                wishes.mapping());
    }

    private List<Row> switches(Assembler assembler) {
        List<Row> all = new ArrayList<>(assembler.switches());
        all.addAll(switches);
        return all;
    }

    private void out(Listing listing, RawRow row, IntakeSays why) {
        Draft draft = new Draft();
        draft.say(Remark.out(why));
        draft.settle();
        items.add(new Assembler.Item(listing, new Sorted(row, Sorted.Kind.NOTE, ""), draft));
    }

    private void taken(Listing listing, int sheets) {
        FillDown gaps = new FillDown(listing);
        List<Sorted> sorted = gaps.fill(new RowSorter(listing).sorted());
        questions.addAll(gaps.questions());
        Optional<PortsList> ports = PortsList.of(listing, sorted);
        Map<Integer, Draft> ofPorts = ports.map(p -> p.read(sorted)).orElse(Map.of());
        ports.ifPresent(p -> {
            switches.addAll(p.switches());
            questions.addAll(p.questions());
        });
        OwnColumns own = ports.isPresent() ? OwnColumns.NONE : ownColumns(listing, sorted);
        describe(listing, own);
        String place =
                sheets > 1 && !listing.has(Meaning.ZONE) ? listing.sheet().name() : "";
        RowReader reader = new RowReader(listing, own, place, Feeders.named(listing, sorted));
        int first = items.size();
        for (Sorted row : sorted) {
            if (items.size() % BETWEEN_CHECKS == 0) {
                cancel.check();
            }
            Draft draft = ofPorts.containsKey(row.row().number())
                    ? ofPorts.get(row.row().number())
                    : draft(row, reader);
            if (gaps.isFilled(row.row()) && row.kind() == Sorted.Kind.DEVICE) {
                draft.say(Remark.change(IntakeSays.AS_ABOVE));
            }
            sayMended(listing, row, draft);
            draft.settle();
            items.add(new Assembler.Item(listing, row, draft));
        }
        parts.add(new Part(listing, ports.isPresent() ? Optional.empty() : Optional.of(reader), first, items.size()));
    }

    private void sayMended(Listing listing, Sorted row, Draft draft) {
        if (wishes.mends().isEmpty() || row.kind() != Sorted.Kind.DEVICE) {
            return;
        }
        String place = listing.sheet().place(row.row());
        for (Wishes.Mend mend : wishes.mends()) {
            if (mend.place().equals(place)) {
                draft.say(Remark.change(IntakeSays.MENDED, mend.heading(), mend.text()));
            }
        }
    }

    private OwnColumns ownColumns(Listing listing, List<Sorted> sorted) {
        List<RawRow> rows = sorted.stream()
                .filter(s -> s.kind() == Sorted.Kind.DEVICE)
                .map(Sorted::row)
                .toList();
        OwnColumns own = new OwnColumns(listing, rows);
        own.rows().forEach(row -> ownColumns.putIfAbsent(row.id(), row));
        return own;
    }

    private void describe(Listing listing, OwnColumns own) {
        for (Column column : listing.columns()) {
            columns.add(new ColumnMeaning(
                    listing.sheet().name(),
                    column.shown(),
                    column.meaning(),
                    column.confidence(),
                    column.reason(),
                    own.name(column)));
        }
        for (Listing.Rival rival : listing.rivals()) {
            notices.add(Notice.of(Level.WARN, IntakeSays.RIVAL, Place.NONE, rival.heading(), rival.winner()));
        }
        if (listing.heading().isEmpty()) {
            notices.add(Notice.of(Level.WARN, IntakeSays.NO_HEADING, Place.NONE));
        }
        if (!listing.saysPower() && !listing.saysReadings() && switches.isEmpty()) {
            notices.add(Notice.of(Level.WARN, IntakeSays.LIST_WITHOUT_POWER, Place.NONE));
        }
        questions.addAll(Asking.columns(listing));
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
}
