package farwatt.window.raster;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.IntBuffer;
import java.util.function.Consumer;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/**
 * A part of the window that shows what a drawing paints, as sharp as the screen is: the drawing's pixels are the
 * window's, without a copy in between. For the window's thread.
 */
public final class Raster extends Region {
    private static final int LARGEST = 8192;
    /** Air for the frame that says where the keys go. */
    private static final double RIM = 2;

    private final Consumer<Graphics2D> drawing;
    private final ImageView view = new ImageView();
    private @Nullable BufferedImage image;
    private @Nullable PixelBuffer<IntBuffer> pixels;
    private double sharpness = 1;

    /** @param drawing paints all of it in units of the window, from (0, 0) to {@link #wide} and {@link #high} */
    public Raster(Consumer<Graphics2D> drawing) {
        this.drawing = drawing;
        view.setMouseTransparent(true);
        view.setManaged(false);
        view.relocate(RIM, RIM);
        getStyleClass().add("fw-drawing");
        getChildren().add(view);
        setMinSize(0, 0);
        widthProperty().addListener(o -> repaint());
        heightProperty().addListener(o -> repaint());
    }

    /** Width of the drawing. */
    public double wide() {
        return Math.max(0, getWidth() - 2 * RIM);
    }

    /** Height of the drawing. */
    public double high() {
        return Math.max(0, getHeight() - 2 * RIM);
    }

    /** Paints again. */
    public void repaint() {
        int width = pixels(wide());
        int height = pixels(high());
        if (width == 0 || height == 0) {
            return;
        }
        BufferedImage target = sized(width, height);
        Graphics2D surface = target.createGraphics();
        try {
            surface.scale(sharpness, sharpness);
            drawing.accept(surface);
        } finally {
            surface.dispose();
        }
        if (pixels != null) {
            pixels.updateBuffer(changed -> null);
        }
    }

    private int pixels(double length) {
        Window window = getScene() == null ? null : getScene().getWindow();
        sharpness = window == null ? 1 : window.getOutputScaleX();
        return (int) Math.min(LARGEST, Math.ceil(length * sharpness));
    }

    private BufferedImage sized(int width, int height) {
        BufferedImage now = image;
        if (now != null && now.getWidth() == width && now.getHeight() == height) {
            return now;
        }
        BufferedImage fresh = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        int[] data = ((DataBufferInt) fresh.getRaster().getDataBuffer()).getData();
        PixelBuffer<IntBuffer> buffer =
                new PixelBuffer<>(width, height, IntBuffer.wrap(data), PixelFormat.getIntArgbPreInstance());
        view.setImage(new WritableImage(buffer));
        view.setFitWidth(width / sharpness);
        view.setFitHeight(height / sharpness);
        image = fresh;
        pixels = buffer;
        return fresh;
    }
}
