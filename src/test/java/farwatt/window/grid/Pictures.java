package farwatt.window.grid;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Parent;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import org.testfx.util.WaitForAsyncUtils;

/** Pictures of what is on the screen, to be looked at after a test run. */
final class Pictures {
    private static final Path FOLDER = Path.of(System.getProperty("farwatt.root", ""), "target", "pictures");

    private Pictures() {}

    static void take(Parent node, String name) {
        WaitForAsyncUtils.waitForFxEvents();
        WritableImage image =
                WaitForAsyncUtils.waitForAsyncFx(10_000, () -> node.getScene().snapshot(null));
        int wide = (int) image.getWidth();
        int high = (int) image.getHeight();
        BufferedImage picture = new BufferedImage(wide, high, BufferedImage.TYPE_INT_ARGB);
        for (int y = 0; y < high; y++) {
            for (int x = 0; x < wide; x++) {
                picture.setRGB(x, y, image.getPixelReader().getArgb(x, y));
            }
        }
        try {
            Files.createDirectories(FOLDER);
            ImageIO.write(
                    picture, "png", FOLDER.resolve("grid-" + name + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
