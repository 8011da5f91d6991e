package farwatt.window.desk;

import farwatt.catalogue.PlanCells;
import farwatt.catalogue.Wording;
import farwatt.catalogue.edit.Entry;
import farwatt.engine.Terms;
import farwatt.language.Completion;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import farwatt.window.grid.Filled;
import farwatt.window.grid.Sheet;
import farwatt.window.grid.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The desk as the grid sees it. For the window's thread. */
public final class DeskSheet implements Sheet {
    private final Desk desk;
    private final Decimal decimal;
    private final Consumer<Notice> say;
    private final List<Runnable> watchers = new ArrayList<>();
    private final List<Pointed> pointing = new ArrayList<>();
    private final List<Pointed> explaining = new ArrayList<>();
    private UnitsShown units = UnitsShown.METRIC;
    private @Nullable DeskShown now;
    private @Nullable Terms terms;

    /** Told where the person is, or of which cell the derivation is wanted. */
    @FunctionalInterface
    public interface Pointed {
        void at(Table table, List<String> ids, String name);
    }

    /** @param decimal the person's decimal sign */
    public DeskSheet(Desk desk, Decimal decimal, Consumer<Notice> say) {
        this.desk = desk;
        this.decimal = decimal;
        this.say = say;
        desk.watch(this::changed);
    }

    private void changed() {
        now = null;
        List.copyOf(watchers).forEach(Runnable::run);
    }

    /** Shows lengths and temperatures in these units from now on. */
    public void show(UnitsShown shown) {
        units = shown;
        changed();
    }

    public UnitsShown units() {
        return units;
    }

    /** Tells where the person is from now on. */
    public void onPointed(Pointed pointed) {
        pointing.add(pointed);
    }

    /** Tells when a derivation is wanted. */
    public void onExplain(Pointed pointed) {
        explaining.add(pointed);
    }

    private DeskShown shown() {
        DeskShown known = now;
        if (known == null) {
            known = new DeskShown(desk, units);
            now = known;
        }
        return known;
    }

    private Terms terms() {
        Terms known = terms;
        if (known == null || !known.cover(desk.shown())) {
            known = Terms.of(desk.shown());
            terms = known;
        }
        return known;
    }

    @Override
    public Shown now() {
        return shown();
    }

    @Override
    public Decimal decimal() {
        return decimal;
    }

    @Override
    public Wording wording() {
        return Terms.of(desk.shown()).wording();
    }

    @Override
    public Filled check(Table table, String id, String name, String text) {
        Terms known = terms();
        Entry entry = new Entry(PlanCells.of(desk.shown()), known.wording(), decimal);
        Optional<Cell> cell = entry.cell(table, id, name, text);
        return new Filled(cell, cell.flatMap(c -> known.check(table, id, name, c)));
    }

    @Override
    public Completion complete(Table table, String id, String name, String text, int caret) {
        return terms().complete(table, id, name, text, caret, decimal);
    }

    @Override
    public Optional<Notice> checkColumn(Row column) {
        return terms().checkColumn(column);
    }

    @Override
    public void apply(String what, Change change) {
        try {
            desk.apply(change instanceof Change.Batch batch ? new Change.Batch(what, batch.changes()) : change);
        } catch (Refusal e) {
            say.accept(e.notice());
        }
    }

    @Override
    public void explain(Table table, String id, String name) {
        explaining.forEach(pointed -> pointed.at(table, List.of(id), name));
    }

    @Override
    public void pointed(Table table, List<String> ids, String name) {
        pointing.forEach(pointed -> pointed.at(table, ids, name));
    }

    @Override
    public void say(Notice notice) {
        say.accept(notice);
    }

    @Override
    public void watch(Runnable watcher) {
        watchers.add(watcher);
    }
}
