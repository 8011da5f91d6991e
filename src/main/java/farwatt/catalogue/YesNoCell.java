package farwatt.catalogue;

import farwatt.plan.Cell;
import java.util.Locale;

/** A column of yes and no. */
final class YesNoCell implements CellReader {
    private static final Reading YES = new Reading.YesNo(true);
    private static final Reading NO = new Reading.YesNo(false);

    private final Name name;

    YesNoCell(Name name) {
        this.name = name;
    }

    @Override
    public Reading read(String row, Cell cell) {
        return switch (cell.form()) {
            case YES_NO -> cell.equals(Cell.YES) ? YES : NO;
            case TEXT -> text(row, cell.text());
            case NUMBER -> Mistake.of(name, row, CatalogueCode.NEITHER_YES_NOR_NO, cell.text());
            case OTHER -> Mistake.of(name, row, CatalogueCode.NO_CELL, cell.text());
        };
    }

    private Reading text(String row, String text) {
        String plain = text.strip();
        return switch (plain) {
            case "" -> EMPTY;
            case "yes" -> YES;
            case "no" -> NO;
            default -> nearly(row, plain, text);
        };
    }

    private Reading nearly(String row, String plain, String text) {
        return switch (plain.toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> Mistake.of(name, row, CatalogueCode.NEARLY_WORD, plain, "yes");
            case "no", "false" -> Mistake.of(name, row, CatalogueCode.NEARLY_WORD, plain, "no");
            default -> new Reading.Expression(text);
        };
    }
}
