package farwatt.script;

import farwatt.language.Type;
import farwatt.picture.Figures;
import farwatt.study.Heading;
import java.util.ArrayList;
import java.util.List;

/**
 * A table of a script as figures to be drawn, its columns in another order.
 *
 * @param order which column of the table comes first, second and so on
 */
record ResultFigures(ResultTable table, List<Integer> order, List<Heading> columns) implements Figures {
    static ResultFigures of(ResultTable table, List<Integer> order) {
        List<Heading> headings = new ArrayList<>();
        for (int column : order) {
            headings.add(heading(table, column));
        }
        return new ResultFigures(table, List.copyOf(order), List.copyOf(headings));
    }

    /** What a column holds goes by what stands in it; a word in it makes all of it words. */
    private static Heading heading(ResultTable table, int at) {
        ResultTable.Column column = table.columns().get(at);
        boolean words = false;
        boolean conditions = false;
        for (List<ResultTable.Cell> row : table.rows()) {
            words |= row.get(at) instanceof ResultTable.Words;
            conditions |= row.get(at) instanceof ResultTable.YesNo;
        }
        Type type = words ? Type.Plain.TEXT : conditions ? Type.Plain.YES_NO : Type.of(column.unit());
        return new Heading(column.name(), type, column.unit());
    }

    @Override
    public int size() {
        return table.rows().size();
    }

    private ResultTable.Cell cell(int point, int column) {
        return table.rows().get(point).get(order.get(column));
    }

    @Override
    public double inside(int point, int column) {
        if (columns.get(column).isText()) {
            return Double.NaN;
        }
        ResultTable.Cell cell = cell(point, column);
        if (cell instanceof ResultTable.Amount amount) {
            return amount.inside();
        }
        return cell instanceof ResultTable.YesNo yesNo ? (yesNo.yes() ? 1 : 0) : Double.NaN;
    }

    @Override
    public String text(int point, int column) {
        return ResultTable.text(cell(point, column), table.columns().get(order.get(column)));
    }
}
