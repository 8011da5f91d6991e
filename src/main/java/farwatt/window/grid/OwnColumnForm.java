package farwatt.window.grid;

import farwatt.language.Completion;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The form for a column of the person's own: says at once what is wrong with it. */
final class OwnColumnForm extends VBox {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final int OFFERS = 6;

    private final OwnColumn form;
    private final Runnable close;
    private final TextField name = new TextField();
    private final ComboBox<String> kind = new ComboBox<>();
    private final TextField unit = new TextField();
    private final TextField expression = new TextField();
    private final Label notice = new Label();
    private final FlowPane offers = new FlowPane();
    private final Button make;

    /**
     * @param table whose column it is
     * @param close takes the panel away
     */
    OwnColumnForm(OwnColumn form, String table, Runnable close) {
        this.form = form;
        this.close = close;
        getStyleClass().add("fw-panel");
        GridCode heading = form.isNew() ? GridCode.OWN_TITLE : GridCode.OWN_CHANGE_TITLE;
        Label title = new Label(Messages.text(heading, form.isNew() ? table : form.name()));
        title.getStyleClass().add("title");
        make = new Button(Messages.text(form.isNew() ? GridCode.OWN_ADD : GridCode.OWN_CHANGE));
        make.setDefaultButton(false);
        make.setOnAction(event -> make());
        Button cancel = new Button(Messages.text(GridCode.CLOSE));
        cancel.setOnAction(event -> close.run());
        HBox buttons = new HBox(make, cancel);
        buttons.getStyleClass().add("bar");
        notice.getStyleClass().add("fw-notice");
        notice.setWrapText(true);
        offers.getStyleClass().add("fw-ways");
        fillIn();
        getChildren()
                .addAll(
                        title,
                        labelled(GridCode.OWN_NAME, name),
                        labelled(GridCode.OWN_KIND, kind),
                        labelled(GridCode.OWN_UNIT, unit),
                        labelled(GridCode.OWN_IS, expression),
                        offers,
                        notice,
                        buttons);
        watch();
        look();
    }

    private void fillIn() {
        name.setText(form.name());
        kind.getItems().setAll(OwnColumn.KINDS);
        kind.setValue(form.kind());
        unit.setText(form.unit());
        expression.setText(form.expression());
        expression.setPromptText(Messages.text(GridCode.OWN_IS_PROMPT));
        expression.setPrefColumnCount(28);
    }

    private void watch() {
        for (TextField field : List.of(name, unit, expression)) {
            field.textProperty().addListener((o, before, now) -> look());
            field.setOnAction(event -> make());
        }
        kind.valueProperty().addListener((o, before, now) -> look());
        expression.caretPositionProperty().addListener((o, before, now) -> offer());
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                close.run();
                event.consume();
            }
        });
    }

    private static Node labelled(GridCode code, Node field) {
        Label label = new Label(Messages.text(code));
        label.setLabelFor(field);
        VBox both = new VBox(label, field);
        both.getStyleClass().add("labelled");
        return both;
    }

    void start() {
        name.requestFocus();
    }

    private void look() {
        form.fill(name.getText(), kind.getValue(), unit.getText(), expression.getText());
        Optional<Notice> said = form.name().isEmpty() ? Optional.empty() : form.notice();
        boolean wrong = said.map(Notice::level).filter(Level.FAIL::equals).isPresent();
        notice.setText(said.map(Notice::text).orElse(""));
        notice.setVisible(said.isPresent());
        notice.setManaged(said.isPresent());
        notice.pseudoClassStateChanged(WRONG, wrong);
        make.setDisable(wrong || form.name().isEmpty());
        unit.setDisable(!form.kind().equals(OwnColumn.KINDS.get(0)));
        offer();
    }

    /** The ways to go on, as buttons, so that they are reached by keyboard like all else in the form. */
    private void offer() {
        offers.getChildren().clear();
        String text = expression.getText();
        int caret = Math.min(expression.getCaretPosition(), text.length());
        Completion found = form.complete(text, caret);
        boolean nothing = found.replace().from() == found.replace().to();
        if (!nothing) {
            found.offers().stream().limit(OFFERS).forEach(offer -> {
                Button way = new Button(offer.text());
                way.setMnemonicParsing(false);
                way.getStyleClass().add("way");
                way.setOnAction(event -> accept(found, offer));
                offers.getChildren().add(way);
            });
        }
    }

    private void accept(Completion found, Completion.Offer offer) {
        expression.replaceText(found.replace().from(), found.replace().to(), offer.text());
        expression.requestFocus();
        expression.positionCaret(found.replace().from() + offer.text().length());
    }

    private void make() {
        if (form.apply()) {
            close.run();
        } else {
            look();
        }
    }
}
