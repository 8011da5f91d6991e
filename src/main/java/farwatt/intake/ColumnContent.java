package farwatt.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** What a column's cells look like, judged by its first rows whatever its heading says. */
final class ColumnContent {
    private static final int SAMPLE = 200;
    private static final Pattern NUMBER = Pattern.compile("[<>~≤≥+-]?\\s*\\d[\\d.,']*(?:[eE][+-]?\\d+)?");
    private static final Pattern MEASURED =
            Pattern.compile("[<>~≤≥]?\\s*\\d[\\d.,' /–-]*\\s*([^\\d\\s().,;/]{1,8})\\b?.*");
    private static final Pattern MAC =
            Pattern.compile("(?:[0-9A-Fa-f]{2}[:-]){5}[0-9A-Fa-f]{2}|(?:[0-9A-Fa-f]{4}\\.){2}[0-9A-Fa-f]{4}");
    private static final Pattern ADDRESS = Pattern.compile("\\d{1,3}(?:\\.\\d{1,3}){3}(?:/\\d+)?");
    private static final Pattern CATEGORY = Pattern.compile("(?i)(?:cat(?:egory|\\.)?|kat\\.?)\\s*\\d[ea]?.*");
    private static final Pattern SHEATH =
            Pattern.compile("(?i)indoor|outdoor|buried|direct burial|innen|außen|erdverlegt");
    private static final Pattern CODE =
            Pattern.compile("(?i)(?:poe\\b.*|802[.,]3.*|(?:class|klasse|classe|clase|klasa) ?\\d|a[ft]|bt|passiv.*)");

    private final List<RawCell> cells = new ArrayList<>();
    private int blank;

    ColumnContent(List<RawRow> rows, int column) {
        for (RawRow row : rows.subList(0, Math.min(SAMPLE, rows.size()))) {
            RawCell cell = row.cell(column);
            if (cell.isBlank()) {
                blank++;
            } else {
                cells.add(cell);
            }
        }
    }

    boolean isEmpty() {
        return cells.isEmpty();
    }

    /** Share of the filled cells that are bare numbers. */
    double numbers() {
        return share(ColumnContent::numberAlike);
    }

    /** Share of the filled cells in which a digit stands. */
    double digits() {
        return share(c -> c.form() != RawCell.Form.TEXT || c.text().chars().anyMatch(Character::isDigit));
    }

    double dates() {
        return share(c -> c.form() == RawCell.Form.DATE);
    }

    double addresses() {
        return share(c -> ADDRESS.matcher(Spelling.strip(c.text())).matches());
    }

    /** What the cells themselves say the column is. */
    Optional<Guess> guess() {
        if (cells.isEmpty()) {
            return Optional.empty();
        }
        if (share(c -> MAC.matcher(Spelling.strip(c.text())).matches()) > 0.5) {
            return said(Meaning.MAC);
        }
        if (share(c -> CODE.matcher(Spelling.strip(c.text())).matches()) > 0.5) {
            return said(Meaning.CLASS);
        }
        if (share(c -> CATEGORY.matcher(Spelling.strip(c.text())).matches()) > 0.5) {
            return said(Meaning.CATEGORY);
        }
        if (share(c -> SHEATH.matcher(Spelling.strip(c.text())).matches()) > 0.5) {
            return said(Meaning.SHEATH);
        }
        return byUnit();
    }

    private Optional<Guess> byUnit() {
        if (share(c -> isMeasured(c, Measure.POWER)) > 0.5) {
            return said(Meaning.WATTS);
        }
        if (share(c -> isMeasured(c, Measure.LENGTH)) > 0.5) {
            return said(Meaning.LENGTH);
        }
        if (share(c -> isMeasured(c, Measure.GAUGE)) > 0.5) {
            return said(Meaning.GAUGE);
        }
        return Optional.empty();
    }

    private static Optional<Guess> said(Meaning meaning) {
        return Optional.of(new Guess(meaning, 0.7, "its content"));
    }

    private static boolean isMeasured(RawCell cell, Measure measure) {
        var m = MEASURED.matcher(Spelling.strip(cell.text()));
        return m.matches()
                && ListUnit.of(m.group(1)).filter(u -> u.measure() == measure).isPresent();
    }

    /** True when the column counts its rows: 1, 2, 3 … but for a total's word and a note at the end. */
    boolean countsRows() {
        int next = 1;
        for (RawCell cell : cells) {
            if (Spelling.strip(cell.text()).equals(String.valueOf(next))) {
                next++;
            } else if (numberAlike(cell)) {
                return false;
            }
        }
        return next > 2 && (next - 1) * 10 >= (cells.size() + blank) * 6;
    }

    private static boolean numberAlike(RawCell cell) {
        return cell.isExact() || NUMBER.matcher(Spelling.strip(cell.text())).matches();
    }

    /** How many different texts the cells hold. */
    long different() {
        return cells.stream().map(c -> Spelling.fold(c.text())).distinct().count();
    }

    private double share(Predicate<RawCell> test) {
        if (cells.isEmpty()) {
            return 0;
        }
        return (double) cells.stream().filter(test).count() / cells.size();
    }
}
