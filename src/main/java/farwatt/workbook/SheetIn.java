package farwatt.workbook;

import farwatt.report.Cancel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * One sheet of a workbook read back.
 *
 * @param name as the workbook has it
 * @param lines those with something in them, in their order
 */
record SheetIn(String name, List<Line> lines) {
    private static final Pattern WRITTEN_BY_NUMBER = Pattern.compile("_x([0-9A-Fa-f]{4})_");
    private static final int WIDEST = 16_384;
    private static final int LONGEST_LETTERS = 3;

    /**
     * A line.
     *
     * @param number as people count it
     * @param cells by column, counted from 0
     */
    record Line(int number, Map<Integer, Cell> cells) {
        Cell at(int column) {
            return cells.getOrDefault(column, Cell.NONE);
        }
    }

    /**
     * A cell.
     *
     * @param text its content or stored result; of a number its digits
     * @param isNumber true for a number
     * @param formula without the sign before it, "" where there is none; "…" where another cell has its text
     */
    record Cell(String text, boolean isNumber, String formula) {
        static final Cell NONE = new Cell("", false, "");

        boolean isBlank() {
            return text.isBlank();
        }

        boolean hasFormula() {
            return !formula.isEmpty();
        }

        /** The number, NaN if it is none. */
        double number() {
            try {
                return isNumber ? Double.parseDouble(text) : Double.NaN;
            } catch (NumberFormatException notOne) {
                return Double.NaN;
            }
        }
    }

    static SheetIn read(String name, XMLStreamReader xml, List<String> texts, Cancel cancel) throws XMLStreamException {
        List<Line> lines = new ArrayList<>();
        int row = 0;
        while (xml.hasNext()) {
            if (xml.next() != XMLStreamConstants.START_ELEMENT
                    || !xml.getLocalName().equals("row")) {
                continue;
            }
            cancel.check();
            row = number(xml.getAttributeValue(null, "r"), row + 1);
            Map<Integer, Cell> cells = line(xml, texts);
            if (!cells.isEmpty()) {
                lines.add(new Line(row, cells));
            }
        }
        return new SheetIn(name, lines);
    }

    private static Map<Integer, Cell> line(XMLStreamReader xml, List<String> texts) throws XMLStreamException {
        Map<Integer, Cell> cells = new HashMap<>();
        int column = -1;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("row")) {
                break;
            }
            if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("c")) {
                column = column(xml.getAttributeValue(null, "r"), column + 1);
                Cell cell = cell(xml, String.valueOf(xml.getAttributeValue(null, "t")), texts);
                boolean holds = !cell.text().isEmpty() || cell.hasFormula();
                if (holds && column < WIDEST) {
                    cells.put(column, cell);
                }
            }
        }
        return cells;
    }

    private static Cell cell(XMLStreamReader xml, String type, List<String> texts) throws XMLStreamException {
        StringBuilder value = new StringBuilder();
        StringBuilder inline = new StringBuilder();
        String formula = "";
        String within = "";
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("c")) {
                break;
            }
            if (event == XMLStreamConstants.START_ELEMENT) {
                within = xml.getLocalName();
                formula = within.equals("f") ? "…" : formula;
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                within = "";
            } else if (event == XMLStreamConstants.CHARACTERS) {
                switch (within) {
                    case "f" -> formula = xml.getText();
                    case "v" -> value.append(xml.getText());
                    case "t" -> inline.append(xml.getText());
                    default -> {}
                }
            }
        }
        boolean inPlace = type.equals("inlineStr") && inline.length() > 0;
        return content(type, (inPlace ? inline : value).toString(), formula, texts);
    }

    private static Cell content(String type, String value, String formula, List<String> texts) {
        return switch (type) {
            case "s" -> {
                int at = number(value, -1);
                yield new Cell(at >= 0 && at < texts.size() ? texts.get(at) : "", false, formula);
            }
            case "str", "inlineStr" -> new Cell(plain(value), false, formula);
            case "b" -> new Cell(value.equals("1") ? "yes" : value.isEmpty() ? "" : "no", false, formula);
            case "e" -> new Cell(value, false, formula);
            default -> new Cell(value.strip(), true, formula);
        };
    }

    /** The texts that cells share. */
    static List<String> texts(XMLStreamReader xml) throws XMLStreamException {
        List<String> all = new ArrayList<>();
        StringBuilder item = new StringBuilder();
        String within = "";
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                within = xml.getLocalName();
                if (within.equals("si")) {
                    item.setLength(0);
                }
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                within = "";
                if (xml.getLocalName().equals("si")) {
                    all.add(plain(item.toString()));
                }
            } else if (event == XMLStreamConstants.CHARACTERS && within.equals("t")) {
                item.append(xml.getText());
            }
        }
        return all;
    }

    /** Signs that the form writes by their number, as they were (ISO/IEC 29500-1, 22.9.2.19). */
    private static String plain(String text) {
        return text.contains("_x")
                ? WRITTEN_BY_NUMBER
                        .matcher(text)
                        .replaceAll(
                                m -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(m.group(1), 16))))
                : text;
    }

    private static int column(@org.jspecify.annotations.Nullable String ref, int otherwise) {
        int column = 0;
        int i = 0;
        while (ref != null && i < ref.length() && i < LONGEST_LETTERS && ref.charAt(i) >= 'A' && ref.charAt(i) <= 'Z') {
            column = column * 26 + (ref.charAt(i) - 'A' + 1);
            i++;
        }
        return i == 0 ? otherwise : column - 1;
    }

    private static int number(@org.jspecify.annotations.Nullable String text, int otherwise) {
        try {
            return text == null ? otherwise : Integer.parseInt(text.strip());
        } catch (NumberFormatException notOne) {
            return otherwise;
        }
    }
}
