package farwatt.window.list;

import farwatt.intake.Taken;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;

/** What a list would add to the plan, what it says otherwise, and what it does not name. */
final class AgainstTable extends TableView<AgainstTable.Line> {
    private static final List<String> HEADINGS = List.of("what", "row", "name", "in the plan", "in the list");
    private static final List<Double> WIDTHS = List.of(140.0, 220.0, 150.0, 200.0, 200.0);

    /** One of them, a text a column. */
    record Line(List<String> texts) {
        Line {
            texts = List.copyOf(texts);
        }

        private static Line of(String... texts) {
            return new Line(List.of(texts));
        }
    }

    AgainstTable() {
        setAccessibleText("What the list adds to the plan and says otherwise");
        setPlaceholder(new Label("The list changes nothing in the plan."));
        for (int i = 0; i < HEADINGS.size(); i++) {
            int at = i;
            TableColumn<Line, String> column = new TableColumn<>(HEADINGS.get(i));
            column.setCellValueFactory(
                    row -> new ReadOnlyStringWrapper(row.getValue().texts().get(at)));
            column.setPrefWidth(WIDTHS.get(i));
            column.setSortable(false);
            getColumns().add(column);
        }
    }

    void show(Taken taken) {
        List<Line> lines = new ArrayList<>();
        taken.differences().forEach(d -> lines.add(Line.of("differs", d.id(), d.name(), d.before(), d.after())));
        taken.gone().forEach(id -> lines.add(Line.of("not in the list", id, "", "", "")));
        taken.added().forEach(id -> lines.add(Line.of("new", id, "", "", "")));
        getItems().setAll(lines);
    }
}
