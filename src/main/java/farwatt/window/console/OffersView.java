package farwatt.window.console;

import java.util.List;
import java.util.function.IntConsumer;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What could be typed next, as a list by the caret. For the window's thread. */
final class OffersView extends VBox {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final int MOST = 7;

    private final IntConsumer taken;

    /** @param taken told which offer was clicked */
    OffersView(IntConsumer taken) {
        this.taken = taken;
        getStyleClass().add("fw-offers");
        setManaged(false);
        setVisible(false);
    }

    /** Shows offers, some of them where there are many. */
    void show(List<Completing.Offer> all, int chosen) {
        int first = Math.max(0, Math.min(chosen - MOST / 2, all.size() - MOST));
        getChildren().clear();
        for (int i = first; i < Math.min(all.size(), first + MOST); i++) {
            getChildren().add(line(all.get(i), i, i == chosen));
        }
        setVisible(!all.isEmpty());
    }

    private Region line(Completing.Offer offer, int at, boolean chosen) {
        Label word = new Label(offer.word());
        word.getStyleClass().add("word");
        word.setMinWidth(Region.USE_PREF_SIZE);
        Label about = new Label(offer.about());
        about.getStyleClass().add("about");
        HBox line = new HBox(word, about);
        line.getStyleClass().add("fw-offer");
        line.pseudoClassStateChanged(CHOSEN, chosen);
        line.setOnMousePressed(event -> {
            taken.accept(at);
            event.consume();
        });
        return line;
    }

    /** Lays the list under the caret, or over it where there is no room. */
    void place(double x, double top, double bottom, Region within) {
        double wide = Math.min(prefWidth(-1), within.getWidth() - 8);
        double high = prefHeight(-1);
        boolean above = bottom + high > within.getHeight() && top > within.getHeight() - bottom;
        double y = above ? Math.max(0, top - high) : bottom;
        resizeRelocate(Math.max(0, Math.min(x, within.getWidth() - wide)), y, wide, high);
    }
}
