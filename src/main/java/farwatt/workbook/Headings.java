package farwatt.workbook;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds the headings of a table on a sheet that people worked in: rows above it and columns may have moved. */
final class Headings {
    private Headings() {}

    /** The line that has most of a table's headings, its first one among them. */
    static Optional<SheetIn.Line> find(SheetIn sheet, Schedule schedule) {
        String first = schedule.columns().get(0).title();
        Optional<SheetIn.Line> best = Optional.empty();
        int most = 1;
        for (SheetIn.Line line : sheet.lines()) {
            boolean named = line.cells().values().stream()
                    .anyMatch(c -> c.text().strip().equals(first));
            int found = named ? columns(line, schedule).size() : 0;
            if (found > most) {
                most = found;
                best = Optional.of(line);
            }
        }
        return best;
    }

    /** Column of the sheet → place of ours; of two alike the first is the first. */
    static Map<Integer, Integer> columns(SheetIn.Line headings, Schedule schedule) {
        List<Integer> there = headings.cells().keySet().stream().sorted().toList();
        Set<Integer> used = new HashSet<>();
        Map<Integer, Integer> columns = new HashMap<>();
        for (int place = 0; place < schedule.columns().size(); place++) {
            String title = schedule.columns().get(place).title();
            for (int at : there) {
                if (headings.at(at).text().strip().equals(title) && used.add(at)) {
                    columns.put(at, place);
                    break;
                }
            }
        }
        return columns;
    }
}
