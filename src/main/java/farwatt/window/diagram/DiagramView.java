package farwatt.window.diagram;

import farwatt.picture.Diagram;
import farwatt.picture.DiagramDrawing;
import farwatt.picture.Palette;
import farwatt.picture.Pen;
import farwatt.plan.Table;
import farwatt.window.desk.Desk;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** The single-line diagram: zoom by wheel, pan by dragging, choose by click or arrows. For the window's thread. */
public final class DiagramView extends BorderPane {
    private final DiagramModel model;
    private final Pointer pointer;
    private final Canvas canvas = new Canvas();
    private final Pane room = new Pane(canvas);
    private final Tooltip hint = new Tooltip();
    private Palette palette = Palette.LIGHT;
    private double pressedX;
    private double pressedY;

    /** Goes to a row. */
    @FunctionalInterface
    public interface Pointer {
        void to(Table table, String id);
    }

    /** @param saving asks where to save the picture */
    public DiagramView(Desk desk, Pointer pointer, Runnable saving) {
        model = new DiagramModel(desk);
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
        setCenter(room);
        setMinWidth(0);
        room.setMinSize(0, 0);
        canvas.widthProperty().bind(room.widthProperty());
        canvas.heightProperty().bind(room.heightProperty());
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
        canvas.focusedProperty().addListener(o -> draw());
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

    /** Marks a row as the chosen one and brings it into view. */
    public void choose(String id) {
        if (model.choose(id)) {
            model.reveal(canvas.getWidth(), canvas.getHeight());
            model.card(id).ifPresent(card -> canvas.setAccessibleText(card.title() + ", " + card.figures()));
            draw();
        }
    }

    /** Takes the cursor to the diagram. */
    public void enter() {
        canvas.requestFocus();
    }

    private void refresh() {
        if (model.refresh()) {
            sized();
        }
    }

    private void sized() {
        if (model.isFitted()) {
            model.fit(canvas.getWidth(), canvas.getHeight());
        }
        draw();
    }

    private void fit() {
        model.fit(canvas.getWidth(), canvas.getHeight());
        draw();
    }

    private void zoom(double steps) {
        model.zoom(steps, canvas.getWidth() / 2, canvas.getHeight() / 2);
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
        Optional<Diagram.Card> card = model.cardAt(e.getX(), e.getY());
        if (card.isPresent()) {
            go(card.get());
        } else {
            model.wireAt(e.getX(), e.getY()).ifPresent(wire -> {
                model.choose(wire.id());
                pointer.to(Table.RUNS, wire.id());
                draw();
            });
        }
    }

    private void go(Diagram.Card card) {
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
                .map(card -> model.reason(card.id(), card.id() + ": " + card.figures()))
                .or(() -> model.wireAt(e.getX(), e.getY())
                        .map(wire -> model.reason(wire.id(), wire.id() + ": " + wire.label())))
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
        GraphicsContext graphics = canvas.getGraphicsContext2D();
        double width = canvas.getWidth();
        double height = canvas.getHeight();
        graphics.save();
        CanvasPen pen = new CanvasPen(graphics, palette);
        pen.area(new double[] {0, width, width, 0}, new double[] {0, 0, height, height}, Pen.Ink.PAPER);
        graphics.scale(model.scale(), model.scale());
        graphics.translate(model.left(), model.top());
        double top = -model.top();
        double bottom = height / model.scale() - model.top();
        for (Diagram.Wire wire : model.diagram().wires()) {
            double low = Math.max(wire.startY(), wire.endY());
            double high = Math.min(wire.startY(), wire.endY());
            if (low >= top && high <= bottom) {
                DiagramDrawing.wire(wire, pen);
            }
        }
        for (Diagram.Card card : model.diagram().cards()) {
            if (card.y() + card.height() >= top && card.y() <= bottom) {
                DiagramDrawing.card(card, pen);
            }
        }
        model.card(model.chosen()).ifPresent(card -> chosen(card, pen));
        graphics.restore();
        if (canvas.isFocused()) {
            pen.line(
                    new double[] {1, width - 1, width - 1, 1, 1},
                    new double[] {1, 1, height - 1, height - 1, 1},
                    2,
                    new double[0],
                    Pen.Ink.MARK);
        }
    }

    private static void chosen(Diagram.Card card, Pen pen) {
        double l = card.x() - 4;
        double t = card.y() - 4;
        double r = card.x() + card.width() + 4;
        double b = card.y() + card.height() + 4;
        double[] xs = {l, r, r, l, l};
        double[] ys = {t, t, b, b, t};
        pen.line(xs, ys, 2, new double[] {4, 3}, Pen.Ink.MARK);
    }

    /** The diagram as it is now, for a file. */
    public Diagram diagram() {
        return model.diagram();
    }
}
