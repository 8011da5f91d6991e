package farwatt.window.grid;

import farwatt.plan.Row;
import farwatt.plan.Table;
import java.util.Optional;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyEvent;

/** Does what a key or a menu asks for. */
final class Deeds {
    private static final double STEP = 2;

    private final Parts parts;
    private final GridModel model;
    private final TopStrip strip;
    private final Panels panels;

    Deeds(Parts parts, TopStrip strip, Panels panels) {
        this.parts = parts;
        this.model = parts.model();
        this.strip = strip;
        this.panels = panels;
    }

    /** The deed that a key stands for. */
    static Optional<Deed> of(KeyEvent event) {
        for (Deed deed : Deed.values()) {
            if (deed.key().match(event)) {
                return Optional.of(deed);
            }
        }
        return Optional.empty();
    }

    /** What is being typed is put into its cell first. */
    void run(Deed deed) {
        if (deed == Deed.EDIT || parts.editing().commit()) {
            switch (deed) {
                case EDIT -> parts.editing().open(Editing.From.THE_CELL, "");
                case EXPLAIN -> explain();
                case COPY -> parts.board().put(parts.block().copy(BlockWork.As.TYPED));
                case COPY_SHOWN -> parts.board().put(parts.block().copy(BlockWork.As.SHOWN));
                case CUT -> cut();
                case PASTE -> parts.board().text().ifPresent(parts.block()::paste);
                case CLEAR -> parts.block().clear();
                case REPEAT -> parts.block().repeat();
                case INSERT -> parts.rows().insert();
                case DUPLICATE -> parts.rows().duplicate();
                case REMOVE -> parts.rows().remove();
                case FILTER -> strip.toFilter();
                case FIND -> strip.toFind();
                case SORT, HOLD, HIDE, COLUMNS, OWN, OWN_CHANGE, OWN_REMOVE, NARROWER, WIDER, FIT -> column(deed);
            }
        }
    }

    private void column(Deed deed) {
        if (deed == Deed.COLUMNS) {
            panels.columns();
        } else if (deed == Deed.OWN) {
            own(Optional.empty());
        } else {
            parts.columns().current().ifPresent(column -> column(deed, column));
        }
    }

    private void column(Deed deed, Column column) {
        switch (deed) {
            case SORT -> parts.columns().sort(column);
            case HOLD -> parts.columns().toggleHeld(column);
            case HIDE -> parts.columns().toggleSeen(column);
            case OWN_CHANGE -> parts.columns().own(column).ifPresent(row -> own(Optional.of(row)));
            case OWN_REMOVE -> parts.columns().removeOwn(column);
            case NARROWER -> parts.columns().widen(column, -STEP);
            case WIDER -> parts.columns().widen(column, STEP);
            case FIT -> parts.columns().fit(column);
            default -> throw new IllegalArgumentException(deed.name());
        }
    }

    /** Only things on the site have columns of a person's own. */
    private void own(Optional<Row> before) {
        if (model.table().isSite()) {
            panels.own(new OwnColumn(model, before));
        }
    }

    private void cut() {
        parts.board().put(parts.block().copy(BlockWork.As.TYPED));
        parts.block().clear();
    }

    private void explain() {
        if (!model.isEmpty()) {
            Range range = model.range();
            Column column = model.columns().get(range.column());
            model.sheet().explain(model.table(), model.id(range.row()), column.key());
        }
    }

    /** A menu of all that can be done here. */
    ContextMenu menu() {
        ContextMenu menu = new ContextMenu();
        boolean own = parts.columns()
                .current()
                .filter(c -> parts.columns().ownPlace(c) >= 0)
                .isPresent();
        for (Deed deed : Deed.values()) {
            boolean ownOnly = deed == Deed.OWN_CHANGE || deed == Deed.OWN_REMOVE;
            boolean rowsOnly = deed == Deed.INSERT || deed == Deed.DUPLICATE || deed == Deed.REMOVE;
            if ((ownOnly && !own)
                    || (deed == Deed.OWN && !model.table().isSite())
                    || (rowsOnly && model.table() == Table.PLAN)) {
                continue;
            }
            if (deed == Deed.COPY || deed == Deed.INSERT || deed == Deed.SORT || deed == Deed.FIND) {
                menu.getItems().add(new SeparatorMenuItem());
            }
            MenuItem item = new MenuItem(deed.title());
            item.setAccelerator(deed.key());
            item.setOnAction(event -> run(deed));
            menu.getItems().add(item);
        }
        return menu;
    }
}
