package farwatt.intake;

import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.XSSFReader;

/** Reads the sheets of an OOXML workbook, each from front to back, so that large ones fit. */
final class Xlsx {
    private static final long MOST_CELLS = 5_000_000;
    private static final Pattern BOOK = Pattern.compile("/xl/workbook.*\\.xml");
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private record Named(String name, PackagePart part, Sheet.Shown shown) {}

    private final OPCPackage files;
    private final Cancel cancel;
    private final List<Named> named = new ArrayList<>();
    private NumberCells.Base base = NumberCells.Base.B1900;

    Xlsx(OPCPackage files, Cancel cancel) {
        this.files = files;
        this.cancel = cancel;
    }

    /** All sheets in the workbook's order. */
    List<Sheet> sheets() throws IOException, Refusal {
        try {
            XSSFReader reader = new XSSFReader(files);
            try (InputStream in = reader.getWorkbookData()) {
                workbook(xml(new Unpacked(in, 0)));
            }
            return sheets(reader);
        } catch (XlsxSheet.TooMany tooMany) {
            throw Refusal.of(IntakeSays.TOO_MANY_CELLS, MOST_CELLS / 1_000_000);
        } catch (OpenXML4JException | XMLStreamException broken) {
            throw Refusal.of(IntakeSays.DAMAGED);
        }
    }

    private List<Sheet> sheets(XSSFReader reader)
            throws IOException, OpenXML4JException, XMLStreamException, XlsxSheet.TooMany {
        NumberCells numbers = new NumberCells(base);
        XlsxStyles styles = new XlsxStyles();
        try (InputStream in = reader.getStylesData()) {
            if (in != null) {
                styles.read(xml(new Unpacked(in, 0)));
            }
        }
        Strings strings = new Strings();
        try (InputStream in = reader.getSharedStringsData()) {
            if (in != null) {
                strings.read(xml(new Unpacked(in, Poi.LARGEST_TEXTS)));
            }
        }
        List<SheetRows> read = new ArrayList<>();
        List<Map<XlsxSheet.Open, String>> open = new ArrayList<>();
        long left = MOST_CELLS;
        for (Named one : named) {
            try (InputStream in =
                    new Unpacked(one.part().getInputStream(), one.part().getSize())) {
                XlsxSheet sheet = new XlsxSheet(xml(in), strings, styles, numbers, cancel);
                sheet.read(left);
                left -= sheet.rows().size();
                read.add(sheet.rows());
                open.add(sheet.open());
            }
        }
        if (open.stream().anyMatch(some -> !some.isEmpty())) {
            boolean small = MOST_CELLS - left <= Formulas.MOST_CELLS;
            Formulas.workOut(
                    files,
                    small ? open : List.of(),
                    read,
                    named.stream().map(Named::name).toList(),
                    numbers);
        }
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < named.size(); i++) {
            sheets.add(read.get(i).sheet(named.get(i).name(), named.get(i).shown()));
        }
        return sheets;
    }

    private void workbook(XMLStreamReader xml) throws XMLStreamException, InvalidFormatException {
        while (xml.hasNext()) {
            if (xml.next() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            if (xml.getLocalName().equals("workbookPr")) {
                String early = xml.getAttributeValue(null, "date1904");
                boolean yes = "1".equals(early) || "true".equals(early);
                base = yes ? NumberCells.Base.B1904 : NumberCells.Base.B1900;
            } else if (xml.getLocalName().equals("sheet")) {
                String relation = xml.getAttributeValue(RELATIONS, "id");
                Optional<PackagePart> part = relation == null ? Optional.empty() : sheet(relation);
                String name = xml.getAttributeValue(null, "name");
                part.ifPresent(found -> named.add(new Named(name, found, shown(xml))));
            }
        }
    }

    /** Charts on sheets of their own are no sheets of cells. */
    private Optional<PackagePart> sheet(String relation) throws InvalidFormatException {
        for (PackagePart book : files.getPartsByName(BOOK)) {
            PackageRelationship found = book.getRelationship(relation);
            if (found != null && found.getRelationshipType().endsWith("/worksheet")) {
                return Optional.ofNullable(book.getRelatedPart(found));
            }
        }
        return Optional.empty();
    }

    private static Sheet.Shown shown(XMLStreamReader xml) {
        String state = xml.getAttributeValue(null, "state");
        if ("hidden".equals(state)) {
            return Sheet.Shown.HIDDEN;
        }
        return "veryHidden".equals(state) ? Sheet.Shown.VERY_HIDDEN : Sheet.Shown.VISIBLE;
    }

    private static Reader characters(InputStream in) throws IOException {
        PushbackInputStream back = new PushbackInputStream(in, 2);
        byte[] mark = back.readNBytes(2);
        back.unread(mark);
        boolean wide = Encoding.isUtf16(mark);
        return new InputStreamReader(back, wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8);
    }

    private static XMLStreamReader xml(InputStream in) throws XMLStreamException, IOException {
        XMLInputFactory factory = XMLHelper.newXMLInputFactory();
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        // read as characters: the platform's reader prints to standard error when it meets bytes that are none
        return factory.createXMLStreamReader(characters(in));
    }
}
