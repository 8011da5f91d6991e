package farwatt.window.studies;

import farwatt.picture.Box;
import farwatt.picture.Extent;
import farwatt.picture.Palette;
import farwatt.picture.Picture;
import farwatt.window.raster.Raster;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.IntConsumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;

/**
 * The chart of a result: a place says its figures when the pointer is over it, arrows go from place to place. For the
 * window's thread.
 */
final class PictureView extends ScrollPane {
    private static final double RIM = 4;

    private final Raster canvas = new Raster(this::paint);
    private final Tooltip hint = new Tooltip();
    private final DoubleSupplier size;
    private final IntConsumer pointed;
    private final IntConsumer chosen;
    private Palette palette = Palette.LIGHT;
    private Drawing.@Nullable Drawn drawn;
    private @Nullable Picture picture;
    private List<Picture.Tip> tips = List.of();
    private double scale = 1;
    private int marked = -1;

    /**
     * A view of charts.
     *
     * @param size how large texts are, 1 for the usual size
     * @param pointed told the row of a place that was gone to by keys
     * @param chosen told the row of a place that was clicked, or chosen with Enter
     */
    PictureView(DoubleSupplier size, IntConsumer pointed, IntConsumer chosen) {
        this.size = size;
        this.pointed = pointed;
        this.chosen = chosen;
        setContent(canvas);
        setHbarPolicy(ScrollBarPolicy.AS_NEEDED);
        setFocusTraversable(false);
        canvas.setFocusTraversable(true);
        canvas.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        hint.setShowDelay(Duration.millis(80));
        hint.setShowDuration(Duration.INDEFINITE);
        canvas.setOnMouseMoved(this::moved);
        canvas.setOnMouseClicked(this::clicked);
        canvas.setOnKeyPressed(this::key);
        viewportBoundsProperty().addListener(o -> lay());
        said();
    }

    /** Draws another chart, or none. */
    void show(Optional<Drawing.Drawn> other) {
        if (!other.equals(Optional.ofNullable(drawn))) {
            drawn = other.orElse(null);
            marked = -1;
            lay();
        }
    }

    /** Draws in other colours from now on. */
    void show(Palette other) {
        palette = other;
        lay();
    }

    /** Marks the place of a row of the table. */
    void mark(int row) {
        int tip = drawn == null ? -1 : drawn.rows().indexOf(row);
        if (tip != marked) {
            marked = tip;
            said();
            canvas.repaint();
        }
    }

    /** What is drawn now. */
    Optional<Drawing.Drawn> drawn() {
        return Optional.ofNullable(drawn);
    }

    /** Lays the chart out anew for the room there is. */
    void lay() {
        double wide = Math.floor(getViewportBounds().getWidth());
        double high = Math.floor(getViewportBounds().getHeight());
        if (wide < 2 * RIM || high < 2 * RIM) {
            return;
        }
        Drawing.Drawn now = drawn;
        if (now == null) {
            picture = null;
            tips = List.of();
            canvas.setPrefSize(wide, high);
        } else {
            double large = size.getAsDouble();
            Picture laid = now.chart().picture(palette, new Extent((wide - RIM) / large, (high - RIM) / large));
            scale = Math.min(large, (wide - RIM) / laid.width());
            picture = laid;
            tips = laid.tips();
            canvas.setPrefSize(wide, Math.max(high, Math.floor(laid.height() * scale + RIM)));
        }
        canvas.resize(canvas.getPrefWidth(), canvas.getPrefHeight());
        said();
        canvas.repaint();
    }

    private void said() {
        Picture shown = picture;
        if (shown == null) {
            canvas.setAccessibleText("No picture yet");
            return;
        }
        String here = marked >= 0 && marked < tips.size() ? tips.get(marked).text() : shown.description();
        canvas.setAccessibleText(shown.title() + ". " + here);
    }

    private void paint(Graphics2D surface) {
        surface.setColor(new Color(palette.rgb(farwatt.picture.Ink.PAPER)));
        surface.fill(new Rectangle2D.Double(0, 0, canvas.wide() + 1, canvas.high() + 1));
        Picture shown = picture;
        if (shown == null) {
            return;
        }
        surface.scale(scale, scale);
        shown.paint(surface);
        if (marked >= 0 && marked < tips.size()) {
            Box box = tips.get(marked).box();
            Rectangle2D frame = new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
            surface.setColor(Color.BLACK);
            surface.setStroke(new BasicStroke(4));
            surface.draw(frame);
            surface.setColor(Color.WHITE);
            surface.setStroke(new BasicStroke(1.6f));
            surface.draw(frame);
        }
    }

    private int tipAt(MouseEvent e) {
        double x = (e.getX() - RIM / 2) / scale;
        double y = (e.getY() - RIM / 2) / scale;
        for (int i = 0; i < tips.size(); i++) {
            Box box = tips.get(i).box();
            if (x >= box.x() && x < box.right() && y >= box.y() && y < box.bottom()) {
                return i;
            }
        }
        return -1;
    }

    private int row(int tip) {
        Drawing.Drawn now = drawn;
        return now == null || tip < 0 || tip >= now.rows().size()
                ? -1
                : now.rows().get(tip);
    }

    private void moved(MouseEvent e) {
        int tip = tipAt(e);
        if (tip < 0) {
            Tooltip.uninstall(canvas, hint);
            hint.hide();
            canvas.setCursor(Cursor.DEFAULT);
            return;
        }
        hint.setText(tips.get(tip).text());
        Tooltip.install(canvas, hint);
        canvas.setCursor(row(tip) >= 0 ? Cursor.HAND : Cursor.DEFAULT);
    }

    private void clicked(MouseEvent e) {
        canvas.requestFocus();
        int tip = tipAt(e);
        if (row(tip) >= 0) {
            marked = tip;
            said();
            canvas.repaint();
            pointed.accept(row(tip));
            chosen.accept(row(tip));
        }
    }

    private void key(KeyEvent e) {
        switch (e.getCode()) {
            case LEFT -> go(-1, 0);
            case RIGHT -> go(1, 0);
            case UP -> go(0, -1);
            case DOWN -> go(0, 1);
            case ENTER -> {
                if (row(marked) < 0 || e.isShortcutDown()) {
                    return;
                }
                chosen.accept(row(marked));
            }
            default -> {
                return;
            }
        }
        e.consume();
    }

    /** To the nearest place on that side. */
    private void go(int across, int down) {
        if (tips.isEmpty()) {
            return;
        }
        int best = marked < 0 ? 0 : marked;
        double nearest = Double.POSITIVE_INFINITY;
        if (marked >= 0) {
            Box here = tips.get(marked).box();
            for (int i = 0; i < tips.size(); i++) {
                Box box = tips.get(i).box();
                double x = box.x() + box.width() / 2 - here.x() - here.width() / 2;
                double y = box.y() + box.height() / 2 - here.y() - here.height() / 2;
                double along = x * across + y * down;
                double aside = Math.abs(x * down) + Math.abs(y * across);
                double far = along + 4 * aside;
                if (along > 0.5 && aside <= along && far < nearest) {
                    nearest = far;
                    best = i;
                }
            }
        }
        marked = best;
        said();
        canvas.repaint();
        if (row(best) >= 0) {
            pointed.accept(row(best));
        }
    }
}
