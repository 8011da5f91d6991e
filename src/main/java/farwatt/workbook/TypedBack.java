package farwatt.workbook;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Name;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Values, practice, needs and rules that came back changed: only what was typed can be taken. */
final class TypedBack {
    private final Gathered gathered;
    private final Schedule schedule;
    private final SheetIn sheet;

    TypedBack(Gathered gathered, Schedule schedule, SheetIn sheet) {
        this.gathered = gathered;
        this.schedule = schedule;
        this.sheet = sheet;
    }

    void read() {
        Optional<SheetIn.Line> headings = Headings.find(sheet, schedule);
        int typed = place("typed");
        if (headings.isEmpty() || typed < 0) {
            return;
        }
        Map<Integer, Integer> columns = Headings.columns(headings.get(), schedule);
        Map<Integer, Integer> at = new HashMap<>();
        columns.forEach((column, place) -> at.put(place, column));
        Map<String, List<Entry>> ours = new HashMap<>();
        for (int i = 0; i < schedule.lines().size(); i++) {
            List<Entry> entries = schedule.lines().at(i);
            ours.put(key(entries), entries);
        }
        for (SheetIn.Line line : sheet.lines()) {
            if (line.number() > headings.get().number() && at.containsKey(typed)) {
                List<Entry> entries = ours.get(key(line, at));
                SheetIn.Cell cell = line.at(at.getOrDefault(typed, 0));
                String where = sheet.name() + "!" + Places.letters(at.getOrDefault(typed, 0)) + line.number();
                if (cell.hasFormula()) {
                    gathered.formula(where, cell);
                }
                if (entries == null) {
                    gathered.leave(where, cell, WorkbookCode.NEW_LINE);
                } else if (!Gathered.isSame(entries.get(typed), cell)) {
                    changed(entries, cell, where);
                }
            }
        }
    }

    private void changed(List<Entry> entries, SheetIn.Cell cell, String where) {
        String name = text(entries, "name");
        String row = text(entries, "row");
        switch (text(entries, "kind")) {
            case "value" -> put(Table.VALUES, name, "is", cell, where);
            case "practice" -> put(Table.PRACTICE, name, "is", cell, where);
            case "need" -> put(Table.NEEDS, name, "holds", cell, where);
            case "own rule" -> put(Table.COLUMNS, name, "is", cell, where);
            case "rule" -> {
                Optional<Plan.Spot> spot = gathered.base.find(row);
                if (spot.isPresent()) {
                    put(spot.get().table(), row, name.replace(' ', '_'), cell, where);
                } else {
                    gathered.leave(where, cell, WorkbookCode.OF_SCENARIO);
                }
            }
            default -> gathered.leave(where, cell, WorkbookCode.NEW_LINE);
        }
    }

    private void put(Table table, String id, String key, SheetIn.Cell cell, String where) {
        Optional<Name> name = gathered.calc.names(table).stream()
                .filter(n -> n.key().equals(key))
                .findFirst()
                .or(() -> Catalogue.find(table, key));
        if (name.isPresent()) {
            gathered.change(table, id, name.get(), cell, where);
        } else {
            gathered.leave(where, cell, WorkbookCode.NEW_LINE);
        }
    }

    private String key(List<Entry> entries) {
        return text(entries, "kind") + "\n" + text(entries, "name") + "\n" + text(entries, "row");
    }

    private String key(SheetIn.Line line, Map<Integer, Integer> at) {
        return text(line, at, "kind") + "\n" + text(line, at, "name") + "\n" + text(line, at, "row");
    }

    private String text(SheetIn.Line line, Map<Integer, Integer> at, String key) {
        Integer column = at.get(place(key));
        return column == null ? "" : line.at(column).text().strip();
    }

    private String text(List<Entry> entries, String key) {
        int place = place(key);
        return place >= 0 && entries.get(place).shown() instanceof Entry.Words words
                ? words.text().strip()
                : "";
    }

    private int place(String key) {
        List<Column> columns = schedule.columns();
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).key().equals(key)) {
                return i;
            }
        }
        return -1;
    }
}
