package farwatt.intake;

import farwatt.catalogue.Catalogue;
import farwatt.plan.Cell;
import farwatt.plan.Row;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes devices, runs and zones of the rows that were read, and the report's lines. */
final class Assembler {
    /** A row with what was read of it; rows that stand for no device have an empty draft with the reason. */
    record Item(Listing listing, Sorted sorted, Draft draft) {
        String place() {
            return listing.sheet().place(sorted.row());
        }

        boolean isTaken() {
            return draft.weight().compareTo(Remark.Weight.CHANGE) <= 0;
        }
    }

    private static final Row NONE = Row.of("");

    private final List<Item> items;
    private final Names names = new Names();
    private final Map<String, String> zones = new LinkedHashMap<>();
    private final List<Row> devices = new ArrayList<>();
    private final List<Row> runs = new ArrayList<>();
    private final List<Row> readings = new ArrayList<>();
    private final List<Row> held = new ArrayList<>();
    private final List<Row> switches = new ArrayList<>();
    private final List<ReportLine> report = new ArrayList<>();
    /** Names with their zone → the first row that has them, of the rows before the one at which names are looked at. */
    private final Map<String, Item> seen = new HashMap<>();

    private int seenTo;

    /** Rows of one list mostly have the same names, which they then share. */
    private final Map<List<String>, Row> alike = new HashMap<>();

    private final SharedCells shared = new SharedCells();
    private final List<String> keys = new ArrayList<>();
    private final List<Cell> cells = new ArrayList<>();

    private final IdentityHashMap<Listing, List<String>> headings = new IdentityHashMap<>();

    Assembler(List<Item> items) {
        this.items = items;
    }

