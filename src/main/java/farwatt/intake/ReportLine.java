package farwatt.intake;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What became of one row of a customer's list. Immutable. */
public final class ReportLine {
    private final String sheet;
    private final RowState state;
    private final List<String> headings;
    private final RawRow row;
    private final List<Remark> remarks;
    private final List<Understood> understood;
    private final List<String> made;

    ReportLine(
            String sheet,
            RowState state,
            List<String> headings,
            RawRow row,
            List<Remark> remarks,
            List<Understood> understood,
            List<String> made) {
        this.sheet = sheet;
        this.state = state;
        this.headings = headings;
        this.row = row;
        this.remarks = List.copyOf(remarks);
        this.understood = List.copyOf(understood);
        this.made = List.copyOf(made);
    }

    /** Where the row stands: {@code line 7} or {@code Sheet1!A7}. */
    public String place() {
        return row.place(sheet);
    }

    public RowState state() {
        return state;
    }

    /** The cells as they stood there, by heading; cells without a heading by their column's number. */
    public Map<String, String> original() {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int column = 0; column < row.cells().size(); column++) {
            RawCell cell = row.cell(column);
            boolean headed = column < headings.size() && !headings.get(column).isEmpty();
            if (headed || !cell.text().isEmpty()) {
                String heading = headed ? headings.get(column) : "column " + (column + 1);
                cells.put(
                        cells.containsKey(heading) ? heading + " (column " + (column + 1) + ")" : heading, cell.text());
            }
        }
        return Collections.unmodifiableMap(cells);
    }

    /** How it was changed, why it was held back or left out, and what to look at; "" when there is nothing to say. */
    public String said() {
        List<String> texts = new ArrayList<>();
        for (Remark remark : remarks) {
            texts.add(remark.text());
        }
        return String.join(" ", texts);
    }

    /** Keys of what is said, such as {@code intake.not_whole}. */
    public List<String> codes() {
        return remarks.stream().map(r -> r.code().key()).toList();
    }

    /** Values that were understood, whatever became of the row. */
    public List<Understood> understood() {
        return understood;
    }

    /** Ids of the devices made of it. */
    public List<String> made() {
        return made;
    }

    @Override
    public String toString() {
        return place() + " " + state.word() + " " + original() + " " + said();
    }
}
