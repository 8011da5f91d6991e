package farwatt.workbook;

import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * A workbook of ours read back, whichever program saved it last: sheets with their cells, numbers to the last bit.
 * Reads from front to back and keeps only cells that hold something. For one thread.
 */
final class BookIn implements AutoCloseable {
    private static final long LARGEST_PART = 400L << 20;
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PROPERTIES = "docProps/custom.xml";
    private static final String BOOK = "xl/workbook.xml";

    private final ZipFile zip;
    private final Cancel cancel;

    private BookIn(ZipFile zip, Cancel cancel) {
        this.zip = zip;
        this.cancel = cancel;
    }

    /** Opens a file that may be a workbook. */
    static BookIn open(Path file, Cancel cancel) throws IOException {
        return new BookIn(new ZipFile(file.toFile()), cancel);
    }

    /** What the workbook says of itself; empty for any that is no hand-over. */
    Optional<Origin> origin() throws IOException, Refusal {
        if (zip.getEntry(PROPERTIES) == null) {
            return Optional.empty();
        }
        return Origin.of(read(PROPERTIES, BookIn::properties));
    }

    private static Map<String, String> properties(XMLStreamReader xml) throws XMLStreamException {
        Map<String, String> properties = new HashMap<>();
        String name = "";
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("property")) {
                name = String.valueOf(xml.getAttributeValue(null, "name"));
            } else if (event == XMLStreamConstants.CHARACTERS && !xml.isWhiteSpace()) {
                properties.merge(name, xml.getText(), String::concat);
            }
        }
        return properties;
    }

    /** All sheets of cells in the workbook's order. */
    List<SheetIn> sheets() throws IOException, Refusal {
        Map<String, String> targets = read("xl/_rels/workbook.xml.rels", BookIn::targets);
        List<String> texts =
                zip.getEntry("xl/sharedStrings.xml") == null ? List.of() : read("xl/sharedStrings.xml", SheetIn::texts);
        Map<String, String> named = read(BOOK, BookIn::named);
        List<SheetIn> sheets = new ArrayList<>();
        for (Map.Entry<String, String> one : named.entrySet()) {
            String part = targets.getOrDefault(one.getKey(), "");
            if (part.contains("worksheets/") && zip.getEntry(part) != null) {
                sheets.add(read(part, xml -> SheetIn.read(one.getValue(), xml, texts, cancel)));
            }
        }
        return sheets;
    }

    private static Map<String, String> targets(XMLStreamReader xml) throws XMLStreamException {
        Map<String, String> targets = new HashMap<>();
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("Relationship")) {
                String target = String.valueOf(xml.getAttributeValue(null, "Target"));
                String part = target.startsWith("/") ? target.substring(1) : "xl/" + target;
                targets.put(String.valueOf(xml.getAttributeValue(null, "Id")), part);
            }
        }
        return targets;
    }

    private static Map<String, String> named(XMLStreamReader xml) throws XMLStreamException {
        Map<String, String> named = new java.util.LinkedHashMap<>();
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("sheet")) {
                named.put(
                        String.valueOf(xml.getAttributeValue(RELATIONS, "id")),
                        String.valueOf(xml.getAttributeValue(null, "name")));
            }
        }
        return named;
    }

    /** What makes something of a part. */
    private interface Making<T> {
        T of(XMLStreamReader xml) throws XMLStreamException;
    }

    private <T> T read(String part, Making<T> making) throws IOException, Refusal {
        ZipEntry entry = zip.getEntry(part);
        if (entry == null) {
            throw Refusal.of(WorkbookCode.NO_HANDOVER);
        }
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        try (InputStream in = new Capped(zip.getInputStream(entry))) {
            // read as characters: the platform's reader prints to standard error when it meets bytes that are none
            return making.of(factory.createXMLStreamReader(new InputStreamReader(in, StandardCharsets.UTF_8)));
        } catch (XMLStreamException broken) {
            throw Refusal.of(WorkbookCode.DAMAGED);
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    /** Stops where a part unpacks to more than any hand-over has. */
    private static final class Capped extends FilterInputStream {
        private long left = LARGEST_PART;

        Capped(InputStream in) {
            super(in);
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int read = super.read(into, from, length);
            left -= Math.max(0, read);
            if (left < 0) {
                throw new ZipException("a part unpacks to more than " + (LARGEST_PART >> 20) + " MB");
            }
            return read;
        }
    }
}
