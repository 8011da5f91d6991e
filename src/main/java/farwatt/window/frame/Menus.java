package farwatt.window.frame;

import farwatt.window.remember.Remembered;
import farwatt.window.work.Work;
import java.nio.file.Path;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** The two lists of things to do: with the plan, and with how it is shown. */
final class Menus {
    private final Frame frame;
    private final FileDoings files;
    private final Look look;
    private final Remembered remembered;
    private final HandOver handOver;

    Menus(Frame frame, FileDoings files, Look look, Remembered remembered, Work work, Asking asking) {
        this.frame = frame;
        this.files = files;
        this.look = look;
        this.remembered = remembered;
        this.handOver = new HandOver(frame, files, work, asking);
    }

    MenuButton plan() {
        MenuButton button = button("Plan");
        Menu recent = new Menu("Opened lately");
        button.showingProperty().addListener((o, was, is) -> recent(recent));
        recent(recent);
        button.getItems()
                .addAll(
                        item("New plan (Ctrl+N)", files::begin),
                        item("Open… (Ctrl+O)", files::open),
                        recent,
                        item("Save (Ctrl+S)", files::save),
                        item("Save as… (Ctrl+Shift+S)", files::saveAs),
                        new SeparatorMenuItem(),
                        item("Take in a list…", () -> {
                            frame.bench().showWhole("List");
                            frame.list().open();
                        }),
                        item("Take in the list that was copied", () -> {
                            frame.bench().showWhole("List");
                            frame.list().paste();
                        }),
                        item("Side by side…", () -> frame.bench().show("Side by side")),
                        item("Take-off…", () -> frame.bench().show("Take-off")),
                        item("Studies… (F10)", frame::study),
                        item("Scripts (F7)", () -> frame.bench().show(Scripts.WORD)),
                        item("Diagram as a picture…", this::picture),
                        item("Hand-over workbook…", handOver::workbook),
                        item("Take a workbook back…", this::workbookBack));
        return button;
    }

    private void workbookBack() {
        frame.bench().show("Workbook back");
        frame.back().open();
    }

    /** Saves the diagram. */
    void picture() {
        handOver.picture();
    }

    private void recent(Menu menu) {
        menu.getItems().clear();
        for (Path path : remembered.recent()) {
            menu.getItems().add(item(path.toString(), () -> files.open(path)));
        }
        menu.setDisable(menu.getItems().isEmpty());
    }

    MenuButton show() {
        MenuButton button = button("Look");
        for (Look.Theme theme : Look.Theme.values()) {
            button.getItems().add(item(theme.word, () -> look.theme(theme)));
        }
        button.getItems().add(new SeparatorMenuItem());
        for (int size : Look.SIZES) {
            button.getItems().add(item("Size " + size + " %", () -> look.size(size)));
        }
        return button;
    }

    private static MenuButton button(String text) {
        MenuButton button = new MenuButton(text);
        button.getStyleClass().add("fw-button");
        button.setMinWidth(MenuButton.USE_PREF_SIZE);
        return button;
    }

    private MenuItem item(String text, Runnable action) {
        MenuItem item = new MenuItem(text);
        item.setMnemonicParsing(false);
        item.setOnAction(e -> {
            frame.grid().commit();
            action.run();
        });
        return item;
    }
}
