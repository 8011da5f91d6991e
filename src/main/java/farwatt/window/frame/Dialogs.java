package farwatt.window.frame;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Dialog;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputDialog;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks by the toolkit's own windows. */
final class Dialogs implements Asking {
    private static final double PICK_HEIGHT = 420;

    private final Window owner;

    Dialogs(Window owner) {
        this.owner = owner;
    }

    @Override
    public Optional<Path> open(String title, List<String> endings) {
        return Optional.ofNullable(chooser(title, endings).showOpenDialog(owner))
                .map(File::toPath);
    }

    @Override
    public Optional<Path> save(String title, String suggested, List<String> endings) {
        FileChooser chooser = chooser(title, endings);
        chooser.setInitialFileName(suggested);
        return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
    }

    private static FileChooser chooser(String title, List<String> endings) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        List<String> globs = endings.stream().map(ending -> "*" + ending).toList();
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(String.join(", ", globs), globs));
        return chooser;
    }

    @Override
    public Optional<String> text(String title, String question, String suggested) {
        TextInputDialog dialog = new TextInputDialog(suggested);
        dialog.initOwner(owner);
        dialog.setTitle(title);
        dialog.setHeaderText(question);
        return dialog.showAndWait();
    }

    @Override
    public Optional<String> choose(String title, String question, List<String> ways) {
        List<ButtonType> buttons = new ArrayList<>();
        ways.forEach(way -> buttons.add(new ButtonType(way, ButtonBar.ButtonData.OTHER)));
        ButtonType none = new ButtonType("Back", ButtonBar.ButtonData.CANCEL_CLOSE);
        buttons.add(none);
        Alert alert = new Alert(Alert.AlertType.NONE, question, buttons.toArray(new ButtonType[0]));
        alert.initOwner(owner);
        alert.setTitle(title);
        return alert.showAndWait().filter(chosen -> chosen != none).map(ButtonType::getText);
    }

    @Override
    public Optional<List<Integer>> pick(String title, String question, List<Offer> offers) {
        List<CheckBox> boxes = new ArrayList<>();
        VBox list = new VBox(4);
        for (Offer offer : offers) {
            CheckBox box = new CheckBox(offer.name());
            box.setMnemonicParsing(false);
            box.setSelected(offer.usual() == Usual.IN);
            boxes.add(box);
            list.getChildren().add(box);
        }
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setPrefViewportHeight(PICK_HEIGHT);
        Dialog<ButtonType> dialog = new Dialog<>();
        dialog.initOwner(owner);
        dialog.setTitle(title);
        dialog.setHeaderText(question);
        dialog.getDialogPane().setContent(scroll);
        ButtonType on = new ButtonType("Go on", ButtonBar.ButtonData.OK_DONE);
        dialog.getDialogPane().getButtonTypes().addAll(on, new ButtonType("Back", ButtonBar.ButtonData.CANCEL_CLOSE));
        return dialog.showAndWait()
                .filter(chosen -> chosen == on)
                .map(chosen -> IntStream.range(0, boxes.size())
                        .filter(i -> boxes.get(i).isSelected())
                        .boxed()
                        .toList());
    }
}