    void assemble() {
        BitSet plain = reserveTypedNames();
        zoneNames();
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            if (item.isTaken()) {
                take(item, plain.get(i) ? List.of(item.draft().name()) : ids(item, i));
            } else {
                line(
                        item,
                        item.draft().weight() == Remark.Weight.OUT ? RowState.LEFT_OUT : RowState.HELD_BACK,
                        List.of());
            }
        }
        for (Item item : items) {
            if (item.draft().weight() == Remark.Weight.HOLD && !item.draft().isPart()) {
                hold(item);
            }
        }
    }

    /** A name that a person typed for one device goes before the numbered names of several. */
    private BitSet reserveTypedNames() {
        BitSet plain = new BitSet(items.size());
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            plain.set(
                    i,
                    item.isTaken() && isSingle(item) && names.take(item.draft().name()));
        }
        return plain;
    }

    private static boolean isSingle(Item item) {
        return item.draft().count() == 1 && !item.draft().isPart();
    }

    private void zoneNames() {
        for (Item item : items) {
            String zone = item.draft().zone();
            if (item.isTaken() && !zone.isEmpty()) {
                zones.computeIfAbsent(Spelling.lower(zone), z -> names.isFree(zone) ? zone : zone + " (place)");
            }
        }
        zones.values().forEach(names::take);
    }

    private void take(Item item, List<String> ids) {
        for (int i = 0; i < ids.size(); i++) {
            if (item.draft().isNode()) {
                switches.add(node(item.draft(), ids.get(i)));
            } else {
                devices.add(device(item.draft(), ids.get(i), i));
            }
            if (hasRun(item.draft())) {
                runs.add(run(item.draft(), ids.get(i), i));
            }
        }
        if (!item.draft().readings().isEmpty()) {
            readings.add(filled(item.draft().name(), item.draft().readings()));
        }
        boolean changed = item.draft().weight() == Remark.Weight.CHANGE;
        line(item, changed ? RowState.CHANGED : RowState.TAKEN, ids);
    }

    private List<String> ids(Item item, int at) {
        Draft draft = item.draft();
        if (draft.isPart()) {
            return List.of();
        }
        String name = draft.name();
        if (draft.count() > 1) {
            List<String> ids = names.several(name, draft.count());
            draft.say(Remark.change(IntakeSays.EXPANDED, draft.count(), Names.spoken(ids)));
            return ids;
        }
        Optional<Item> before = before(item, at);
        String id = before.isPresent() ? names.numbered(name) : names.apart(name, draft.zone());
        draft.say(Remark.change(
                before.isPresent() ? IntakeSays.NAME_AGAIN : IntakeSays.NAME_ELSEWHERE,
                name,
                id,
                before.map(Item::place).orElse("")));
        return List.of(id);
    }

    /** The first row before a place that has the same name in the same zone. */
    private Optional<Item> before(Item item, int at) {
        for (; seenTo < at; seenTo++) {
            Item earlier = items.get(seenTo);
            if (earlier.isTaken() && !earlier.draft().isPart()) {
                seen.putIfAbsent(nameAndZone(earlier), earlier);
            }
        }
        return Optional.ofNullable(seen.get(nameAndZone(item)));
    }

    private static String nameAndZone(Item item) {
        return Spelling.lower(item.draft().name() + "\n" + item.draft().zone());
    }

    private Row device(Draft draft, String id, int which) {
        place(draft);
        put(draft.device());
        Row row = filled(id);
        for (Map.Entry<String, List<String>> each : draft.each().entrySet()) {
            if (which < each.getValue().size()) {
                row = row.with(each.getKey(), each.getValue().get(which));
            }
        }
        return row;
    }

    /** A switch has not all the names of a device; what it has none for goes into its note. */
    private Row node(Draft draft, String id) {
        Texts known = new Texts();
        List<String> rest = new ArrayList<>();
        Texts typed = draft.device();
        for (int i = 0; i < typed.size(); i++) {
            if (Catalogue.find(Table.SWITCHES, typed.key(i)).isPresent()) {
                known.put(typed.key(i), typed.text(i));
            } else {
                rest.add(typed.key(i) + ": " + typed.text(i));
            }
        }
        if (!rest.isEmpty()) {
            String more = String.join(", ", rest);
            known.put("note", known.get("note").map(note -> note + " " + more).orElse(more));
        }
        place(draft);
        return filled(id, known);
    }

    /** Begins a row with the place it is in. */
    private void place(Draft draft) {
        String zone = draft.zone().isEmpty() ? null : zones.get(Spelling.lower(draft.zone()));
        if (zone != null) {
            put("zone", zone);
        }
    }

    private static boolean hasRun(Draft draft) {
        return draft.run().has("length") || draft.run().has("from");
    }

    private Row run(Draft draft, String device, int which) {
        Texts typed = draft.run();
        typed.get("from").ifPresent(from -> put("from", from));
        put("to", device);
        boolean own = which < draft.ports().size();
        for (int i = 0; i < typed.size(); i++) {
            boolean port = typed.key(i).equals("port");
            if (!typed.key(i).equals("from") && !(port && (own || which > 0))) {
                put(typed.key(i), typed.text(i));
            }
        }
        if (own) {
            put("port", draft.ports().get(which));
        }
        return filled(names.apart("run " + device, ""));
    }

    private Row filled(String id, Texts texts) {
        put(texts);
        return filled(id);
    }

    private void put(Texts texts) {
        for (int i = 0; i < texts.size(); i++) {
            put(texts.key(i), texts.text(i));
        }
    }

    private void put(String key, String text) {
        keys.add(key);
        cells.add(shared.of(form(key), text));
    }

    /** The row of the cells that were put. */
    private Row filled(String id) {
        Row like = alike.get(keys);
        Row row = Row.of(id, keys, cells, like == null ? NONE : like);
        if (like == null) {
            alike.put(List.copyOf(keys), row);
        }
        keys.clear();
        cells.clear();
        return row;
    }

    private static Cell.Form form(String key) {
        return switch (key) {
            case "screened" -> Cell.Form.YES_NO;
            case "class", "uplink_class", "port", "priority" -> Cell.Form.NUMBER;
            default -> Cell.Form.TEXT;
        };
    }

    private void hold(Item item) {
        Draft draft = item.draft();
        String name = draft.name().isEmpty() ? "unnamed" : draft.name();
        String id = names.take(name) ? name : names.numbered(name);
        keys.add("in_use");
        cells.add(Cell.NO);
        place(draft);
        Row row = filled(id, draft.device());
        List<String> why = new ArrayList<>();
        for (Remark remark : draft.remarks()) {
            why.add(remark.text());
        }
        String original = String.join(" · ", texts(item.sorted().row()));
        String note = row.text("note").isEmpty() ? "" : row.text("note") + " ";
        held.add(row.with("note", note + String.join(" ", why) + " [" + original + "]"));
    }

    private static List<String> texts(RawRow row) {
        return row.cells().stream()
                .map(c -> Spelling.tidy(c.text()))
                .filter(t -> !t.isEmpty())
                .toList();
    }

    private void line(Item item, RowState state, List<String> made) {
        List<String> shown = headings.computeIfAbsent(item.listing(), Assembler::shown);
        Draft draft = item.draft();
        report.add(new ReportLine(
                item.listing().sheet().name(),
                state,
                shown,
                item.sorted().row(),
                draft.remarks(),
                draft.understood(),
                made));
    }

    private static List<String> shown(Listing listing) {
        return listing.heading()
                .map(h -> h.texts().stream().map(HeadingText::shown).toList())
                .orElse(List.of());
    }

    List<Row> devices() {
        return devices;
    }

    List<Row> runs() {
        return runs;
    }

    List<Row> switches() {
        return switches;
    }

    List<Row> readings() {
        return readings;
    }

    List<Row> held() {
        return held;
    }

    List<Row> zones() {
        return zones.values().stream().distinct().map(Row::of).toList();
    }

    List<ReportLine> report() {
        return report;
    }
}
