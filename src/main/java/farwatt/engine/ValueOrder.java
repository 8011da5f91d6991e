package farwatt.engine;

import farwatt.catalogue.Catalogue;
import farwatt.language.Type;
import farwatt.language.Wanted;
import farwatt.plan.Cell;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a person's values in an order in which each finds the types of those it uses already known. */
final class ValueOrder {
    private static final Pattern WORD = Pattern.compile("[\\p{L}][\\p{L}\\p{N}_]*");

    private final Model model;
    private final Col col;

    ValueOrder(Model model) {
        this.model = model;
        col = model.columns.need(Table.VALUES, "is");
    }

    void fill(CellFiller filler) {
        int count = model.layout.size(Table.VALUES);
        new Strong(count) {
            @Override
            int[] reads(int value) {
                return mentioned(value);
            }

            @Override
            void found(int[] set, boolean loops) {
                for (int place : set) {
                    fill(filler, place);
                }
                if (loops) {
                    // whatever order: each must be seen once with the others known
                    for (int place : set) {
                        fill(filler, place);
                    }
                }
            }
        }.run();
    }

    private String text(int place) {
        return model.plan().rows(Table.VALUES).at(place).text("is");
    }

    private int[] mentioned(int place) {
        IntList found = new IntList(4);
        Matcher words = WORD.matcher(text(place));
        while (words.find()) {
            int row = model.layout.value(words.group());
            if (row >= 0) {
                found.add(row - col.base);
            }
        }
        return found.toArray();
    }

    /** Reads one value. */
    void fill(CellFiller filler, int place) {
        CellVertex vertex = filler.vertexOf(col);
        var where = model.cells.place(col, place);
        filler.say(where, List.of());
        Optional<Cell> cell = model.plan().rows(Table.VALUES).at(place).cell("is");
        String name = model.layout.id(col.base + place);
        if (cell.isEmpty() || cell.get().text().isBlank()) {
            model.names.valueType(col.base + place, Type.Plain.UNKNOWN);
            vertex.clear(place);
            return;
        }
        if (Catalogue.all().stream().anyMatch(n -> n.key().equals(name))) {
            filler.say(where, List.of(Notice.of(Level.WARN, EngineCode.NAME_TAKEN, where, name)));
        }
        filler.expression(vertex, place, cell.get().text(), "", Wanted.ANY, where)
                .ifPresent(bound ->
                        model.names.valueType(col.base + place, bound.checked().type()));
    }
}
