package farwatt.intake;

import farwatt.report.Cancel;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.util.CellRangeAddress;

/** Reads the XML of one sheet from front to back. */
final class XlsxSheet {
    private static final int BETWEEN_CHECKS = 1024;
    /** One more than any column has. */
    private static final int LONGEST_LETTERS = 4;

    /** Where a formula without a stored result stands. */
    record Open(int row, int column) {}

    private final XMLStreamReader xml;
    private final Strings strings;
    private final XlsxStyles styles;
    private final NumberCells numbers;
    private final Cancel cancel;
    private final Alike alike = new Alike();
    private final SheetRows rows = new SheetRows();
    private final Map<Open, String> open = new LinkedHashMap<>();
    private long most;
    private int row;
    private int column;

    XlsxSheet(XMLStreamReader xml, Strings strings, XlsxStyles styles, NumberCells numbers, Cancel cancel) {
        this.xml = xml;
        this.strings = strings;
        this.styles = styles;
        this.numbers = numbers;
        this.cancel = cancel;
    }

    /**
     * Reads it.
     *
     * @param mostCells how many cells may be read
     * @throws TooMany if there are more
     */
    void read(long mostCells) throws XMLStreamException, TooMany {
        most = mostCells;
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                switch (xml.getLocalName()) {
                    case "col" -> columnShape();
                    case "row" -> row();
                    case "mergeCell" -> merged();
                    default -> {}
                }
            }
        }
    }

    SheetRows rows() {
        return rows;
    }

    /** Formulas without a stored result → their text, "" where the sheet shares it with another cell. */
    Map<Open, String> open() {
        return open;
    }

    private void columnShape() {
        if (isYes("hidden") || "0".equals(attribute("width"))) {
            rows.hideColumns(number("min", 1) - 1, number("max", 0) - 1);
        }
    }

    private void merged() {
        String ref = attribute("ref");
        if (!ref.isEmpty()) {
            CellRangeAddress area = CellRangeAddress.valueOf(ref);
            rows.area(
                    new Sheet.Area(area.getFirstRow(), area.getLastRow(), area.getFirstColumn(), area.getLastColumn()));
        }
    }

    private void row() throws XMLStreamException, TooMany {
        row = number("r", row + 1);
        column = -1;
        boolean hidden = isYes("hidden") || "0".equals(attribute("ht"));
        if (row % BETWEEN_CHECKS == 0) {
            cancel.check();
        }
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("c")) {
                cell();
            } else if (event == XMLStreamConstants.END_ELEMENT
                    && xml.getLocalName().equals("row")) {
                break;
            }
        }
        rows.endRow(new RawRow(row, List.of(), hidden ? Look.HIDDEN : Look.PLAIN));
        if (rows.size() > most) {
            throw new TooMany();
        }
    }

    private void cell() throws XMLStreamException {
        String ref = attribute("r");
        column = ref.isEmpty() ? column + 1 : columnOf(ref);
        String type = attribute("t");
        int style = number("s", 0);
        boolean formula = false;
        boolean stored = false;
        String formulaText = "";
        String value = "";
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("c")) {
                break;
            }
            if (event == XMLStreamConstants.START_ELEMENT) {
                switch (xml.getLocalName()) {
                    case "f" -> {
                        formula = true;
                        formulaText = text("f");
                    }
                    case "v" -> {
                        stored = true;
                        value = text("v");
                    }
                    case "t" -> value += text("t");
                    case "rPh" -> text("rPh");
                    default -> {}
                }
            }
        }
        if (formula && (!stored || (value.isEmpty() && !type.equals("str")))) {
            open.put(new Open(row, column), formulaText);
            rows.cell(column, RawCell.of(RawCell.Form.MISSING, "=" + formulaText));
        } else {
            RawCell content = content(type, style, value);
            if (styles.isStruck(style)) {
                rows.struckCell(column, content);
            } else {
                rows.cell(column, content);
            }
        }
    }

    /** The column of a cell's place such as AB12, counted from 0; beyond the widest where there are no letters. */
    private static int columnOf(String ref) {
        int column = 0;
        int i = 0;
        while (i < ref.length() && i < LONGEST_LETTERS && Character.isLetter(ref.charAt(i))) {
            column = column * 26 + (Character.toUpperCase(ref.charAt(i)) - 'A' + 1);
            i++;
        }
        return i == 0 || column < 0 ? SheetRows.WIDEST : column - 1;
    }

    private RawCell content(String type, int style, String value) {
        return switch (type) {
            case "s" -> strings.at(value);
            case "str", "inlineStr" -> alike.text(Strings.decoded(value));
            case "b" -> RawCell.text(value.equals("1") || value.equals("true") ? "yes" : value.isEmpty() ? "" : "no");
            case "e" -> RawCell.of(RawCell.Form.ERROR, value);
            case "d" -> RawCell.of(RawCell.Form.DATE, value.replace('T', ' '));
            default -> value.isEmpty() ? RawCell.EMPTY : styled(value, style);
        };
    }

    private RawCell styled(String value, int style) {
        return numbers.cell(value, styles.format(style), styles.formatText(style));
    }

    /** The text inside an element, whatever elements are in it. */
    private String text(String element) throws XMLStreamException {
        String all = "";
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA) {
                all = all.isEmpty() ? xml.getText() : all + xml.getText();
            } else if (event == XMLStreamConstants.END_ELEMENT
                    && xml.getLocalName().equals(element)) {
                return all;
            }
        }
        return all;
    }

    private String attribute(String name) {
        String value = xml.getAttributeValue(null, name);
        return value == null ? "" : value;
    }

    private boolean isYes(String name) {
        String value = attribute(name);
        return value.equals("1") || value.equals("true");
    }

    private int number(String name, int otherwise) {
        String value = attribute(name);
        try {
            return value.isEmpty() ? otherwise : Integer.parseInt(value);
        } catch (NumberFormatException notOne) {
            return otherwise;
        }
    }

    /** The workbook has more cells than a list can have. */
    static final class TooMany extends Exception {
        private static final long serialVersionUID = 1L;
    }
}
