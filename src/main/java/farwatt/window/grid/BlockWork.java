package farwatt.window.grid;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Row;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is done to all chosen cells at once: copy, paste, clear, repeat, fill. Each is one step. */
final class BlockWork {
    private final GridModel model;
    private final CellWork cells;

    BlockWork(GridModel model, CellWork cells) {
        this.model = model;
        this.cells = cells;
    }

    /** How cells are copied. */
    enum As {
        /** What was typed; what stands there by default is left out, solved values are as shown. */
        TYPED,
        /** What is seen. */
        SHOWN
    }

    /** The chosen cells as text with tabs. */
    String copy(As as) {
        Range range = model.range();
        List<List<String>> rows = new ArrayList<>();
        for (int row = range.top(); row <= range.bottom() && !model.isEmpty(); row++) {
            List<String> texts = new ArrayList<>();
            for (int column = range.left(); column <= range.right(); column++) {
                boolean typed = model.columns().get(column).tint().isTyped() && as == As.TYPED;
                texts.add(typed ? model.typed(row, column) : model.text(model.face(row, column)));
            }
            rows.add(texts);
        }
        return rows.size() == 1 && rows.get(0).size() == 1 ? single(rows.get(0).get(0)) : TabText.write(rows);
    }

    /** One cell is put down without the line's end, so that it can be pasted into any text. */
    private static String single(String text) {
        String written = TabText.write(List.of(List.of(text)));
        return written.substring(0, written.length() - 1);
    }

    /** Puts a block into the cells from the first chosen one on; rows that are missing are added. */
    void paste(String text) {
        List<List<String>> read = TabText.read(text);
        if (read.isEmpty() || model.columns().isEmpty()) {
            return;
        }
        int wide = read.stream().mapToInt(List::size).max().orElse(0);
        List<List<String>> block = read.stream().map(row -> filledUp(row, wide)).toList();
        Range target = target(block.size(), wide);
        if (target.right() >= model.columns().size()) {
            say(GridCode.NO_MORE_COLUMNS, wide, model.columns().size() - target.left());
            return;
        }
        if (target.bottom() >= model.rowCount() && !NewRows.canGrow(model.table())) {
            say(GridCode.NO_MORE_ROWS, model.table().key());
            return;
        }
        run(() -> paste(block, target));
    }

    private static List<String> filledUp(List<String> row, int wide) {
        List<String> whole = new ArrayList<>(row);
        while (whole.size() < wide) {
            whole.add("");
        }
        return whole;
    }

    /** The chosen cells where the block goes into them a whole number of times, else as many as it has. */
    private Range target(int high, int wide) {
        Range range = model.range();
        boolean tiles = range.height() % high == 0 && range.width() % wide == 0 && !model.isEmpty();
        int bottom = range.top() + (tiles ? range.height() : high) - 1;
        int right = range.left() + (tiles ? range.width() : wide) - 1;
        int top = model.rowCount() == 0 ? 0 : range.top();
        return new Range(top, range.left(), model.rowCount() == 0 ? high - 1 : bottom, right);
    }

    private void paste(List<List<String>> block, Range target) throws Refusal {
        List<CellWork.Fill> fills = new ArrayList<>();
        List<Change> added = new ArrayList<>();
        NewRows fresh = new NewRows(model.shown().plan(), model.table());
        int left = 0;
        for (int row = target.top(); row <= target.bottom(); row++) {
            List<String> texts = block.get((row - target.top()) % block.size());
            if (row < model.rowCount()) {
                left += fills(texts, row, target, fills);
            } else {
                int place = model.rows().size() + added.size();
                added.add(new Change.AddRow(model.table(), place, added(fresh, texts, target)));
            }
        }
        List<Change> changes = new ArrayList<>(cells.changes(fills));
        changes.addAll(added);
        String what = Messages.text(GridCode.STEP_PASTE, target.height(), target.width());
        apply(what, changes);
        if (left > 0) {
            say(GridCode.NOT_TYPED_SOME, left);
        }
        model.range(new Range(target.bottom(), target.right(), target.top(), target.left()));
    }

