package farwatt.intake;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Messages;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a newer list no longer names or says otherwise: how it is told, asked and done. */
final class TakeOut {
    private final Plan plan;

    TakeOut(Plan plan) {
        this.plan = plan;
    }

    /** The changes that do with the devices gone as was wished. Rows are dropped from the end, so that places hold. */
    List<Change> changes(List<String> gone, TakeIn.Gone wish) {
        Set<String> names = new HashSet<>();
        gone.forEach(id -> names.add(Rows.fold(id)));
        return switch (wish) {
            case LEAVE -> List.of();
            case OUT_OF_USE ->
                gone.stream()
                        .<Change>map(id -> new Change.SetCell(Table.DEVICES, id, "in_use", Optional.of(Cell.NO)))
                        .toList();
            case REMOVE -> {
                List<Change> dropped = dropped(Table.RUNS, names);
                dropped.addAll(dropped(Table.DEVICES, names));
                yield dropped;
            }
        };
    }

    private List<Change> dropped(Table table, Set<String> names) {
        List<Change> dropped = new ArrayList<>();
        Rows rows = plan.rows(table);
        for (int place = rows.size() - 1; place >= 0; place--) {
            Row row = rows.at(place);
            String name = table == Table.RUNS ? row.text("to") : row.id();
            if (names.contains(Rows.fold(name))) {
                dropped.add(new Change.DropRow(table, place, row.id()));
            }
        }
        return dropped;
    }

    /** The cells a list says otherwise, with what the plan has. */
    static List<Difference> differences(Plan plan, List<Change> changes) {
        List<Difference> differences = new ArrayList<>();
        for (Change change : changes) {
            if (change instanceof Change.SetCell set) {
                String before = plan.rows(set.table())
                        .row(set.id())
                        .map(row -> row.text(set.name()))
                        .orElse("");
                String after = set.cell().map(Cell::text).orElse("");
                differences.add(new Difference(set.id(), set.name(), before, after));
            }
        }
        return differences;
    }

    /** What a person should decide about them. */
    static List<Question> questions(List<Difference> differences, List<String> gone, TakeIn.Manner manner) {
        List<Question> questions = new ArrayList<>();
        Set<String> differ = new HashSet<>();
        differences.forEach(d -> differ.add(d.id()));
        if (!differ.isEmpty() || manner.known() == TakeIn.Known.ADD) {
            questions.add(new Question(
                    "known",
                    Messages.text(IntakeSays.ASK_KNOWN, differ.size()),
                    List.of("update", "skip", "add"),
                    word(manner.known().name())));
        }
        if (!gone.isEmpty()) {
            questions.add(new Question(
                    "gone",
                    Messages.text(IntakeSays.ASK_GONE, gone.size(), Names.spoken(gone)),
                    List.of("leave", "out-of-use", "remove"),
                    word(manner.gone().name())));
        }
        return questions;
    }

    private static String word(String name) {
        return Spelling.lower(name).replace('_', '-');
    }
}
