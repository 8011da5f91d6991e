package farwatt.workbook;

import farwatt.catalogue.Name;
import farwatt.catalogue.Stage;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Messages;
import farwatt.report.Place;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One table of a hand-over held against the sheet that came back: columns by heading, lines by id. */
final class TableBack {
    /** Names of the test sheet's columns for readings. */
    static final Map<String, String> READINGS = Map.of(
            "r_near", "seen_volts_near",
            "r_far", "seen_volts_far",
            "r_amps", "seen_amps",
            "r_watts", "seen_watts",
            "r_temp", "seen_temp");

    private static final String TOTALS = "total";

    private final Gathered gathered;
    private final Table table;
    private final Schedule schedule;
    private final SheetIn sheet;
    /** Column of the sheet → place of ours. */
    private final Map<Integer, Integer> columns;

    private final Map<String, Name> names = new HashMap<>();
    private final Set<String> seen = new HashSet<>();

    TableBack(Gathered gathered, Table table, Schedule schedule, SheetIn sheet) {
        this.gathered = gathered;
        this.table = table;
        this.schedule = schedule;
        this.sheet = sheet;
        columns = new HashMap<>();
        for (Name name : gathered.calc.names(table)) {
            if (name.stage() == Stage.GIVEN) {
                names.put(name.key(), name);
            }
        }
    }

    void read() {
        Optional<SheetIn.Line> headings = Headings.find(sheet, schedule);
        if (headings.isEmpty()) {
            gathered.left.add(
                    new Back.Left(sheet.name(), "", Messages.text(WorkbookCode.NO_HEADINGS, schedule.name())));
            return;
        }
        columns.putAll(Headings.columns(headings.get(), schedule));
        Map<String, Integer> ours = new HashMap<>();
        for (int line = 0; line < schedule.lines().size(); line++) {
            ours.put(key(schedule.lines().at(line).get(0)), line);
        }
        for (SheetIn.Line line : sheet.lines()) {
            if (line.number() > headings.get().number() && !isTotals(line)) {
                line(line, ours);
            }
        }
        ours.forEach((id, line) -> {
            if (!seen.contains(id)) {
                gathered.missing.add(
                        Place.row(table.key(), text(schedule.lines().at(line).get(0))));
            }
        });
    }

    private boolean isTotals(SheetIn.Line line) {
        boolean formula = line.cells().values().stream().anyMatch(SheetIn.Cell::hasFormula);
        return formula && id(line).equals(TOTALS);
    }

    private String id(SheetIn.Line line) {
        for (Map.Entry<Integer, Integer> column : columns.entrySet()) {
            if (column.getValue() == 0) {
                return line.at(column.getKey()).text().strip();
            }
        }
        return "";
    }

    private void line(SheetIn.Line line, Map<String, Integer> ours) {
        String id = id(line);
        if (id.isEmpty()) {
            boolean meant =
                    columns.keySet().stream().anyMatch(at -> !line.at(at).isBlank());
            if (meant) {
                gathered.leave(where(line, 0), SheetIn.Cell.NONE, WorkbookCode.NO_ID);
            }
            return;
        }
        if (!seen.add(Rows.fold(id))) {
            gathered.leave(where(line, 0), line.at(0), WorkbookCode.TWICE, id);
            return;
        }
        Integer known = ours.get(Rows.fold(id));
        if (known == null) {
            fresh(line, id);
        } else {
            compare(
                    line,
                    text(schedule.lines().at(known).get(0)),
                    schedule.lines().at(known));
        }
    }

    private void compare(SheetIn.Line line, String id, List<Entry> entries) {
        line.cells().forEach((at, cell) -> {
            Integer place = columns.get(at);
            boolean ours = place != null && entries.get(place).content() instanceof Entry.Live;
            if (cell.hasFormula() && !ours) {
                gathered.formula(where(line, at), cell);
            }
            if (place == null) {
                gathered.leave(where(line, at), cell, WorkbookCode.NO_COLUMN);
            }
        });
        columns.forEach((at, place) -> {
            SheetIn.Cell cell = line.at(at);
            if (place > 0 && !Gathered.isSame(entries.get(place), cell)) {
                differs(line, at, schedule.columns().get(place), id, entries.get(place));
            }
        });
    }

    private void differs(SheetIn.Line line, int at, Column column, String id, Entry entry) {
        SheetIn.Cell cell = line.at(at);
        Optional<Name> name = name(column);
        if (name.isPresent()) {
            gathered.change(table, id, name.get(), cell, where(line, at));
        } else if (!(entry.content() instanceof Entry.Live) && !cell.isBlank()) {
            gathered.leave(where(line, at), cell, WorkbookCode.WORKED_OUT, column.heading());
        }
    }

    /** The given cell that a column shows; of the test sheet the readings alone. */
    private Optional<Name> name(Column column) {
        boolean readings = schedule.name().equals(Titles.TEST);
        String key = readings ? READINGS.getOrDefault(column.key(), "") : column.key();
        boolean given = readings || column.band() == Column.Band.PLANNED;
        return given ? Optional.ofNullable(names.get(key)) : Optional.empty();
    }

    private void fresh(SheetIn.Line line, String id) {
        String where = where(line, 0);
        boolean mayAdd = !schedule.name().equals(Titles.TEST);
        if (!mayAdd || gathered.base.find(id).isPresent()) {
            gathered.leave(where, line.at(0), mayAdd ? WorkbookCode.ELSEWHERE : WorkbookCode.NO_SUCH_RUN, id);
            return;
        }
        Row row = Row.of(id);
        for (Map.Entry<Integer, Integer> one : columns.entrySet()) {
            SheetIn.Cell cell = line.at(one.getKey());
            Optional<Name> name = name(schedule.columns().get(one.getValue()));
            if (name.isPresent() && !cell.isBlank()) {
                var typed = gathered.given(id, name.get(), cell, where(line, one.getKey()));
                row = typed.isPresent() ? row.with(name.get().key(), typed.get()) : row;
            }
        }
        gathered.fresh.add(new Gathered.Fresh(table, row, where));
    }

    private String where(SheetIn.Line line, int column) {
        return sheet.name() + "!" + Places.letters(column) + line.number();
    }

    private static String key(Entry id) {
        return Rows.fold(text(id));
    }

    private static String text(Entry id) {
        return id.shown() instanceof Entry.Words words ? words.text().strip() : "";
    }
}
