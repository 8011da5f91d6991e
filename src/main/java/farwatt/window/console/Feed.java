package farwatt.window.console;

import farwatt.script.ResultPicture;
import farwatt.script.ResultTable;
import farwatt.script.ScriptListener;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Takes what a script says on the script's thread and hands it over to the window's in as few parcels as the window
 * keeps up with. What is more than a person can look at is counted and dropped.
 */
final class Feed implements ScriptListener {
    private static final int MOST_LETTERS = 200_000;
    private static final int MOST_PIECES = 60;

    /**
     * A parcel.
     *
     * @param pieces what is new, texts already joined
     * @param left how much was dropped so far
     * @param share 0..1
     * @param step what the script is at
     */
    record Parcel(List<Piece> pieces, long left, double share, String step) {}

    private final Executor home;
    private final Consumer<Parcel> sink;
    private final List<Piece> waiting = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private boolean asked;
    private int letters;
    private int shown;
    private long left;
    private double share;
    private String step = "";

    /** @param sink told on the home executor */
    Feed(Executor home, Consumer<Parcel> sink) {
        this.home = home;
        this.sink = sink;
    }

    @Override
    public synchronized void print(String line) {
        letters += line.length() + 1;
        if (letters > MOST_LETTERS) {
            left++;
        } else {
            text.append(line).append('\n');
        }
        ask();
    }

    @Override
    public void table(ResultTable table) {
        add(new Piece.Listed(table));
    }

    @Override
    public void picture(ResultPicture picture) {
        add(new Piece.Drawn(picture));
    }

    @Override
    public void save(String name, ResultTable table) {
        add(new Piece.Filed(name, table));
    }

    private synchronized void add(Piece piece) {
        if (shown == MOST_PIECES) {
            left++;
        } else {
            shown++;
            close();
            waiting.add(piece);
        }
        ask();
    }

    @Override
    public synchronized void progress(double done, String what) {
        share = done;
        step = what;
        ask();
    }

    private void close() {
        if (!text.isEmpty()) {
            waiting.add(new Piece.Said(text.substring(0, text.length() - 1)));
            text.setLength(0);
        }
    }

    private void ask() {
        if (!asked) {
            asked = true;
            home.execute(() -> sink.accept(take()));
        }
    }

    /** What was not handed over yet. */
    synchronized Parcel take() {
        asked = false;
        close();
        Parcel parcel = new Parcel(List.copyOf(waiting), left, share, step);
        waiting.clear();
        return parcel;
    }
}
