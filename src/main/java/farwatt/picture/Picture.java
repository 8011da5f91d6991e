package farwatt.picture;

import farwatt.report.Refusal;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * A picture that can be written to a file without a display.
 *
 * @param title what it shows, also for those who cannot see it
 * @param width points
 * @param height points
 * @param drawing draws it
 */
public record Picture(String title, double width, double height, Consumer<Pen> drawing) {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final double HEAD = 28;
    /** Pixels a point, so that prints are sharp. */
    private static final double SHARP = 2;
    /** More pixels than this across or down are scaled down to it. */
    private static final double MOST_PIXELS = 14_000;

    /** A diagram with its title above. */
    public static Picture of(Diagram diagram, String title) {
        return new Picture(title, diagram.width(), diagram.height(), pen -> DiagramDrawing.draw(diagram, pen));
    }

    /**
     * Writes it as the file's ending says: .png or .svg.
     *
     * @throws Refusal if the ending is another, or letters cannot be drawn on this machine
     * @throws IOException if the file cannot be written
     */
    public void write(Path file, Palette palette) throws IOException, Refusal {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        boolean svg = name.endsWith(".svg");
        if (!svg && !name.endsWith(".png")) {
            throw Refusal.of(PictureCode.ENDING, file);
        }
        byte[] bytes = svg ? svg(palette) : png(palette);
        Files.write(file, bytes);
    }

    /** As PNG, two pixels a point where that is not too many. */
    public byte[] png(Palette palette) throws IOException, Refusal {
        double scale = Math.min(SHARP, MOST_PIXELS / Math.max(width, height + HEAD));
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(width * scale), (int) Math.ceil((height + HEAD) * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.scale(scale, scale);
            paint(graphics, palette);
        } finally {
            graphics.dispose();
        }
        var out = new java.io.ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    /** As SVG with its letters as text. */
    public byte[] svg(Palette palette) throws IOException, Refusal {
        Document document = document();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment("Farwatt");
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        graphics.setSVGCanvasSize(new Dimension((int) Math.ceil(width), (int) Math.ceil(height + HEAD)));
        paint(graphics, palette);
        Element root = graphics.getRoot();
        Element text = document.createElementNS(SVG, "title");
        text.setTextContent(clean(title));
        root.insertBefore(text, root.getFirstChild());
        root.setAttribute("role", "img");
        var out = new java.io.ByteArrayOutputStream();
        try (Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8)) {
            graphics.stream(root, writer, true, false);
        }
        return out.toByteArray();
    }

    private static Document document() {
        try {
            return DocumentBuilderFactory.newDefaultInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Letters that XML cannot hold are left out. */
    private static String clean(String text) {
        return text.codePoints()
                .filter(c -> c == '\t' || (c >= ' ' && c != 0xFFFE && c != 0xFFFF && !(c >= 0xD800 && c <= 0xDFFF)))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private void paint(Graphics2D graphics, Palette palette) throws Refusal {
        try {
            Pen pen = cleaning(new GraphicsPen(graphics, palette));
            double bottom = height + HEAD;
            pen.area(new double[] {0, width, width, 0}, new double[] {0, 0, bottom, bottom}, Pen.Ink.PAPER);
            pen.text(title, 16, 20, 14, Pen.Weight.BOLD, Pen.Ink.INK);
            graphics.translate(0, HEAD);
            drawing.accept(pen);
        } catch (InternalError | NullPointerException | NoClassDefFoundError e) {
            // what the toolkit throws where the system has no fonts at all
            throw Refusal.of(PictureCode.NO_FONTS);
        }
    }

    private static Pen cleaning(Pen pen) {
        return new Pen() {
            @Override
            public void line(double[] xs, double[] ys, double thick, double[] dashes, Ink ink) {
                pen.line(xs, ys, thick, dashes, ink);
            }

            @Override
            public void area(double[] xs, double[] ys, Ink ink) {
                pen.area(xs, ys, ink);
            }

            @Override
            public void text(String text, double x, double y, double size, Weight weight, Ink ink) {
                pen.text(clean(text), x, y, size, weight, ink);
            }
        };
    }
}
