package farwatt.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.usermodel.BuiltinFormats;

/** What matters of a workbook's styles: number formats, and whether text is struck out. */
final class XlsxStyles {
    private record Style(int format, int font) {}

    private final Map<Integer, String> formats = new HashMap<>();
    private final List<Boolean> struckFonts = new ArrayList<>();
    private final List<Style> styles = new ArrayList<>();
    /** The list that is being read: fonts, cellXfs or another. */
    private String within = "";

    void read(XMLStreamReader xml) throws XMLStreamException {
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                element(xml);
            }
        }
    }

    private void element(XMLStreamReader xml) {
        switch (xml.getLocalName()) {
            case "numFmts", "fonts", "fills", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs" ->
                within = xml.getLocalName();
            case "numFmt" -> {
                String code = xml.getAttributeValue(null, "formatCode");
                if (within.equals("numFmts") && code != null) {
                    formats.put(number(xml, "numFmtId"), code);
                }
            }
            case "font" -> {
                if (within.equals("fonts")) {
                    struckFonts.add(false);
                }
            }
            case "strike" -> {
                if (within.equals("fonts") && !struckFonts.isEmpty()) {
                    String value = xml.getAttributeValue(null, "val");
                    boolean yes = value == null || value.equals("1") || value.equals("true");
                    struckFonts.set(struckFonts.size() - 1, yes);
                }
            }
            case "xf" -> {
                if (within.equals("cellXfs")) {
                    styles.add(new Style(number(xml, "numFmtId"), number(xml, "fontId")));
                }
            }
            default -> {}
        }
    }

    private static int number(XMLStreamReader xml, String name) {
        String value = xml.getAttributeValue(null, name);
        try {
            return value == null ? 0 : Integer.parseInt(value);
        } catch (NumberFormatException notOne) {
            return 0;
        }
    }

    private Style style(int index) {
        return index >= 0 && index < styles.size() ? styles.get(index) : new Style(0, 0);
    }

    /** The number of a style's number format. */
    int format(int index) {
        return style(index).format();
    }

    /** The number format itself, "" if it is none in particular. */
    String formatText(int index) {
        int format = format(index);
        String own = formats.get(format);
        if (own != null) {
            return own;
        }
        String builtIn = BuiltinFormats.getBuiltinFormat(format);
        return builtIn == null ? "" : builtIn;
    }

    boolean isStruck(int index) {
        int font = style(index).font();
        return font >= 0 && font < struckFonts.size() && struckFonts.get(font);
    }
}
