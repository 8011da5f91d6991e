package farwatt.window.grid;

import farwatt.report.Messages;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Find and replace in the cells that are seen; capitals make no difference. */
final class Search {
    private final GridModel model;
    private final CellWork cells;
    private String wanted = "";

    Search(GridModel model, CellWork cells) {
        this.model = model;
        this.cells = cells;
    }

    void wanted(String text) {
        wanted = text.toLowerCase(Locale.ROOT);
    }

    /** How many cells hold the text. */
    int count() {
        int found = 0;
        for (int row = 0; row < model.rowCount(); row++) {
            for (int column = 0; column < model.columns().size(); column++) {
                found += holds(row, column) ? 1 : 0;
            }
        }
        return found;
    }

    private boolean holds(int row, int column) {
        return !wanted.isEmpty()
                && (contains(model.typed(row, column)) || contains(model.text(model.face(row, column))));
    }

    private boolean contains(String text) {
        return text.toLowerCase(Locale.ROOT).contains(wanted);
    }

    /**
     * Goes to the next cell that holds the text, round the end to the start.
     *
     * @param step 1 forwards, −1 backwards
     * @return false where there is none
     */
    boolean next(int step) {
        int width = model.columns().size();
        int size = model.rowCount() * width;
        int at = model.range().row() * width + model.range().column();
        for (int i = 1; i <= size; i++) {
            int cell = Math.floorMod(at + i * step, size);
            if (holds(cell / width, cell % width)) {
                model.pick(cell / width, cell % width);
                return true;
            }
        }
        return false;
    }

    /** Replaces in the cell with the cursor, and goes to the next one. */
    void replaceOne(String by) throws Refusal {
        if (!model.isEmpty()) {
            List<CellWork.Fill> fills = new ArrayList<>();
            add(model.range().row(), model.range().column(), by, fills);
            cells.fill(Messages.text(GridCode.STEP_REPLACE, fills.size()), fills);
            next(1);
        }
    }

    /** Replaces in all cells that are seen, as one step. Returns in how many. */
    int replaceAll(String by) throws Refusal {
        List<CellWork.Fill> fills = new ArrayList<>();
        for (int row = 0; row < model.rowCount(); row++) {
            for (int column = 0; column < model.columns().size(); column++) {
                add(row, column, by, fills);
            }
        }
        cells.fill(Messages.text(GridCode.STEP_REPLACE, fills.size()), fills);
        return fills.size();
    }

    private void add(int row, int column, String by, List<CellWork.Fill> fills) {
        String typed = model.typed(row, column);
        Column one = model.columns().get(column);
        if (one.tint().isTyped() && !wanted.isEmpty() && contains(typed)) {
            fills.add(new CellWork.Fill(model.place(row), one, replaced(typed, by)));
        }
    }

    private String replaced(String typed, String by) {
        String folded = typed.toLowerCase(Locale.ROOT);
        if (folded.length() != typed.length()) {
            return typed.replace(wanted, by);
        }
        StringBuilder out = new StringBuilder();
        int at = 0;
        for (int found = folded.indexOf(wanted); found >= 0; found = folded.indexOf(wanted, at)) {
            out.append(typed, at, found).append(by);
            at = found + wanted.length();
        }
        return out.append(typed.substring(at)).toString();
    }
}
