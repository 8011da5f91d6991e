package farwatt.window.diagram;

import farwatt.engine.Still;
import farwatt.picture.Card;
import farwatt.picture.Diagram;
import farwatt.picture.Wire;
import farwatt.plan.Rows;
import farwatt.review.Finding;
import farwatt.review.Review;
import farwatt.window.desk.Desk;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;

/** Which part of the diagram is seen, and what is chosen in it. Lengths in pixels of the window. */
public final class DiagramModel {
    private static final double SMALLEST = 0.05;
    private static final double LARGEST = 4;
    private static final double STEP = 1.2;
    /** How small all of it may become before a part is shown, for letters of the usual height. */
    private static final double LEAST_FITTED = 0.3;

    private final Desk desk;
    private final Executor drawing;
    private final Executor home;
    private Diagram diagram = new Diagram(0, 0, List.of(), List.of(), List.of(), List.of());
    private long stills;
    private long reviews;
    private double scale = 1;
    private double letters = 1;
    private double left;
    private double top;
    private String chosen = "";
    private boolean fitted = true;
    private boolean waiting;

    /**
     * @param drawing where diagrams are laid out: thousands of nodes take longer than a turn of the screen
     * @param home the window's thread
     */
    public DiagramModel(Desk desk, Executor drawing, Executor home) {
        this.desk = desk;
        this.drawing = drawing;
        this.home = home;
    }

    /** Has what was worked out laid out, if it is something else; then tells on the window's thread. */
    public void refresh(Runnable changed) {
        if (desk.still().isPresent() && !waiting && isOld()) {
            lay(desk.still().get(), changed);
        }
    }

    private boolean isOld() {
        return desk.stills() != stills || desk.reviews() != reviews;
    }

    private void lay(Still still, Runnable changed) {
        Optional<Review> review = desk.review();
        stills = desk.stills();
        reviews = desk.reviews();
        waiting = true;
        try {
            drawing.execute(() -> {
                Diagram laid = Diagram.of(still, review);
                home.execute(() -> take(laid, changed));
            });
        } catch (RejectedExecutionException e) {
            // the window is closing: nobody looks any more
            waiting = false;
        }
    }

    private void take(Diagram laid, Runnable changed) {
        diagram = laid;
        waiting = false;
        changed.run();
        refresh(changed);
    }

    public Diagram diagram() {
        return diagram;
    }

    public double scale() {
        return scale;
    }

    public double left() {
        return left;
    }

    public double top() {
        return top;
    }

    /** The row that is chosen, "" for none. */
    public String chosen() {
        return chosen;
    }

    /** True for the id of the row that is chosen. */
    public boolean isChosen(String id) {
        return !chosen.isEmpty() && Rows.fold(id).equals(Rows.fold(chosen));
    }

    /** Chooses a row; answers whether it was another one before. */
    public boolean choose(String id) {
        boolean other = !Rows.fold(id).equals(Rows.fold(chosen));
        chosen = id;
        return other;
    }

    /** True as long as the person did not choose a part of it: it then always fits. */
    public boolean isFitted() {
        return fitted;
    }

    /** Letters are so many times as high as usual. */
    void letters(double factor) {
        scale *= factor / letters;
        letters = factor;
    }

    /** Shows all of it, or as much as can still be read. */
    public void fit(double width, double height) {
        fitted = true;
        double wanted = Math.min(width / Math.max(1, diagram.width()), height / Math.max(1, diagram.height()));
        scale = Math.max(LEAST_FITTED * letters, Math.min(letters, wanted));
        left = Math.max(0, (width / scale - diagram.width()) / 2);
        top = Math.max(0, (height / scale - diagram.height()) / 2);
    }

    /** Makes it larger or smaller about a point of the window. */
    public void zoom(double steps, double x, double y) {
        fitted = false;
        double px = x / scale - left;
        double py = y / scale - top;
        scale = Math.max(SMALLEST, Math.min(LARGEST, scale * Math.pow(STEP, steps)));
        left = x / scale - px;
        top = y / scale - py;
    }

    /** Moves it. */
    public void pan(double dx, double dy) {
        fitted = false;
        left += dx / scale;
        top += dy / scale;
    }

    /** Brings the chosen card into what is seen. */
    public void reveal(double width, double height) {
        card(chosen).ifPresent(card -> {
            double x = (card.box().x() + left) * scale;
            double y = (card.box().y() + top) * scale;
            boolean seen = x >= 0
                    && y >= 0
                    && x + card.box().width() * scale <= width
                    && y + card.box().height() * scale <= height;
            if (!seen) {
                left = (width / scale - card.box().width()) / 2 - card.box().x();
                top = (height / scale - card.box().height()) / 2 - card.box().y();
            }
        });
    }

    /** The card of a row. */
    public Optional<Card> card(String id) {
        return diagram.cards().stream()
                .filter(card -> Rows.fold(card.id()).equals(Rows.fold(id)))
                .findFirst();
    }

    /** The card at a point of the window. */
    public Optional<Card> cardAt(double x, double y) {
        return diagram.cardAt(x / scale - left, y / scale - top);
    }

    /** The run at a point of the window. */
    public Optional<Wire> wireAt(double x, double y) {
        return diagram.wireAt(x / scale - left, y / scale - top, 6 / scale);
    }

    /** What there is to say of a row: the worst finding on it, or its figures. */
    public String reason(String id, String otherwise) {
        return desk.review()
                .map(review -> review.findings().stream()
                        .filter(finding -> Rows.fold(finding.place().row()).equals(Rows.fold(id)))
                        .map(Finding::text)
                        .findFirst()
                        .orElse(otherwise))
                .orElse(otherwise);
    }

    /** The card beside the chosen one in a direction: −1 or 1 across columns, −1 or 1 down. */
    public Optional<Card> beside(int across, int down) {
        Optional<Card> now = card(chosen);
        if (now.isEmpty()) {
            return diagram.cards().stream().findFirst();
        }
        Card from = now.get();
        return diagram.cards().stream()
                .filter(card -> across != 0
                        ? Math.signum(card.box().x() - from.box().x()) == across
                        : card.box().x() == from.box().x()
                                && Math.signum(card.box().y() - from.box().y()) == down)
                .min((a, b) -> Double.compare(distance(a, from), distance(b, from)));
    }

    private static double distance(Card card, Card from) {
        return Math.hypot(
                card.box().x() - from.box().x(),
                card.box().y()
                        + card.box().height() / 2
                        - from.box().y()
                        - from.box().height() / 2);
    }
}
