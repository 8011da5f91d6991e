package farwatt.window.diagram;

import farwatt.picture.Box;
import farwatt.picture.Card;
import farwatt.picture.Diagram;
import farwatt.picture.DiagramPainter;
import farwatt.picture.Palette;
import farwatt.plan.Table;
import farwatt.window.desk.Desk;
import farwatt.window.raster.Raster;
import java.awt.Graphics2D;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** The single-line diagram: zoom by wheel, pan by dragging, choose by click or arrows. For the window's thread. */
public final class DiagramView extends BorderPane {
    private static final double USUAL_LETTER = 13;

    private final DiagramModel model;
    private final Pointer pointer;
    private final Raster canvas = new Raster(this::paint);
    private final Tooltip hint = new Tooltip();
    private Palette palette = Palette.LIGHT;
    private double pressedX;
    private double pressedY;

    /** Goes to a row. */
    @FunctionalInterface
    public interface Pointer {
        void to(Table table, String id);
    }

    /**
     * @param model of this view alone
     * @param saving asks where to save the picture
     */
    public DiagramView(DiagramModel model, Desk desk, Pointer pointer, Runnable saving) {
        this.model = model;
        this.pointer = pointer;
        Label title = new Label("Single-line diagram");
        title.getStyleClass().add("fw-side-title");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(
                4,
                title,
                gap,
                button("+", "Larger (wheel or +)", () -> zoom(1)),
                button("−", "Smaller (wheel or −)", () -> zoom(-1)),
                button("All", "Show all of it (0)", this::fit),
                button("Save…", "Save as a picture", saving));
        head.setAlignment(Pos.CENTER_LEFT);
        setTop(head);
        setCenter(canvas);
        setMinWidth(0);
        canvas.widthProperty().addListener(o -> sized());
        canvas.heightProperty().addListener(o -> sized());
        canvas.setFocusTraversable(true);
        canvas.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        canvas.setAccessibleText("Single-line diagram; arrows choose");
        canvas.setOnScroll(this::scrolled);
        canvas.setOnMousePressed(this::pressed);
        canvas.setOnMouseDragged(this::dragged);
        canvas.setOnMouseMoved(this::moved);
        canvas.setOnKeyPressed(this::key);
        Tooltip.install(canvas, hint);
        desk.watch(this::refresh);
        refresh();
    }

    private static Button button(String text, String help, Runnable action) {
        Button button = new Button(text);
        button.getStyleClass().add("fw-button");
        button.setTooltip(new Tooltip(help));
        button.setAccessibleText(help);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(e -> action.run());
        return button;
    }

    /** Draws in other colours from now on. */
    public void show(Palette other) {
        palette = other;
        draw();
    }

    /** Letters have another height now, in pixels: the diagram's grow with them. */
    public void letters(double pixels) {
        model.letters(pixels / USUAL_LETTER);
        sized();
    }

    /** Marks a row as the chosen one and brings it into view. */
    public void choose(String id) {
        if (model.choose(id)) {
            model.reveal(canvas.wide(), canvas.high());
            model.card(id).ifPresent(card -> canvas.setAccessibleText(card.said()));
            draw();
        }
    }

    /** Takes the cursor to the diagram. */
    public void enter() {
        canvas.requestFocus();
    }

    private void refresh() {
        model.refresh(this::sized);
    }

    private void sized() {
        if (model.isFitted()) {
            model.fit(canvas.wide(), canvas.high());
        }
        draw();
    }

    private void fit() {
        model.fit(canvas.wide(), canvas.high());
        draw();
    }

    private void zoom(double steps) {
        model.zoom(steps, canvas.wide() / 2, canvas.high() / 2);
        draw();
    }

    private void scrolled(ScrollEvent e) {
        if (e.isShiftDown()) {
            model.pan(e.getDeltaX() + e.getDeltaY(), 0);
        } else {
            model.zoom(Math.signum(e.getDeltaY()), e.getX(), e.getY());
        }
        draw();
        e.consume();
    }

    private void pressed(MouseEvent e) {
        canvas.requestFocus();
        pressedX = e.getX();
        pressedY = e.getY();
        Optional<Card> card = model.cardAt(e.getX(), e.getY());
        if (card.isPresent()) {
            go(card.get());
        } else {
            model.wireAt(e.getX(), e.getY()).ifPresent(wire -> {
                model.choose(wire.run());
                pointer.to(Table.RUNS, wire.run());
                draw();
            });
        }
    }

    private void go(Card card) {
        model.choose(card.id());
        pointer.to(card.table(), card.id());
        draw();
    }

    private void dragged(MouseEvent e) {
        model.pan(e.getX() - pressedX, e.getY() - pressedY);
        pressedX = e.getX();
        pressedY = e.getY();
        draw();
    }

    private void moved(MouseEvent e) {
        String text = model.cardAt(e.getX(), e.getY())
                .map(card -> model.reason(card.id(), card.said()))
                .or(() -> model.wireAt(e.getX(), e.getY()).map(wire -> model.reason(wire.run(), wire.said())))
                .orElse("");
        hint.setText(text.isEmpty() ? "Drag to move, wheel to zoom" : text);
    }

    private void key(KeyEvent e) {
        switch (e.getCode()) {
            case LEFT -> beside(-1, 0);
            case RIGHT -> beside(1, 0);
            case UP -> beside(0, -1);
            case DOWN -> beside(0, 1);
            case PLUS, ADD, EQUALS -> zoom(1);
            case MINUS, SUBTRACT -> zoom(-1);
            case DIGIT0, NUMPAD0 -> fit();
            default -> {
                return;
            }
        }
        e.consume();
    }

    private void beside(int across, int down) {
        model.beside(across, down).ifPresent(card -> {
            choose(card.id());
            pointer.to(card.table(), card.id());
            canvas.requestFocus();
        });
    }

    private void draw() {
        canvas.repaint();
    }

    private void paint(Graphics2D surface) {
        surface.scale(model.scale(), model.scale());
        surface.translate(model.left(), model.top());
        Box seen = new Box(-model.left(), -model.top(), canvas.wide() / model.scale(), canvas.high() / model.scale());
        DiagramPainter.paint(surface, model.scale(), palette, model.diagram(), seen, model::isChosen);
    }

    /** The diagram as it is now, for a file. */
    public Diagram diagram() {
        return model.diagram();
    }
}