    /** Returns how many cells cannot be typed into. */
    private int fills(List<String> texts, int row, Range target, List<CellWork.Fill> fills) {
        int left = 0;
        for (int column = target.left(); column <= target.right(); column++) {
            Column one = model.columns().get(column);
            String text = at(texts, column - target.left());
            if (one.tint().isTyped()) {
                fills.add(new CellWork.Fill(model.place(row), one, text));
            } else {
                left++;
            }
        }
        return left;
    }

    /** A block that goes into the chosen cells several times begins anew. */
    private static String at(List<String> texts, int at) {
        return texts.get(at % texts.size());
    }

    private Row added(NewRows fresh, List<String> texts, Range target) {
        int identity = -1;
        for (int column = target.left(); column <= target.right(); column++) {
            identity = model.columns().get(column).tint() == Column.Tint.IDENTITY ? column : identity;
        }
        Row row = identity < 0 ? fresh.row() : fresh.row(at(texts, identity - target.left()));
        for (int column = target.left(); column <= target.right(); column++) {
            Column one = model.columns().get(column);
            if (one.tint().isTyped() && column != identity) {
                Optional<Cell> cell =
                        cells.check("", one, at(texts, column - target.left())).cell();
                if (cell.isPresent()) {
                    row = row.with(one.key(), cell.get());
                }
            }
        }
        return row;
    }

    /** Empties the chosen cells; ids stay. */
    void clear() {
        boolean onlyIds =
                model.range().width() == 1 && column(model.range().left()).tint() == Column.Tint.IDENTITY;
        if (onlyIds) {
            say(GridCode.ID_STAYS);
        } else {
            all(GridCode.STEP_CLEAR, model.range().top(), (row, column) -> Optional.of(""));
        }
    }

    /** Puts the texts of the first chosen row into the rows below it; of one row alone, those of the row above it. */
    void repeat() {
        Range range = model.range();
        int from = range.height() > 1 ? range.top() : range.top() - 1;
        if (from >= 0) {
            all(GridCode.STEP_REPEAT, from + 1, (row, column) -> Optional.of(model.typed(from, column)));
        }
    }

    /** Puts one text into all chosen cells of the columns that can be typed into. */
    void fill(String text) {
        all(GridCode.STEP_FILL, model.range().top(), (row, column) -> Optional.of(text));
    }

    private Column column(int at) {
        return model.columns().get(at);
    }

    /** What goes into a cell by where it is seen; empty to leave it. */
    private interface Wanted {
        Optional<String> text(int row, int column);
    }

    private void all(GridCode what, int firstRow, Wanted wanted) {
        if (model.isEmpty()) {
            return;
        }
        Range range = model.range();
        List<CellWork.Fill> fills = new ArrayList<>();
        int left = 0;
        for (int row = firstRow; row <= range.bottom(); row++) {
            for (int column = range.left(); column <= range.right(); column++) {
                boolean identity = column(column).tint() == Column.Tint.IDENTITY;
                Optional<String> text = wanted.text(row, column);
                if (text.isPresent() && column(column).tint().isTyped() && !identity) {
                    fills.add(new CellWork.Fill(model.place(row), column(column), text.get()));
                } else {
                    left++;
                }
            }
        }
        int not = left;
        run(() -> {
            cells.fill(Messages.text(what, fills.size()), fills);
            if (not > 0 && fills.isEmpty()) {
                say(GridCode.NOT_TYPED);
            }
        });
    }

    private void apply(String what, List<Change> changes) {
        if (!changes.isEmpty()) {
            model.sheet().apply(what, new Change.Batch(what, changes));
        }
    }

    private interface Attempt {
        void run() throws Refusal;
    }

    private void run(Attempt attempt) {
        try {
            attempt.run();
        } catch (Refusal refused) {
            model.sheet().say(refused.notice());
        }
    }

    private void say(GridCode code, Object... parts) {
        model.sheet().say(Notice.of(Level.WARN, code, Place.NONE, parts));
    }
}
