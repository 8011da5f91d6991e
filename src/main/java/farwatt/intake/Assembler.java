package farwatt.intake;

import farwatt.catalogue.Catalogue;
import farwatt.plan.Cell;
import farwatt.plan.Row;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

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

    private static final Set<String> NUMBERS = Set.of("class", "uplink_class", "port", "priority");

    private final List<Item> items;
    private final Names names = new Names();
    private final Map<String, String> zones = new LinkedHashMap<>();
    private final List<Row> devices = new ArrayList<>();
    private final List<Row> runs = new ArrayList<>();
    private final List<Row> readings = new ArrayList<>();
    private final List<Row> held = new ArrayList<>();
    private final List<Row> switches = new ArrayList<>();
    private final List<ReportLine> report = new ArrayList<>();
    /** Names seen with their zone → place of the row. */
    private final Map<String, String> seen = new HashMap<>();

    /** Rows of one list mostly have the same names, which they then share. */
    private Row like = Row.of("");

    private final IdentityHashMap<Listing, List<String>> headings = new IdentityHashMap<>();

    Assembler(List<Item> items) {
        this.items = items;
    }

    void assemble() {
        Set<Item> plain = reserveTypedNames();
        zoneNames();
        for (Item item : items) {
            if (item.isTaken()) {
                take(item, plain.contains(item));
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
    private Set<Item> reserveTypedNames() {
        Set<Item> plain = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Item item : items) {
            if (item.isTaken() && isSingle(item) && names.take(item.draft().name())) {
                plain.add(item);
            }
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

    private void take(Item item, boolean plain) {
        List<String> ids = item.draft().isPart() ? List.of() : ids(item, plain);
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
            readings.add(filled(Row.of(item.draft().name()), item.draft().readings()));
        }
        boolean changed = item.draft().weight() == Remark.Weight.CHANGE;
        line(item, changed ? RowState.CHANGED : RowState.TAKEN, ids);
    }

    private List<String> ids(Item item, boolean plain) {
        Draft draft = item.draft();
        String name = draft.name();
        String key = Spelling.lower(name + "\n" + draft.zone());
        String before = seen.putIfAbsent(key, item.place());
        if (plain) {
            return List.of(name);
        }
        if (draft.count() > 1) {
            List<String> ids = names.several(name, draft.count());
            draft.say(Remark.change(IntakeSays.EXPANDED, draft.count(), ids.get(0), ids.get(ids.size() - 1)));
            return ids;
        }
        String id = before != null ? names.numbered(name) : names.apart(name, draft.zone());
        draft.say(Remark.change(
                before != null ? IntakeSays.NAME_AGAIN : IntakeSays.NAME_ELSEWHERE,
                name,
                id,
                before != null ? before : ""));
        return List.of(id);
    }

    private Row device(Draft draft, String id, int which) {
        Row row = filled(placed(Row.of(id), draft), draft.device());
        for (Map.Entry<String, List<String>> each : draft.each().entrySet()) {
            if (which < each.getValue().size()) {
                row = row.with(each.getKey(), each.getValue().get(which));
            }
        }
        return row;
    }

    /** A switch has not all the names of a device; what it has none for goes into its note. */
    private Row node(Draft draft, String id) {
        Map<String, String> cells = new LinkedHashMap<>();
        List<String> rest = new ArrayList<>();
        draft.device().forEach((key, text) -> {
            if (Catalogue.find(Table.SWITCHES, key).isPresent()) {
                cells.put(key, text);
            } else {
                rest.add(key + ": " + text);
            }
        });
        if (!rest.isEmpty()) {
            cells.merge("note", String.join(", ", rest), (note, more) -> note + " " + more);
        }
        return filled(placed(Row.of(id), draft), cells);
    }

    private Row placed(Row row, Draft draft) {
        String zone = zones.get(Spelling.lower(draft.zone()));
        return zone == null ? row : row.with("zone", zone);
    }

    private static boolean hasRun(Draft draft) {
        return draft.run().containsKey("length") || draft.run().containsKey("from");
    }

    private Row run(Draft draft, String device, int which) {
        String id = names.apart("run " + device, "");
        Row row = Row.of(id);
        String from = draft.run().get("from");
        if (from != null) {
            row = row.with("from", from);
        }
        row = row.with("to", device);
        Map<String, String> rest = new LinkedHashMap<>(draft.run());
        rest.remove("from");
        if (which < draft.ports().size()) {
            rest.put("port", draft.ports().get(which));
        } else if (which > 0) {
            rest.remove("port");
        }
        return filled(row, rest);
    }

    private Row filled(Row row, Map<String, String> cells) {
        Map<String, Cell> all = new LinkedHashMap<>();
        row.forEach(all::put);
        cells.forEach((key, text) -> all.put(key, cell(key, text)));
        like = Row.of(row.id(), List.copyOf(all.keySet()), List.copyOf(all.values()), like);
        return like;
    }

    private static Cell cell(String key, String text) {
        if (key.equals("screened")) {
            return Cell.YES;
        }
        return NUMBERS.contains(key) ? Cell.number(text) : Cell.text(text);
    }

    private void hold(Item item) {
        Draft draft = item.draft();
        String name = draft.name().isEmpty() ? "unnamed" : draft.name();
        String id = names.take(name) ? name : names.numbered(name);
        Row row = filled(placed(Row.of(id).with("in_use", Cell.NO), draft), draft.device());
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
                item.place(), state, shown, item.sorted().row(), draft.remarks(), draft.understood(), made));
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
