package farwatt.window.console;

import farwatt.script.MoreLines;
import java.util.List;
import java.util.Optional;

/** What keys do to the text of a script: new lines, offers, what was run before. For the window's thread. */
final class Typing {
    private static final String STEP = "  ";
    /** So many letters of a word are typed before offers come by themselves. */
    private static final int ENOUGH = 2;

    /**
     * A text with the caret in it.
     *
     * @param caret the place before which the caret stands
     */
    record Put(String text, int caret) {}

    private final Completing completing;
    private final History history;
    private Completing.Offers offers = Completing.Offers.NONE;
    private int chosen = -1;

    Typing(Completing completing, History history) {
        this.completing = completing;
        this.history = history;
    }

    List<Completing.Offer> offers() {
        return offers.all();
    }

    /** Which offer is chosen; −1 for none. */
    int chosen() {
        return chosen;
    }

    boolean isOffering() {
        return !offers.all().isEmpty();
    }

    /** Looks what could follow after a letter was typed. */
    void typed(String text, int caret) {
        look(text, caret);
        boolean quoted = Tint.quotedAt(text, caret) >= 0;
        boolean whole = offers.all().size() == 1
                && offers.all().get(0).text().equals(text.substring(offers.from(), offers.to()));
        if (whole || offers.to() - offers.from() < (quoted ? 1 : ENOUGH)) {
            close();
        }
    }

    /** Looks what could follow, because a person asks. */
    void ask(String text, int caret) {
        look(text, caret);
        chosen = isOffering() ? 0 : -1;
    }

    private void look(String text, int caret) {
        offers = completing.at(text, caret);
        chosen = -1;
    }

    void close() {
        offers = Completing.Offers.NONE;
        chosen = -1;
    }

    /** Chooses the next offer, or with a negative step the one before; beyond the first none is chosen. */
    void choose(int step) {
        chosen = Math.max(-1, Math.min(offers.all().size() - 1, chosen + step));
    }

    /** Puts an offer in its place. */
    Put accept(String text, int offer) {
        Completing.Offer taken = offers.all().get(offer);
        String with = text.substring(0, offers.from()) + taken.text() + text.substring(offers.to());
        int caret = offers.from() + taken.text().length();
        close();
        return new Put(with, caret);
    }

    /** A new line at the caret, as far in as the one before and further in behind an open bracket. */
    Put newLine(String text, int caret) {
        String before = text.substring(0, caret);
        String line = before.substring(before.lastIndexOf('\n') + 1);
        int in = 0;
        while (in < line.length() && line.charAt(in) == ' ') {
            in++;
        }
        String stripped = line.stripTrailing();
        boolean opens = !stripped.isEmpty() && "([{".indexOf(stripped.charAt(stripped.length() - 1)) >= 0;
        String lead = "\n" + line.substring(0, in) + (opens ? STEP : "");
        close();
        return new Put(before + lead + text.substring(caret), caret + lead.length());
    }

    /** True where lines are whole, so that they can be run. */
    static boolean isWhole(String text) {
        return !text.isBlank() && MoreLines.isComplete(text);
    }

    /** What was run before this. */
    Optional<Put> older(String text, int caret) {
        boolean first = text.lastIndexOf('\n', caret - 1) < 0 || caret == 0;
        return first ? history.older(text).map(Typing::atEnd) : Optional.empty();
    }

    /** What was run after this. */
    Optional<Put> newer(String text, int caret) {
        boolean last = text.indexOf('\n', caret) < 0;
        return last ? history.newer().map(Typing::atEnd) : Optional.empty();
    }

    private static Put atEnd(String text) {
        return new Put(text, text.length());
    }
}
