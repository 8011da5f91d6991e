package farwatt.picture;

import farwatt.report.Refusal;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import javax.imageio.ImageIO;

/** Pictures as PNG and SVG. Needs no display; needs some font. For any thread. */
public final class PictureFile {
    private static final double SHARP = 2;
    private static final double MOST_PIXELS = 24e6;
    private static final int TRIES = 100;

    private PictureFile() {}

    /**
     * Writes a picture beside its place and puts it there whole.
     *
     * @param target a name that ends in .png or .svg
     * @throws Refusal if the name ends otherwise, the place cannot be written to, or no font is there
     */
    public static void write(Picture picture, Path target) throws Refusal {
        check(target);
        byte[] bytes = isPng(target) ? png(picture) : svg(picture);
        try {
            put(bytes, target);
        } catch (IOException e) {
            throw Refusal.of(PictureCode.NOT_WRITTEN, target, reason(e));
        }
    }

    private static boolean isPng(Path target) {
        return String.valueOf(target.getFileName()).toLowerCase(Locale.ROOT).endsWith(".png");
    }

    /**
     * Looks whether a picture could be written there, before anything long is worked out for it.
     *
     * @throws Refusal if the name ends otherwise than in .png or .svg, or the place cannot hold it
     */
    public static void check(Path target) throws Refusal {
        String name = String.valueOf(target.getFileName()).toLowerCase(Locale.ROOT);
        if (!name.endsWith(".png") && !name.endsWith(".svg")) {
            throw Refusal.of(PictureCode.BAD_ENDING, target);
        }
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw Refusal.of(PictureCode.NO_FOLDER, target, String.valueOf(folder));
        }
        if (Files.isDirectory(target)) {
            throw Refusal.of(PictureCode.IS_FOLDER, target);
        }
    }

    private static void put(byte[] bytes, Path target) throws IOException {
        Path real = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
        Path part = open(real);
        try {
            Files.write(part, bytes);
            Files.move(part, real, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** A new empty file beside the target, with the rights that new files have there. */
    private static Path open(Path real) throws IOException {
        for (int i = 1; ; i++) {
            Path part = real.resolveSibling("." + real.getFileName() + ".part" + i);
            try {
                return Files.createFile(part);
            } catch (FileAlreadyExistsException e) {
                if (i == TRIES) {
                    throw e;
                }
            }
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "writing there is not allowed";
        }
        String said = e instanceof FileSystemException file ? file.getReason() : e.getMessage();
        return said == null || said.isBlank() ? "the disk gave no reason" : said;
    }

    /**
     * A picture as PNG, twice as fine as its units, less for very large ones.
     *
     * @throws Refusal if no font is there
     */
    public static byte[] png(Picture picture) throws Refusal {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image(picture), "png", out);
        } catch (IOException e) {
            throw new IllegalStateException("memory cannot be written to", e);
        }
        return out.toByteArray();
    }

    /**
     * A picture as an image in memory.
     *
     * @throws Refusal if no font is there
     */
    public static BufferedImage image(Picture picture) throws Refusal {
        needFont();
        double area = picture.width() * picture.height();
        double scale = Math.min(SHARP, Math.sqrt(MOST_PIXELS / area));
        int width = (int) Math.max(1, Math.ceil(picture.width() * scale));
        int height = (int) Math.max(1, Math.ceil(picture.height() * scale));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = image.createGraphics();
        try {
            surface.setColor(Color.WHITE);
            surface.fillRect(0, 0, width, height);
            surface.scale(width / picture.width(), height / picture.height());
            picture.paint(surface);
        } finally {
            surface.dispose();
        }
        return image;
    }

    /**
     * A picture as SVG in UTF-8, with its title, its description and a title at every place that has one.
     *
     * @throws Refusal if no font is there
     */
    public static byte[] svg(Picture picture) throws Refusal {
        needFont();
        return SvgText.of(picture);
    }

    /** Where no font is installed, Java fails in ways of its own at the first text that is measured. */
    private static void needFont() throws Refusal {
        try {
            FontRenderContext context = new FontRenderContext(new AffineTransform(), true, true);
            if (new Font(Font.SANS_SERIF, Font.PLAIN, 12)
                            .getStringBounds("m", context)
                            .getWidth()
                    > 0) {
                return;
            }
        } catch (RuntimeException | LinkageError | InternalError e) {
            throw Refusal.of(PictureCode.NO_FONT);
        }
        throw Refusal.of(PictureCode.NO_FONT);
    }
}
