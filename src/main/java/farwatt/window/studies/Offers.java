package farwatt.window.studies;

import farwatt.language.Completion;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What could be typed, under the field that is typed into. For the window's thread. */
final class Offers {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final int SHOWN = 7;

    private final StackPane over;
    private final StudyWords words;
    private final VBox box = new VBox();
    private @Nullable TextField field;
    private Completion completion = new Completion(new farwatt.report.Span(0, 0), List.of());
    private int chosen = -1;

    /** @param over the pane on which they lie */
    Offers(StackPane over, StudyWords words) {
        this.over = over;
        this.words = words;
        box.getStyleClass().add("fw-offers");
        box.setManaged(false);
        box.setVisible(false);
        over.getChildren().add(box);
    }

    /** Follows a field. */
    void serve(TextField served, StudyField kind) {
        served.textProperty().addListener((o, was, is) -> {
            if (served.isFocused() && !is.equals(was)) {
                javafx.application.Platform.runLater(() -> look(served, kind, How.TYPED));
            }
        });
        served.focusedProperty().addListener((o, was, is) -> close());
        served.addEventFilter(KeyEvent.KEY_PRESSED, e -> key(served, kind, e));
    }

    private enum How {
        TYPED,
        ASKED
    }

    private void look(TextField served, StudyField kind, How how) {
        if (!served.isFocused()) {
            return;
        }
        int caret = Math.min(served.getCaretPosition(), served.getLength());
        String text = served.getText();
        Completion found = words.at(kind, text, caret);
        String there = text.substring(
                Math.min(found.replace().from(), text.length()),
                Math.min(found.replace().to(), text.length()));
        boolean same =
                found.offers().size() == 1 && found.offers().get(0).text().equals(there);
        if (found.offers().isEmpty() || same || (how == How.TYPED && there.isBlank())) {
            close();
            return;
        }
        field = served;
        completion = found;
        chosen = how == How.ASKED ? 0 : -1;
        show();
    }

    private void key(TextField served, StudyField kind, KeyEvent e) {
        boolean open = box.isVisible();
        switch (e.getCode()) {
            case SPACE -> {
                if (!e.isControlDown()) {
                    return;
                }
                look(served, kind, How.ASKED);
            }
            case DOWN -> {
                if (open) {
                    move(1);
                } else {
                    look(served, kind, How.ASKED);
                }
            }
            case UP -> {
                if (!open) {
                    return;
                }
                move(-1);
            }
            case ENTER, TAB -> {
                if (!open || chosen < 0) {
                    return;
                }
                accept(chosen);
            }
            case ESCAPE -> {
                if (!open) {
                    return;
                }
                close();
            }
            default -> {
                return;
            }
        }
        e.consume();
    }

    private void move(int step) {
        chosen = Math.max(-1, Math.min(completion.offers().size() - 1, chosen + step));
        show();
    }

    private void accept(int at) {
        TextField served = field;
        if (served == null) {
            return;
        }
        String text = served.getText();
        int from = Math.min(completion.replace().from(), text.length());
        int to = Math.min(completion.replace().to(), text.length());
        String put = completion.offers().get(at).text();
        served.setText(text.substring(0, from) + put + text.substring(to));
        served.positionCaret(from + put.length());
        close();
        javafx.application.Platform.runLater(this::close);
    }

    private void close() {
        box.setVisible(false);
        chosen = -1;
    }

    private void show() {
        List<Completion.Offer> all = completion.offers();
        int first = Math.max(0, Math.min(chosen - SHOWN / 2, all.size() - SHOWN));
        box.getChildren().clear();
        for (int i = first; i < Math.min(all.size(), first + SHOWN); i++) {
            box.getChildren().add(line(all.get(i), i));
        }
        TextField served = field;
        if (served == null) {
            return;
        }
        served.setAccessibleHelp(chosen < 0 ? "" : all.get(chosen).text());
        box.setVisible(true);
        box.toFront();
        box.applyCss();
        Bounds at = over.sceneToLocal(served.localToScene(served.getBoundsInLocal()));
        double wide = Math.min(over.getWidth() - at.getMinX(), Math.max(at.getWidth(), box.prefWidth(-1)));
        double high = box.prefHeight(wide);
        boolean above = at.getMaxY() + high > over.getHeight() && at.getMinY() > high;
        box.resizeRelocate(at.getMinX(), above ? at.getMinY() - high : at.getMaxY(), wide, high);
    }

    private Region line(Completion.Offer offer, int at) {
        Label text = new Label(offer.text());
        text.getStyleClass().add("fw-word");
        text.setMinWidth(Region.USE_PREF_SIZE);
        String unit = offer.item().unit();
        String sentence = offer.item().sentence();
        Label about = new Label(unit.isEmpty() ? sentence : unit + " · " + sentence);
        about.getStyleClass().add("fw-quiet");
        HBox line = new HBox(8, text, about);
        line.getStyleClass().add("fw-offer");
        line.pseudoClassStateChanged(CHOSEN, at == chosen);
        line.setOnMousePressed(e -> {
            accept(at);
            e.consume();
        });
        return line;
    }
}
