package farwatt.intake;

import farwatt.quantity.Decimal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the numbers of a cell with their units, bounds and labels: one pass from left to right. */
final class FigureReader {
    private final String text;
    private final Optional<Decimal> habit;
    private final List<Figure> figures = new ArrayList<>();
    private final List<String> words = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final StringBuilder phrase = new StringBuilder();
    private Figures.Join join = Figures.Join.SEPARATE;
    private Figure.Bound bound = Figure.Bound.NONE;
    private Figure.Label label = Figure.Label.NONE;
    /** True while the last number may still get a unit or a label that follows it. */
    private boolean open;

    private boolean bracket;
    private boolean broken;
    private boolean negative;
    private char before = ' ';
    private int at;

    private FigureReader(String text, Optional<Decimal> habit) {
        this.text = text;
        this.habit = habit;
    }

    /** The numbers of a cell's text. */
    static Figures read(String typed, Optional<Decimal> habit) {
        return isNumber(typed) ? plain(typed, habit) : new FigureReader(typed, habit).all();
    }

    /** Most cells are one bare number. */
    private static boolean isNumber(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean mark = (c == '.' || c == ',') && i > 0 && i < text.length() - 1;
            if (!isDigit(c) && !mark) {
                return false;
            }
        }
        return !text.isEmpty();
    }

    private static Figures plain(String text, Optional<Decimal> habit) {
        List<Figure> one = NumberText.read(text, habit)
                .map(n -> List.of(
                        new Figure(n.value(), n.other(), Optional.empty(), Figure.Bound.NONE, Figure.Label.NONE)))
                .orElse(List.of());
        return new Figures(one, Figures.Join.SEPARATE, List.of(), List.of(), one.isEmpty(), false);
    }

    private Figures all() {
        while (at < text.length()) {
            char c = text.charAt(at);
            if (isDigit(c) || ((c == '.' || c == ',') && isDigit(next()) && !isDigit(before))) {
                closePhrase();
                number();
            } else if (Character.isLetter(c) || c == '°' || c == '%' || c == '′' || c == '″' || isMark(c)) {
                word();
            } else {
                if (!isBlank(c)) {
                    closePhrase();
                    sign(c);
                }
                at++;
            }
        }
        closePhrase();
        if (join == Figures.Join.SEPARATE && isFeetInches()) {
            join = Figures.Join.FEET_INCHES;
        }
        return new Figures(figures, join, words, remarks, broken, negative);
    }

    private boolean isFeetInches() {
        return figures.size() == 2
                && figures.get(0).unit().filter(u -> u.symbol().equals("ft")).isPresent()
                && figures.get(1).unit().filter(u -> u.symbol().equals("in")).isPresent();
    }

    private void number() {
        int start = at;
        while (at < text.length() && (isDigit(text.charAt(at)) || isInner())) {
            at++;
        }
        int digitsEnd = at;
        exponent();
        Optional<NumberText> read = NumberText.read(text.substring(start, digitsEnd), habit);
        if (read.isEmpty()) {
            broken = true;
            return;
        }
        BigDecimal value = read.get().value();
        if (at > digitsEnd) {
            value = value.scaleByPowerOfTen(
                    Integer.parseInt(text.substring(digitsEnd + 1, at).replace("+", "")));
        }
        figures.add(new Figure(value, read.get().other(), Optional.empty(), bound, label));
        bound = Figure.Bound.NONE;
        label = Figure.Label.NONE;
        open = true;
        before = '0';
    }

    /** An exponent as sheet programs write it: 1.2E+01. */
    private void exponent() {
        int i = at;
        if (i < text.length() && (text.charAt(i) == 'E' || text.charAt(i) == 'e')) {
            i++;
            i += i < text.length() && (text.charAt(i) == '+' || text.charAt(i) == '-') ? 1 : 0;
            int digits = i;
            while (i < text.length() && isDigit(text.charAt(i)) && i - digits < 2) {
                i++;
            }
            boolean ends = i >= text.length() || !Character.isLetterOrDigit(text.charAt(i));
            if (i > digits && ends) {
                at = i;
            }
        }
    }

    private void word() {
        int start = at;
        char first = text.charAt(at++);
        if (Character.isLetter(first) || first == '°') {
            while (at < text.length()
                    && (Character.isLetter(text.charAt(at))
                            || isUnitSlash()
                            || text.charAt(at) == '²'
                            || isElision())) {
                at++;
            }
        }
        String word = text.substring(start, at);
        Optional<ListUnit> unit = ListUnit.of(word);
        if (unit.isPresent() && phrase.length() == 0 && open && last().unit().isEmpty()) {
            replaceLast(last().with(unit.get()));
            before = 'u';
            return;
        }
        phrase.append(phrase.length() > 0 ? " " : "").append(word);
    }

    /** A slash inside a unit such as Mbit/s. */
    private boolean isUnitSlash() {
        return text.charAt(at) == '/' && at + 1 < text.length() && text.charAt(at + 1) == 's' && isAlone(at + 1);
    }

    /** A mark between letters, as in "jusqu'à". */
    private boolean isElision() {
        char c = text.charAt(at);
        return (c == '\'' || c == '’') && Character.isLetter(next());
    }

    private boolean isAlone(int place) {
        return place + 1 >= text.length() || !Character.isLetter(text.charAt(place + 1));
    }

    private void closePhrase() {
        if (phrase.length() == 0) {
            return;
        }
        String said = phrase.toString();
        phrase.setLength(0);
        String folded = Spelling.fold(said);
        if (before == '0' || before == 'u') {
            if (isRangeWord(folded)) {
                joined(Figures.Join.RANGE);
                return;
            }
            if (folded.equals("x")) {
                joined(Figures.Join.PRODUCT);
                return;
            }
        }
        if (folded.isEmpty() || take(folded)) {
            return;
        }
        for (String word : folded.split(" ", -1)) {
            if (!take(word)) {
                (bracket ? remarks : words).add(word);
            }
        }
    }

    private boolean isRangeWord(String folded) {
        return Words.isRemark("to", folded) && at < text.length() && isDigit(text.charAt(at));
    }

    private boolean take(String folded) {
        if (Words.isRemark("upper", folded) || folded.equals("to")) {
            bound(Figure.Bound.UPPER);
        } else if (Words.isRemark("lower", folded)) {
            bound(Figure.Bound.LOWER);
        } else if (Words.isRemark("about", folded)) {
            bound(Figure.Bound.ABOUT);
        } else if (Words.isRemark("most", folded)) {
            label(Figure.Label.MOST);
        } else if (Words.isRemark("typical", folded)) {
            label(Figure.Label.TYPICAL);
        } else if (Words.isRemark("start", folded)) {
            label(Figure.Label.START);
        } else {
            return Words.isRemark("noise", folded);
        }
        return true;
    }

    private void bound(Figure.Bound stated) {
        if (open && stated != Figure.Bound.UPPER) {
            replaceLast(last().with(stated));
        } else {
            bound = stated;
        }
    }

    private void label(Figure.Label stated) {
        boolean alone = bracket && !figures.isEmpty() && !digitsBeforeBracketEnds();
        if (open || alone) {
            replaceLast(last().with(stated));
        } else {
            label = stated;
        }
    }

    /** Whether a number follows before the bracket closes; then a label in it belongs to that number. */
    private boolean digitsBeforeBracketEnds() {
        for (int i = at; i < text.length() && text.charAt(i) != ')'; i++) {
            if (isDigit(text.charAt(i))) {
                return true;
            }
        }
        return false;
    }

    private void sign(char c) {
        boolean after = before == '0' || before == 'u';
        switch (c) {
            case '<', '≤' -> bound = Figure.Bound.UPPER;
            case '>', '≥' -> bound = Figure.Bound.LOWER;
            case '~', '≈' -> tilde(after);
            case '-', '–', '—', '−', '…' -> dash(after);
            case '±' -> joined(Figures.Join.SPREAD);
            case '+' -> plus(after);
            case '×', '*', '@' -> joined(Figures.Join.PRODUCT);
            case '(', '[' -> parted('(');
            case ')', ']' -> parted(')');
            case '/', ';', ',', '|', '\n' -> parted(c);
            default -> before = c == '=' || c == ':' || c == '.' ? before : c;
        }
    }

    private void tilde(boolean after) {
        if (after && isDigit(nextSeen())) {
            joined(Figures.Join.RANGE);
        } else {
            bound = Figure.Bound.ABOUT;
        }
    }

    private void dash(boolean after) {
        if (after) {
            joined(Figures.Join.RANGE);
        } else if (isDigit(nextSeen()) && figures.isEmpty()) {
            negative = true;
        }
        before = '-';
    }

    private void plus(boolean after) {
        if (after && at + 2 < text.length() && text.charAt(at + 1) == '/' && text.charAt(at + 2) == '-') {
            joined(Figures.Join.SPREAD);
            at += 2;
        } else if (after && isDigit(nextSeen())) {
            joined(Figures.Join.SUM);
        }
    }

    private void joined(Figures.Join how) {
        join = how;
        open = false;
        before = 'j';
    }

    private void parted(char c) {
        bracket = c == '(' || (c != ')' && bracket);
        open = false;
        before = c;
    }

    private Figure last() {
        return figures.get(figures.size() - 1);
    }

    private void replaceLast(Figure figure) {
        figures.set(figures.size() - 1, figure);
    }

    private char next() {
        return signAt(at + 1);
    }

    private char signAt(int place) {
        return place < text.length() ? text.charAt(place) : ' ';
    }

    /** The next sign that is no blank. */
    private char nextSeen() {
        int i = at + 1;
        while (i < text.length() && isBlank(text.charAt(i))) {
            i++;
        }
        return i < text.length() ? text.charAt(i) : ' ';
    }

    /** Decimal and grouping marks between digits. */
    private boolean isInner() {
        char c = text.charAt(at);
        if (c == '.' || c == ',') {
            return isDigit(next());
        }
        boolean group = c == '\'' || c == '’' || c == '\u00a0' || c == '\u202f';
        return group
                && isDigit(next())
                && isDigit(signAt(at + 2))
                && isDigit(signAt(at + 3))
                && !isDigit(signAt(at + 4));
    }

    /** Foot and inch marks after a number. */
    private boolean isMark(char c) {
        return (c == '\'' || c == '"') && open;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isBlank(char c) {
        return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u202f' || c == '\r';
    }
}
