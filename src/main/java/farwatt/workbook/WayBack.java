package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.engine.Value;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Place;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipException;

/**
 * Takes a hand-over workbook back in: what people changed in given cells and in the cells for readings becomes one step
 * on the plan; a workbook nobody changed gives none. Whatever is left aside is named. Stateless; nothing is written.
 */
public final class WayBack {
    private WayBack() {}

    /**
     * What a hand-over was written of; empty for every other file.
     *
     * @throws IOException if the file cannot be read from the disk
     */
    public static Optional<Origin> origin(Path file) throws IOException {
        try (BookIn book = BookIn.open(file, new Cancel())) {
            return book.origin();
        } catch (ZipException | Refusal noBook) {
            return Optional.empty();
        }
    }

    /**
     * Reads what came back.
     *
     * @param base the plan as it is now, which the step is for
     * @param calc the plan, or the scenario of it that the workbook shows, worked out and looking at the workbook's
     *     corner
     * @throws Refusal with one sentence if it is no hand-over
     * @throws IOException if the file cannot be read from the disk
     */
    public static Back read(Path file, Plan base, Calculation calc, Cancel cancel) throws IOException, Refusal {
        List<SheetIn> sheets;
        try (BookIn book = BookIn.open(file, cancel)) {
            sheets = book.sheets();
        } catch (ZipException broken) {
            throw Refusal.of(WorkbookCode.DAMAGED);
        }
        Gathered gathered = new Gathered(base, calc);
        if (!read(sheets, gathered)) {
            throw Refusal.of(WorkbookCode.NO_HANDOVER);
        }
        tryRules(gathered);
        return back(gathered);
    }

    private static boolean read(List<SheetIn> sheets, Gathered gathered) {
        Calculation calc = gathered.calc;
        boolean any = false;
        for (Map.Entry<Table, String> one : Parts.SITE.entrySet()) {
            Optional<SheetIn> sheet = find(sheets, one.getValue());
            if (sheet.isPresent()) {
                Schedule schedule = new SiteTable(calc, one.getKey()).schedule(one.getValue(), "");
                new TableBack(gathered, one.getKey(), schedule, sheet.get()).read();
                any = true;
            }
        }
        Optional<SheetIn> typed = find(sheets, Titles.TYPED);
        typed.ifPresent(sheet -> new TypedBack(gathered, TypedTable.of(calc), sheet).read());
        Optional<SheetIn> test = find(sheets, Titles.TEST);
        test.ifPresent(sheet -> new TableBack(gathered, Table.RUNS, TestTable.of(calc), sheet).read());
        for (SheetIn sheet : sheets) {
            if (Titles.ALL.stream().noneMatch(title -> isNamed(sheet, title))) {
                foreign(sheet, gathered);
            }
        }
        return any || typed.isPresent() || test.isPresent();
    }

    /** Formulas on a sheet that people added. */
    private static void foreign(SheetIn sheet, Gathered gathered) {
        for (SheetIn.Line line : sheet.lines()) {
            line.cells().forEach((at, cell) -> {
                if (cell.hasFormula()) {
                    gathered.formula(sheet.name() + "!" + Places.letters(at) + line.number(), cell);
                }
            });
        }
    }

    private static Optional<SheetIn> find(List<SheetIn> sheets, String title) {
        return sheets.stream().filter(sheet -> isNamed(sheet, title)).findFirst();
    }

    private static boolean isNamed(SheetIn sheet, String title) {
        return sheet.name().equals(title)
                || (!sheet.lines().isEmpty()
                        && sheet.lines().get(0).at(0).text().strip().equals(title));
    }

    /** An expression that does not compute is left aside, and said. */
    private static void tryRules(Gathered gathered) {
        boolean any = gathered.wishes.stream().anyMatch(Gathered.Wish::rule);
        if (!any) {
            return;
        }
        Calculation tried =
                Calculation.of(Edit.apply(gathered.base, batch(gathered)).plan());
        for (Gathered.Wish wish : List.copyOf(gathered.wishes)) {
            int place = tried.plan().rows(wish.table()).place(wish.id());
            boolean shown = wish.rule() && place < tried.rows(wish.table());
            Optional<Value> value =
                    shown ? Optional.of(tried.value(wish.table(), row(tried, wish), wish.name())) : Optional.empty();
            value.flatMap(Value::fault).ifPresent(fault -> {
                gathered.wishes.remove(wish);
                String typed = wish.cell().map(Cell::text).orElse("");
                gathered.left.add(new Back.Left(wish.where(), typed, fault.text()));
            });
        }
    }

    /** Where the engine keeps a row; practice stands there in an order of its own. */
    private static int row(Calculation calc, Gathered.Wish wish) {
        int row = 0;
        while (row + 1 < calc.rows(wish.table()) && !calc.id(wish.table(), row).equals(wish.id())) {
            row++;
        }
        return row;
    }

    private static Change.Batch batch(Gathered gathered) {
        List<Change> changes = new ArrayList<>();
        Map<Table, Integer> ends = new EnumMap<>(Table.class);
        for (Gathered.Fresh fresh : gathered.fresh) {
            int end = ends.merge(fresh.table(), 1, (before, one) -> before + one);
            int place = gathered.base.rows(fresh.table()).size() + end - 1;
            changes.add(new Change.AddRow(fresh.table(), place, fresh.row()));
        }
        for (Gathered.Wish wish : gathered.wishes) {
            changes.add(new Change.SetCell(wish.table(), wish.id(), wish.name(), wish.cell()));
        }
        String label = Messages.text(WorkbookCode.STEP, gathered.wishes.size(), gathered.fresh.size());
        return new Change.Batch(label, changes);
    }

    private static Back back(Gathered gathered) {
        boolean nothing = gathered.wishes.isEmpty() && gathered.fresh.isEmpty();
        List<Back.Edited> edited = gathered.wishes.stream()
                .map(wish -> new Back.Edited(
                        wish.where(),
                        new Place(wish.table().key(), wish.id(), wish.name()),
                        wish.before(),
                        wish.cell().map(Cell::text).orElse("")))
                .toList();
        List<Place> added = gathered.fresh.stream()
                .map(fresh -> Place.row(fresh.table().key(), fresh.row().id()))
                .toList();
        return new Back(
                nothing ? Optional.empty() : Optional.of(batch(gathered)),
                edited,
                added,
                gathered.missing,
                gathered.left,
                gathered.formulas);
    }
}
