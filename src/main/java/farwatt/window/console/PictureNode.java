package farwatt.window.console;

import farwatt.picture.Palette;
import farwatt.picture.Picture;
import farwatt.report.Refusal;
import farwatt.script.ResultPicture;
import farwatt.script.ResultPictures;
import farwatt.window.raster.Raster;
import java.awt.Graphics2D;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A picture that a script asked for, painted as sharp as the screen; places tell their value. For the window's thread. */
final class PictureNode extends VBox {
    private static final double MOST_WIDE = 620;

    private final ResultPicture asked;
    private final String below;
    private final Raster raster = new Raster(this::paint);
    private final Label none = new Label();
    private final Tooltip hint = new Tooltip();
    private final HBox foot = new HBox(4);
    private Optional<Picture> picture = Optional.empty();

    /**
     * A picture in the colours of a palette.
     *
     * @param below what the picture says of where it comes from
     * @param saving told when a person wants it saved
     */
    PictureNode(ResultPicture asked, String below, Palette palette, Consumer<ResultPicture> saving) {
        this.asked = asked;
        this.below = below;
        getStyleClass().add("fw-result");
        none.setWrapText(true);
        raster.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        raster.setFocusTraversable(true);
        raster.setOnMouseMoved(this::moved);
        Tooltip.install(raster, hint);
        Button save = new Button("Save…");
        save.setAccessibleText("Save the picture");
        save.getStyleClass().add("fw-button");
        save.setOnAction(e -> saving.accept(asked));
        foot.getChildren().add(save);
        show(palette);
    }

    /** Draws it in other colours. */
    void show(Palette palette) {
        try {
            Picture made = ResultPictures.of(asked, below, palette);
            picture = Optional.of(made);
            raster.setAccessibleText(made.title() + ". " + made.description());
            getChildren().setAll(raster, foot);
            raster.repaint();
        } catch (Refusal e) {
            none.setText(e.notice().line());
            getChildren().setAll(none);
        }
        requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
        return picture.map(p -> Math.min(width > 0 ? width : MOST_WIDE, MOST_WIDE) * p.height() / p.width())
                        .orElse(0.0)
                + (picture.isPresent() ? foot.prefHeight(-1) + 8 : none.prefHeight(width));
    }

    @Override
    protected void layoutChildren() {
        if (picture.isPresent()) {
            double wide = Math.min(getWidth(), MOST_WIDE);
            double high = wide * picture.get().height() / picture.get().width();
            raster.setMinSize(wide, high);
            raster.setPrefSize(wide, high);
            raster.setMaxSize(wide, high);
        }
        super.layoutChildren();
    }

    private double scale(Picture made) {
        return Math.min(raster.wide() / made.width(), raster.high() / made.height());
    }

    private void paint(Graphics2D surface) {
        picture.ifPresent(made -> {
            surface.scale(scale(made), scale(made));
            made.paint(surface);
        });
    }

    private void moved(MouseEvent e) {
        picture.ifPresent(made -> {
            double x = e.getX() / scale(made);
            double y = e.getY() / scale(made);
            String said = made.tips().stream()
                    .filter(tip -> tip.box().contains(x, y))
                    .map(Picture.Tip::text)
                    .findFirst()
                    .orElse(made.title());
            hint.setText(said);
        });
    }
}
