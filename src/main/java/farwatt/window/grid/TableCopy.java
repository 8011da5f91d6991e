package farwatt.window.grid;

import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.window.WindowCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;

/** Takes what a table shows to the clipboard. For the window's thread. */
public final class TableCopy {
    private TableCopy() {}

    /**
     * Copies headings and all lines as text with tabs.
     *
     * @return what to say
     */
    public static <T> Notice toClipboard(TableView<T> table) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.getColumns().stream().map(TableColumn::getText).toList());
        for (T item : table.getItems()) {
            rows.add(table.getColumns().stream()
                    .map(column -> Objects.toString(column.getCellData(item), ""))
                    .toList());
        }
        ClipboardContent content = new ClipboardContent();
        content.putString(TabText.write(rows));
        Clipboard.getSystemClipboard().setContent(content);
        return Notice.of(
                Level.NOTE, WindowCode.COPIED, Place.NONE, table.getItems().size());
    }
}
