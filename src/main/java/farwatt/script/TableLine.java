package farwatt.script;

import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import java.util.ArrayList;
import java.util.List;

/** Tables as parts of messages: title, columns, lines, cells one after the other. */
final class TableLine {
    private TableLine() {}

    static List<String> parts(ResultTable table) {
        List<String> parts = new ArrayList<>();
        parts.add(table.title());
        parts.add(Integer.toString(table.columns().size()));
        for (ResultTable.Column column : table.columns()) {
            parts.add(column.name());
            parts.add(column.unit().symbol());
        }
        for (List<ResultTable.Cell> row : table.rows()) {
            row.forEach(cell -> parts.add(part(cell)));
        }
        return parts;
    }

    /** Reads parts that {@link #parts} made. */
    static ResultTable table(List<String> parts, Units units) {
        int width = Integer.parseInt(parts.get(1));
        List<ResultTable.Column> columns = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            String symbol = parts.get(3 + 2 * i);
            columns.add(new ResultTable.Column(
                    parts.get(2 + 2 * i), units.of(symbol).orElse(Unit.ONE)));
        }
        List<List<ResultTable.Cell>> rows = new ArrayList<>();
        for (int at = 2 + 2 * width; width > 0 && at < parts.size(); at += width) {
            rows.add(parts.subList(at, at + width).stream().map(TableLine::cell).toList());
        }
        return new ResultTable(parts.get(0), columns, rows);
    }

    private static String part(ResultTable.Cell cell) {
        if (cell instanceof ResultTable.Amount amount) {
            return "n" + amount.inside();
        }
        if (cell instanceof ResultTable.YesNo yesNo) {
            return yesNo.yes() ? "y" : "f";
        }
        return cell instanceof ResultTable.Words words ? "t" + words.text() : "";
    }

    private static ResultTable.Cell cell(String part) {
        if (part.isEmpty()) {
            return new ResultTable.None();
        }
        return switch (part.charAt(0)) {
            case 'n' -> new ResultTable.Amount(Double.parseDouble(part.substring(1)));
            case 'y' -> new ResultTable.YesNo(true);
            case 'f' -> new ResultTable.YesNo(false);
            default -> new ResultTable.Words(part.substring(1));
        };
    }
}
