package farwatt.picture;

import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Writes pictures as SVG. */
final class SvgText {
    private static final String SPACE = "http://www.w3.org/2000/svg";

    private SvgText() {}

    static byte[] of(Picture picture) {
        Document document = document();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment("Farwatt");
        SVGGraphics2D surface = new SVGGraphics2D(context, false);
        int width = (int) Math.ceil(picture.width());
        int height = (int) Math.ceil(picture.height());
        surface.setSVGCanvasSize(new Dimension(width, height));
        picture.paint(surface);
        Element root = surface.getRoot();
        root.setAttribute("viewBox", "0 0 " + width + " " + height);
        root.setAttribute("role", "img");
        root.setAttribute("aria-labelledby", "picture-title picture-description");
        root.insertBefore(said(document, "desc", "picture-description", picture.description()), root.getFirstChild());
        root.insertBefore(said(document, "title", "picture-title", picture.title()), root.getFirstChild());
        picture.tips().forEach(tip -> root.appendChild(tip(document, tip)));
        StringWriter out = new StringWriter();
        try {
            surface.stream(root, out, false, false);
        } catch (IOException e) {
            throw new IllegalStateException("memory cannot be written to", e);
        }
        return withoutType(out.toString()).getBytes(StandardCharsets.UTF_8);
    }

    /** A document type is of no use today, and readers without a network stumble over its address. */
    private static String withoutType(String svg) {
        int start = svg.indexOf("<!DOCTYPE");
        int end = svg.indexOf('>', start);
        int root = svg.indexOf("<svg");
        return start < 0 || start > root
                ? svg
                : svg.substring(0, start) + svg.substring(end + 1).stripLeading();
    }

    private static Document document() {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        try {
            return factory.newDocumentBuilder().getDOMImplementation().createDocument(SPACE, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("Java has no parser for XML", e);
        }
    }

    private static Element said(Document document, String kind, String id, String text) {
        Element element = document.createElementNS(SPACE, kind);
        element.setAttribute("id", id);
        element.setTextContent(text);
        return element;
    }

    /** An unseen place that shows its text under the pointer. */
    private static Element tip(Document document, Picture.Tip tip) {
        Element group = document.createElementNS(SPACE, "g");
        Element title = document.createElementNS(SPACE, "title");
        title.setTextContent(tip.text());
        group.appendChild(title);
        Element place = document.createElementNS(SPACE, "rect");
        place.setAttribute("x", number(tip.box().x()));
        place.setAttribute("y", number(tip.box().y()));
        place.setAttribute("width", number(tip.box().width()));
        place.setAttribute("height", number(tip.box().height()));
        place.setAttribute("fill", "none");
        place.setAttribute("stroke", "none");
        place.setAttribute("pointer-events", "all");
        group.appendChild(place);
        return group;
    }

    private static String number(double value) {
        return Double.toString(Math.round(value * 100) / 100.0);
    }
}
