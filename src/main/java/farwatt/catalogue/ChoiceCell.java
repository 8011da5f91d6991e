package farwatt.catalogue;

import farwatt.plan.Cell;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A column that holds one word of a list, never read as a number. */
final class ChoiceCell implements CellReader {
    private final Name name;
    private final List<String> words;
    private final Map<String, Reading> byWord = new HashMap<>();

    ChoiceCell(Name name, Kind.Choice kind) {
        this.name = name;
        this.words = kind.words();
        for (int i = 0; i < words.size(); i++) {
            byWord.put(words.get(i), new Reading.Word(i, words.get(i)));
        }
    }

    @Override
    public Reading read(String row, Cell cell) {
        Reading whole = byWord.get(cell.text());
        if (whole != null && (cell.form() == Cell.Form.TEXT || cell.form() == Cell.Form.NUMBER)) {
            return whole;
        }
        return switch (cell.form()) {
            case TEXT -> text(row, cell.text());
            case NUMBER, YES_NO ->
                Mistake.of(name, row, CatalogueCode.NOT_IN_LIST, cell.text(), String.join(", ", words));
            case OTHER -> Mistake.of(name, row, CatalogueCode.NO_CELL, cell.text());
        };
    }

    private Reading text(String row, String text) {
        String plain = text.strip();
        Reading word = byWord.get(plain);
        if (plain.isEmpty() || word != null) {
            return word == null ? EMPTY : word;
        }
        for (String known : words) {
            if (known.toLowerCase(Locale.ROOT).equals(plain.toLowerCase(Locale.ROOT))) {
                return Mistake.of(name, row, CatalogueCode.NEARLY_WORD, plain, known);
            }
        }
        char first = plain.charAt(0);
        return first >= '0' && first <= '9'
                ? Mistake.of(name, row, CatalogueCode.NOT_IN_LIST, plain, String.join(", ", words))
                : new Reading.Expression(text);
    }
}
