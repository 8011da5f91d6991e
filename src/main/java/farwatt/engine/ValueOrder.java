package farwatt.engine;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Reading;
import farwatt.language.Coloured;
import farwatt.language.Language;
import farwatt.language.Type;
import farwatt.language.Wanted;
import farwatt.plan.Cell;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.List;
import java.util.Optional;

/** Reads a person's values in an order in which each finds the types of those it uses already known. */
final class ValueOrder {
    private final Model model;
    private final Col col;

    ValueOrder(Model model) {
        this.model = model;
        col = model.columns.need(Table.VALUES, "is");
    }

    void fill(CellFiller filler) {
        new Strong(model.layout.size(Table.VALUES)) {
            @Override
            int[] reads(int value) {
                return mentioned(value);
            }

            @Override
            void found(int[] set, boolean loops) {
                boolean learnt = true;
                while (learnt) {
                    learnt = false;
                    for (int place : set) {
                        learnt |= fill(filler, place);
                    }
                    // a name may look like a value's without being it, so a loop of names need not be one of values
                    learnt &= loops;
                }
            }
        }.run();
    }

    private String text(int place) {
        return model.plan().rows(Table.VALUES).at(place).text("is");
    }

    private int[] mentioned(int place) {
        String text = text(place);
        IntList found = new IntList(4);
        for (Coloured part : Language.parse(text, model.units, Decimal.POINT).colours()) {
            if (part.colour() == Coloured.Colour.NAME) {
                int row = model.layout.value(
                        text.substring(part.span().from(), part.span().to()));
                if (row >= 0) {
                    found.add(row - col.base);
                }
            }
        }
        return found.toArray();
    }

    /** Reads one value; true if its type is another one than was known. */
    boolean fill(CellFiller filler, int place) {
        Type before = model.names.valueType(col.base + place);
        model.names.valueType(col.base + place, read(filler, place));
        return !before.equals(model.names.valueType(col.base + place));
    }

    private Type read(CellFiller filler, int place) {
        CellVertex vertex = filler.vertexOf(col);
        Place where = model.cells.place(col, place);
        filler.say(where, List.of());
        Optional<Cell> cell = model.plan().rows(Table.VALUES).at(place).cell("is");
        String name = model.layout.id(col.base + place);
        if (cell.isEmpty() || cell.get().text().isBlank()) {
            vertex.clear(place);
            return Type.Plain.UNKNOWN;
        }
        if (Catalogue.all().stream().anyMatch(n -> n.key().equals(name))) {
            filler.say(where, List.of(Notice.of(Level.WARN, EngineCode.NAME_TAKEN, where, name)));
        }
        if (filler.reading(col.name, name, cell.get()) instanceof Reading.Wrong wrong) {
            filler.wrong(vertex, place, where, wrong.notice());
            return Type.Plain.UNKNOWN;
        }
        return filler.expression(vertex, place, cell.get().text(), "", Wanted.ANY, where)
                .map(bound -> bound.planned().type())
                .orElse(Type.Plain.UNKNOWN);
    }
}
