package farwatt.window.grid;

import farwatt.catalogue.Kind;
import farwatt.language.Completion;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cell that is being typed into: its text, what is wrong with it, what could stand at the caret. Leaving it puts
 * the text into the plan, right or wrong, so that nothing typed is lost; only an id that cannot be keeps it open.
 */
final class Editing {
    /** How typing began. */
    enum From {
        /** With what stands in the cell. */
        THE_CELL,
        /** With a key that takes the place of it. */
        A_KEY
    }

    private final GridModel model;
    private final CellWork cells;
    private final List<Runnable> watchers = new ArrayList<>();
    private Optional<Spot> spot = Optional.empty();
    private String text = "";
    private int caret;
    private Optional<Notice> notice = Optional.empty();
    private List<Completion.Offer> offers = List.of();
    private Span replace = new Span(0, 0);
    private int chosen = -1;

    /** The cell by what it is, since rows may come and go meanwhile. */
    private record Spot(Table table, int place, String id, Column column, String before) {}

    Editing(GridModel model, CellWork cells) {
        this.model = model;
        this.cells = cells;
    }

    void watch(Runnable watcher) {
        watchers.add(watcher);
    }

    private void changed() {
        List.copyOf(watchers).forEach(Runnable::run);
    }

    boolean isOpen() {
        return spot.isPresent();
    }

    String text() {
        return text;
    }

    int caret() {
        return caret;
    }

    Optional<Notice> notice() {
        return notice;
    }

    List<Completion.Offer> offers() {
        return offers;
    }

    /** Which offer is chosen; −1 for none. */
    int chosen() {
        return chosen;
    }

    /** Where the cell is seen now; −1 where it is not. */
    int row() {
        return spot.filter(s ->
                        s.table() == model.table() && s.place() < model.rows().size())
                .map(s -> model.order().seen(s.place()))
                .orElse(-1);
    }

    int column() {
        return spot.map(s -> model.columnSet().indexOf(s.column().key())).orElse(-1);
    }

    /**
     * Opens the cell with the cursor; a cell that cannot be typed into says so.
     *
     * @param typed the key that began it, "" otherwise
     */
    void open(From from, String typed) {
        if (isOpen() || model.isEmpty()) {
            return;
        }
        int row = model.range().row();
        Column column = model.columns().get(model.range().column());
        if (!column.tint().isTyped()) {
            model.sheet().say(Notice.of(Level.NOTE, GridCode.NOT_TYPED, Place.NONE));
            return;
        }
        String before = model.typed(row, model.range().column());
        spot = Optional.of(new Spot(model.table(), model.place(row), model.id(row), column, before));
        text = from == From.A_KEY ? typed : before;
        caret = text.length();
        look(from == From.THE_CELL);
        changed();
    }

    /** What was typed changed. */
    void type(String now, int caretNow) {
        if (isOpen() && !(now.equals(text) && caretNow == caret)) {
            text = now;
            caret = caretNow;
            look(false);
            changed();
        }
    }

    private void look(boolean first) {
        Spot s = spot.orElseThrow();
        notice = text.isBlank() || (text.equals(s.before()) && first)
                ? model.face(Math.max(0, row()), Math.max(0, column())).notice().filter(n -> first)
                : cells.check(s.id(), s.column(), text).notice();
        boolean all = first && isList(s.column().name().kind());
        offer(all || (text.isEmpty() && isList(s.column().name().kind())));
        if (first && !all) {
            closeOffers();
        }
    }

    private static boolean isList(Kind kind) {
        return kind instanceof Kind.Choice || kind instanceof Kind.RowOf || kind instanceof Kind.YesNo;
    }

    /** Asks what may stand here; all there is in place of the whole text, or what fits at the caret. */
    private void offer(boolean whole) {
        Spot s = spot.orElseThrow();
        String id = s.column().tint() == Column.Tint.IDENTITY ? "" : s.id();
        if (s.column().tint() == Column.Tint.IDENTITY) {
            closeOffers();
            return;
        }
        String asked = whole ? "" : text;
        Completion found = model.sheet().complete(s.table(), id, s.column().key(), asked, whole ? 0 : caret);
        replace = whole ? new Span(0, text.length()) : found.replace();
        String there = text.substring(Math.min(replace.from(), text.length()), Math.min(replace.to(), text.length()));
        boolean nothing = !whole && there.isEmpty();
        boolean same =
                found.offers().size() == 1 && found.offers().get(0).text().equals(there);
        offers = nothing || same ? List.of() : found.offers();
        chosen = -1;
    }

    /** Shows all that may stand at the caret. */
    void askOffers() {
        if (isOpen()) {
            Spot s = spot.orElseThrow();
            Completion found =
                    model.sheet().complete(s.table(), s.id(), s.column().key(), text, caret);
            replace = found.replace();
            offers = found.offers();
            chosen = offers.isEmpty() ? -1 : 0;
            changed();
        }
    }

    void closeOffers() {
        offers = List.of();
        chosen = -1;
    }

    /** Chooses the next offer, or with a negative step the one before; beyond the first none is chosen. */
    void choose(int step) {
        chosen = Math.max(-1, Math.min(offers.size() - 1, chosen + step));
        changed();
    }

    /** Puts an offer in the place it was made for. */
    void accept(int offer) {
        if (offer >= 0 && offer < offers.size()) {
            String put = offers.get(offer).text();
            int from = Math.min(replace.from(), text.length());
            int to = Math.min(replace.to(), text.length());
            text = text.substring(0, from) + put + text.substring(to);
            caret = from + put.length();
            closeOffers();
            notice = spot.flatMap(s -> cells.check(s.id(), s.column(), text).notice());
            changed();
        }
    }

    /** Leaves the cell as it was. */
    void cancel() {
        close();
        changed();
    }

    private void close() {
        spot = Optional.empty();
        text = "";
        notice = Optional.empty();
        closeOffers();
    }

    /** Puts the text into the cell and leaves it. False where it has to stay open. */
    boolean commit() {
        if (spot.isEmpty()) {
            return true;
        }
        Spot s = spot.get();
        String typed = text;
        int place = model.shown().plan().rows(s.table()).size() > s.place() && idAt(s).equals(s.id())
                ? s.place()
                : model.shown().plan().rows(s.table()).place(s.id());
        if (place < 0 || s.table() != model.table()) {
            close();
            model.sheet().say(Notice.of(Level.WARN, GridCode.ROW_GONE, Place.NONE, s.id(), typed));
        } else if (!typed.equals(s.before())) {
            try {
                String what = Messages.text(GridCode.STEP_SET, s.column().key(), s.id());
                List<CellWork.Fill> fills = List.of(new CellWork.Fill(place, s.column(), typed));
                cells.fill(what, fills);
            } catch (Refusal refused) {
                notice = Optional.of(refused.notice());
                changed();
                return false;
            }
        }
        close();
        changed();
        return true;
    }

    private String idAt(Spot s) {
        return model.shown().plan().rows(s.table()).at(s.place()).id();
    }

    /** Puts the text into every chosen cell and leaves. */
    void commitToAll(BlockWork block) {
        if (isOpen()) {
            String typed = text;
            close();
            block.fill(typed);
            changed();
        }
    }
}
