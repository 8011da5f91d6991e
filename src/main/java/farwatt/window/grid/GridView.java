package farwatt.window.grid;

import farwatt.plan.Table;
import farwatt.report.Messages;
import java.util.Objects;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** The grid on the screen: the list of tables at its side, the cells of the chosen one. For the window's thread. */
public final class GridView extends BorderPane {
    private final Parts parts;
    private final GridModel model;
    private final TableList list;
    private final CellsView cells;
    private final TopStrip strip;
    private final StackPane stack;
    private final CursorNote note;
    private Table table;
    private Range range;

    /** A grid over a sheet; it watches the sheet as long as it lives. */
    public GridView(Sheet sheet) {
        this(sheet, new SystemBoard());
    }

    GridView(Sheet sheet, Board board) {
        parts = Parts.of(sheet, board);
        model = parts.model();
        table = model.table();
        range = model.range();
        cells = new CellsView(model);
        list = new TableList(model, parts.editing());
        strip = new TopStrip(parts, cells::requestFocus);
        CellEditor editor = new CellEditor(parts.editing(), cells);
        note = new CursorNote(model, parts.editing(), cells);
        stack = new StackPane(cells, note, editor);
        BorderPane middle = new BorderPane(stack);
        middle.setTop(strip);
        setLeft(list);
        setCenter(middle);
        getStyleClass().add("fw-grid");
        getStylesheets()
                .add(Objects.requireNonNull(GridView.class.getResource("/farwatt/window/grid.css"))
                        .toExternalForm());
        Deeds deeds = new Deeds(parts, strip, panels());
        new KeyInput(parts, deeds, cells, list).install(editor);
        new MouseInput(parts, deeds, cells).install(editor);
        editor.field().focusedProperty().addListener((o, before, now) -> {
            if (!now) {
                parts.editing().commit();
            }
        });
        model.watch(this::follow);
        follow();
    }

    private void follow() {
        list.follow();
        strip.follow();
        if (table != model.table()) {
            table = model.table();
            closePanel();
            cells.restore();
        }
        cells.refresh();
        note.follow();
        cells.nothing(
                Messages.text(GridCode.NO_ROWS, table.key(), Deed.INSERT.key().getDisplayText()));
        if (!range.equals(model.range())) {
            range = model.range();
            cells.reveal();
        }
    }

    private Panels panels() {
        return new Panels() {
            @Override
            public void columns() {
                ColumnChooser chooser = new ColumnChooser(parts, GridView.this::closePanel);
                open(chooser);
                chooser.start();
            }

            @Override
            public void own(OwnColumn form) {
                OwnColumnForm view = new OwnColumnForm(form, model.table().key(), GridView.this::closePanel);
                open(view);
                view.start();
            }
        };
    }

    private void open(Region panel) {
        closePanel();
        panel.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        StackPane.setAlignment(panel, Pos.TOP_RIGHT);
        stack.getChildren().add(panel);
    }

    private void closePanel() {
        if (stack.getChildren().removeIf(GridView::isPanel)) {
            cells.requestFocus();
        }
    }

    private static boolean isPanel(Node node) {
        return node.getStyleClass().contains("fw-panel");
    }

    /**
     * Shows a cell and puts the cursor there; nothing happens where there is no such row. With an unknown name the
     * cursor stays in its column.
     */
    public void point(Table where, String id, String name) {
        if (parts.editing().commit()) {
            model.point(where, id, name);
        }
    }

    /**
     * Ends what is being typed as leaving the cell does; to be called before anything reads or saves the plan.
     *
     * @return false where an id that cannot be keeps the cell open
     */
    public boolean commit() {
        return parts.editing().commit();
    }

    /** Opens find and replace. */
    public void find() {
        if (parts.editing().commit()) {
            strip.toFind();
        }
    }

    /** Gives the keyboard to the cells. */
    public void toCells() {
        cells.requestFocus();
    }
}
