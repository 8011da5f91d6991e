package farwatt.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The texts that a workbook's cells share. */
final class Strings {
    private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");

    private final List<RawCell> all = new ArrayList<>();

    /** Reads the part that holds them: a text an item, runs of different looks joined, readings aids left out. */
    void read(XMLStreamReader xml) throws XMLStreamException {
        StringBuilder item = new StringBuilder();
        boolean inText = false;
        int aside = 0;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                String name = xml.getLocalName();
                aside += name.equals("rPh") ? 1 : 0;
                inText = name.equals("t");
                if (name.equals("si")) {
                    item.setLength(0);
                }
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                String name = xml.getLocalName();
                aside -= name.equals("rPh") ? 1 : 0;
                inText = false;
                if (name.equals("si")) {
                    all.add(RawCell.text(decoded(item.toString())));
                }
            } else if (inText && aside == 0 && xml.hasText()) {
                item.append(xml.getText());
            }
        }
    }

    /** The cell that names a text by its number; an empty one for a number that is none of them. */
    RawCell at(String number) {
        try {
            int at = Integer.parseInt(number.strip());
            return at >= 0 && at < all.size() ? all.get(at) : RawCell.EMPTY;
        } catch (NumberFormatException notOne) {
            return RawCell.EMPTY;
        }
    }

    /** Control signs that the format writes as _x000A_. */
    static String decoded(String text) {
        if (!text.contains("_x")) {
            return text;
        }
        Matcher m = ESCAPED.matcher(text);
        return m.replaceAll(
                found -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(found.group(1), 16))));
    }
}
