package farwatt.file;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.CellReader;
import farwatt.catalogue.Name;
import farwatt.catalogue.PlanCells;
import farwatt.catalogue.Reading;
import farwatt.catalogue.Wording;
import farwatt.plan.Cell;
import farwatt.plan.Row;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Writes rows and cells in canonical form. */
final class RowText {
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?");
    private static final int UNKNOWN = Integer.MAX_VALUE;

    private final StringBuilder out;
    private final PlanCells cells;
    private final Wording wording;
    private final Map<Table, Map<String, Integer>> ranks = new EnumMap<>(Table.class);

    RowText(StringBuilder out, PlanCells cells, Wording wording) {
        this.out = out;
        this.cells = cells;
        this.wording = wording;
    }

    /**
     * Writes a row.
     *
     * @param table empty where it is not known
     * @param idKey key of the id, "" for a row without one
     */
    void row(Optional<Table> table, String idKey, Row row) {
        List<String> names = ordered(table, row);
        out.append('{');
        String comma = "";
        if (table.equals(Optional.of(Table.COLUMNS)) && names.remove("table")) {
            comma = cell(comma, Table.COLUMNS, row, "table");
        }
        if (!idKey.isEmpty()) {
            key(comma, idKey);
            Json.string(out, row.id());
            comma = ", ";
        }
        for (String name : names) {
            comma = table.isPresent() ? cell(comma, table.get(), row, name) : plain(comma, row, name);
        }
        out.append('}');
    }

    /** Writes one value; what a reader can make of it in canonical form. */
    void value(Optional<CellReader> reader, Cell cell) {
        Cell canonical = reader.map(r -> r.canonical(cell, wording)).orElse(cell);
        switch (canonical.form()) {
            case TEXT -> Json.string(out, canonical.text());
            case YES_NO -> out.append(canonical.equals(Cell.YES));
            case NUMBER -> number(canonical.text());
            case OTHER -> out.append(Json.oneLine(canonical.text()));
        }
    }

    private String cell(String comma, Table table, Row row, String name) {
        Cell cell = row.cell(name).orElseThrow();
        Optional<CellReader> reader = cells.reader(table, row.id(), name);
        boolean blank = cell.form() == Cell.Form.TEXT && cell.text().isBlank();
        if (blank && reader.isPresent() && reader.get().read("", cell) instanceof Reading.Empty) {
            return comma;
        }
        key(comma, name);
        value(reader, cell);
        return ", ";
    }

    private String plain(String comma, Row row, String name) {
        key(comma, name);
        value(Optional.empty(), row.cell(name).orElseThrow());
        return ", ";
    }

    private void key(String comma, String key) {
        Json.string(out.append(comma), key);
        out.append(": ");
    }

    private void number(String digits) {
        if (NUMBER.matcher(digits).matches()) {
            out.append(digits);
        } else {
            Json.string(out, digits);
        }
    }

    private List<String> ordered(Optional<Table> table, Row row) {
        List<String> names = new ArrayList<>(row.names());
        if (table.isPresent()) {
            Map<String, Integer> rank = ranks.computeIfAbsent(table.get(), this::ranks);
            names.sort(Comparator.comparingInt(name -> rank.getOrDefault(name, UNKNOWN)));
        }
        return names;
    }

    private Map<String, Integer> ranks(Table table) {
        Map<String, Integer> rank = new HashMap<>();
        for (Name name : Catalogue.cells(table)) {
            rank.put(name.key(), rank.size());
        }
        for (String own : cells.own().of(table).keySet()) {
            rank.putIfAbsent(own, rank.size());
        }
        return rank;
    }
}
