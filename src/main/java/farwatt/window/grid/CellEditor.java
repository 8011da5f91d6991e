package farwatt.window.grid;

import farwatt.language.Completion;
import farwatt.report.Level;
import farwatt.report.Notice;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Rectangle2D;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The field over the cell that is being typed into, with what is wrong and what could be typed under it. */
final class CellEditor extends Region {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final int OFFERS = 8;
    private static final double LEAST_WIDTH = 180;
    private static final double NOTICE_WIDTH = 420;

    private final Editing editing;
    private final CellsView cells;
    private final TextField field = new TextField();
    private final Label notice = new Label();
    private final VBox offers = new VBox();
    private boolean following;

    CellEditor(Editing editing, CellsView cells) {
        this.editing = editing;
        this.cells = cells;
        setPickOnBounds(false);
        field.getStyleClass().add("fw-field");
        notice.getStyleClass().add("fw-notice");
        notice.setWrapText(true);
        offers.getStyleClass().add("fw-offers");
        offers.setFillWidth(true);
        getChildren().addAll(field, notice, offers);
        getChildren().forEach(node -> node.setManaged(false));
        setVisible(false);
        field.textProperty().addListener((o, before, now) -> typed());
        field.caretPositionProperty().addListener((o, before, now) -> typed());
        editing.watch(this::follow);
    }

    TextField field() {
        return field;
    }

    private void typed() {
        if (!following && editing.isOpen()) {
            // text and caret change one after the other; between the two the caret may lie outside
            editing.type(field.getText(), Math.min(field.getCaretPosition(), field.getLength()));
        }
    }

    private void follow() {
        boolean open = editing.isOpen();
        boolean opened = open && !isVisible();
        setVisible(open);
        if (!open) {
            return;
        }
        // a field that gets the keyboard chooses all of its text, which is not what the person did
        following = true;
        boolean other = !field.getText().equals(editing.text());
        if (other) {
            field.setText(editing.text());
        }
        if (opened) {
            field.requestFocus();
        }
        if (other || opened) {
            field.positionCaret(editing.caret());
        }
        following = false;
        Optional<Notice> said = editing.notice();
        notice.setText(said.map(Notice::text).orElse(""));
        notice.setVisible(said.isPresent());
        boolean wrong = said.map(Notice::level).filter(Level.FAIL::equals).isPresent();
        notice.pseudoClassStateChanged(WRONG, wrong);
        field.pseudoClassStateChanged(WRONG, wrong);
        field.setAccessibleHelp(notice.getText());
        offer();
        requestLayout();
    }

    private void offer() {
        List<Completion.Offer> all = editing.offers();
        int chosen = editing.chosen();
        int first = Math.max(0, Math.min(chosen - OFFERS / 2, all.size() - OFFERS));
        offers.getChildren().clear();
        for (int i = first; i < Math.min(all.size(), first + OFFERS); i++) {
            offers.getChildren().add(line(all.get(i), i, i == chosen));
        }
        offers.setVisible(!all.isEmpty());
    }

    private Region line(Completion.Offer offer, int at, boolean chosen) {
        Label text = new Label(offer.text());
        text.getStyleClass().add("word");
        text.setMinWidth(Region.USE_PREF_SIZE);
        String unit = offer.item().unit();
        String sentence = offer.item().sentence();
        Label about = new Label(unit.isEmpty() ? sentence : unit + " · " + sentence);
        about.getStyleClass().add("about");
        HBox line = new HBox(text, about);
        line.getStyleClass().add("fw-offer");
        line.pseudoClassStateChanged(CHOSEN, chosen);
        line.setOnMousePressed(event -> {
            editing.accept(at);
            field.positionCaret(editing.caret());
            event.consume();
        });
        return line;
    }

    private static double widthOf(Region part) {
        return part.isVisible() ? Math.ceil(part.prefWidth(-1)) + 1 : 0;
    }

    @Override
    protected void layoutChildren() {
        int row = editing.row();
        int column = editing.column();
        if (!editing.isOpen() || row < 0 || column < 0) {
            return;
        }
        Rectangle2D cell = cells.bounds(row, column);
        double wide = Math.min(getWidth(), Math.max(cell.getWidth(), LEAST_WIDTH));
        double x = Math.max(0, Math.min(cell.getMinX(), getWidth() - wide));
        double y = Math.max(0, Math.min(cell.getMinY(), getHeight() - cell.getHeight()));
        field.resizeRelocate(x, y, wide, cell.getHeight());
        double asked = Math.max(widthOf(notice), widthOf(offers));
        double noticeWide = Math.min(getWidth(), Math.max(wide, Math.min(asked, NOTICE_WIDTH)));
        double noticeHigh = notice.isVisible() ? notice.prefHeight(noticeWide) : 0;
        double offersHigh = offers.isVisible() ? offers.prefHeight(-1) : 0;
        double below = y + cell.getHeight();
        boolean above = below + noticeHigh + offersHigh > getHeight() && y > noticeHigh + offersHigh;
        double noticeY = above ? y - noticeHigh : below;
        double offersY = above ? noticeY - offersHigh : below + noticeHigh;
        double shift = Math.max(0, Math.min(x, getWidth() - noticeWide));
        notice.resizeRelocate(shift, noticeY, noticeWide, noticeHigh);
        offers.resizeRelocate(shift, offersY, noticeWide, offersHigh);
    }
}
