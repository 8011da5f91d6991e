package farwatt.window.grid;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/** The headings over one pane of cells. */
final class Heads extends Region {
    private final GridModel model;
    private final Rectangle clip = new Rectangle();
    private final List<HeadNode> nodes = new ArrayList<>();

    Heads(GridModel model) {
        this.model = model;
        setManaged(false);
        setClip(clip);
        getStyleClass().add("fw-heads");
    }

    /** Shows the headings of the columns from first to before last. */
    void show(int first, int last, double[] x) {
        clip.setWidth(getWidth());
        clip.setHeight(getHeight());
        while (nodes.size() < last - first) {
            HeadNode node = new HeadNode(model);
            nodes.add(node);
            getChildren().add(node);
        }
        for (int i = 0; i < nodes.size(); i++) {
            int column = first + i;
            if (column < last) {
                nodes.get(i).show(model.columns().get(column), column);
                nodes.get(i).resizeRelocate(x[column], 0, x[column + 1] - x[column], getHeight());
            } else {
                nodes.get(i).setVisible(false);
            }
        }
    }
}
