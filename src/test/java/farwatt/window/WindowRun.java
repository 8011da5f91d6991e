package farwatt.window;

import farwatt.plan.Plan;
import farwatt.quantity.Decimal;
import farwatt.window.frame.Frame;
import farwatt.window.remember.Remembered;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A window for a test: the real one, on a screen that nobody sees, with answers prepared for what it asks. */
public final class WindowRun implements AutoCloseable {
    private static final long PATIENCE = 20;

    public final Answers answers = new Answers();
    public final FxRobot robot = new FxRobot();
    private final ExecutorService engine = Executors.newSingleThreadExecutor();
    private final ExecutorService disk = Executors.newSingleThreadExecutor();
    private final ExecutorService drawing = Executors.newSingleThreadExecutor();
    private final ExecutorService work = Executors.newSingleThreadExecutor();
    public final Stage stage;
    public final Frame frame;

    public WindowRun(Path folder, Plan plan) {
        this(folder, plan, Decimal.POINT);
    }

    public WindowRun(Path folder, Plan plan, Decimal decimal) {
        try {
            stage = FxToolkit.registerPrimaryStage();
        } catch (TimeoutException e) {
            throw new IllegalStateException(e);
        }
        frame = on(() -> {
            Remembered remembered = new Remembered(folder.resolve("remembered.properties"));
            Frame.Threads threads = new Frame.Threads(engine, disk, work, drawing, Platform::runLater);
            Frame made = new Frame(threads, answers, remembered, decimal, "a tester", plan);
            Scene scene = new Scene(made, 1280, 720);
            scene.getStylesheets()
                    .add(WindowRun.class
                            .getResource("/farwatt/window/farwatt.css")
                            .toExternalForm());
            stage.setScene(scene);
            stage.show();
            return made;
        });
        settle();
    }

    /** Does something on the window's thread. */
    public static <T> T on(Callable<T> task) {
        try {
            return WaitForAsyncUtils.waitForAsyncFx(PATIENCE * 1000, task);
        } catch (RuntimeException e) {
            throw e;
        }
    }

    /** Waits until something is so. */
    public static void until(String what, BooleanSupplier condition) {
        try {
            WaitForAsyncUtils.waitFor(PATIENCE, TimeUnit.SECONDS, () -> on(condition::getAsBoolean));
        } catch (TimeoutException e) {
            throw new AssertionError("not within " + PATIENCE + " s: " + what, e);
        }
    }

    /** Waits until the plan shown is worked out and judged, and drawn. */
    public void settle() {
        until("judged", () -> frame.desk().isJudged());
        drain(disk);
        drain(drawing);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void drain(ExecutorService thread) {
        try {
            thread.submit(() -> {}).get(PATIENCE, TimeUnit.SECONDS);
        } catch (InterruptedException | ExecutionException | TimeoutException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Takes a picture of the window to target/pictures. */
    public void picture(String name) {
        WritableImage image = on(() -> frame.getScene().snapshot(null));
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        PixelReader reader = image.getPixelReader();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                copy.setRGB(x, y, reader.getArgb(x, y));
            }
        }
        try {
            Path folder = Path.of("target", "pictures");
            Files.createDirectories(folder);
            ImageIO.write(copy, "png", folder.resolve(name + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        on(() -> {
            stage.hide();
            frame.close();
            return true;
        });
        engine.shutdown();
        disk.shutdown();
        work.shutdown();
        drawing.shutdown();
    }
}
