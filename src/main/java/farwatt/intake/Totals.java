package farwatt.intake;

import farwatt.quantity.Decimal;
import farwatt.report.Messages;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Holds a list's totals against its rows: over all rows and since the total before, with each row's quantity and
 * without. A row without a name whose numbers are just those sums is a total too.
 */
final class Totals {
    /** Sums of one column; "far" from the list's start, "near" from the total before. */
    private static final class Sums {
        private static final int NEAR = 4;
        private final BigDecimal[] sums = new BigDecimal[2 * NEAR];

        Sums() {
            Arrays.fill(sums, BigDecimal.ZERO);
        }

        void add(BigDecimal value, int count, Look look) {
            BigDecimal times = value.multiply(BigDecimal.valueOf(count));
            boolean seen = look != Look.HIDDEN;
            for (int from = 0; from <= NEAR; from += NEAR) {
                sums[from] = seen ? sums[from].add(times) : sums[from];
                sums[from + 1] = seen ? sums[from + 1].add(value) : sums[from + 1];
                sums[from + 2] = sums[from + 2].add(times);
                sums[from + 3] = sums[from + 3].add(value);
            }
        }

        void startAgain() {
            Arrays.fill(sums, NEAR, 2 * NEAR, BigDecimal.ZERO);
        }

        /** Whether what is stated is one of the sums over the visible rows. */
        boolean hasVisible(BigDecimal stated) {
            return near(stated, sums[0])
                    || near(stated, sums[1])
                    || near(stated, sums[NEAR])
                    || near(stated, sums[NEAR + 1]);
        }

        boolean hasWithHidden(BigDecimal stated) {
            return near(stated, sums[2])
                    || near(stated, sums[3])
                    || near(stated, sums[NEAR + 2])
                    || near(stated, sums[NEAR + 3]);
        }

        BigDecimal found() {
            return sums[0];
        }

        /** The same within the digits stated. */
        private static boolean near(BigDecimal stated, BigDecimal sum) {
            BigDecimal half =
                    BigDecimal.ONE.movePointLeft(Math.max(0, stated.scale())).multiply(new BigDecimal("0.501"));
            return stated.subtract(sum).abs().compareTo(half) <= 0;
        }
    }

    private final Listing listing;
    private final List<Column> columns = new ArrayList<>();
    private final List<Sums> sums = new ArrayList<>();
    private final List<TotalsCheck> checks = new ArrayList<>();

    Totals(Listing listing) {
        this.listing = listing;
        for (Column column : listing.columns()) {
            boolean own =
                    column.meaning() == Meaning.OWN && column.heading().unit().isPresent();
            boolean measured = column.meaning().isMeasured() && column.meaning() != Meaning.EFFICIENCY;
            if (column.meaning() == Meaning.QUANTITY || measured || own) {
                columns.add(column);
                sums.add(new Sums());
            }
        }
    }

    /** The checks of all totals among the rows. */
    List<TotalsCheck> check(List<Assembler.Item> items) {
        boolean any = items.stream().anyMatch(i -> i.sorted().kind() == Sorted.Kind.TOTAL || isUnnamed(i));
        if (!any) {
            return checks;
        }
        for (Assembler.Item item : items) {
            Sorted.Kind kind = item.sorted().kind();
            if (kind == Sorted.Kind.TOTAL) {
                total(item);
            } else if (isUnnamed(item) && isSum(item)) {
                item.draft().insteadOut(Remark.out(IntakeSays.OUT_SUM));
                total(item);
            } else if (kind == Sorted.Kind.DEVICE || kind == Sorted.Kind.HIDDEN) {
                add(item);
            }
        }
        return checks;
    }

    private void add(Assembler.Item item) {
        RawRow row = item.sorted().row();
        int count = count(row);
        for (int i = 0; i < columns.size(); i++) {
            Sums column = sums.get(i);
            if (columns.get(i).meaning() == Meaning.QUANTITY) {
                column.add(BigDecimal.valueOf(count), 1, row.look());
            } else {
                number(row, columns.get(i)).ifPresent(value -> column.add(value, count, row.look()));
            }
        }
    }

    private int count(RawRow row) {
        return listing.column(Meaning.QUANTITY)
                .map(column -> QuantityReader.read(row.cell(column.at()), column))
                .map(QuantityReader::count)
                .orElse(1);
    }

    private void total(Assembler.Item item) {
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            Sums sum = sums.get(i);
            number(item.sorted().row(), column).ifPresent(stated -> checks.add(check(item, column, stated, sum)));
        }
        sums.forEach(Sums::startAgain);
    }

    private TotalsCheck check(Assembler.Item item, Column column, BigDecimal stated, Sums sum) {
        boolean agrees = sum.hasVisible(stated);
        String shown = PowerReader.plain(stated);
        String found = PowerReader.plain(agrees ? stated : sum.found());
        IntakeSays code = agrees
                ? IntakeSays.TOTAL_AGREES
                : sum.hasWithHidden(stated) ? IntakeSays.TOTAL_WITH_HIDDEN : IntakeSays.TOTAL_DIFFERS;
        String said = Messages.text(code, column.shown(), shown, found);
        if (!agrees) {
            item.draft().say(Remark.flag(code, column.shown(), shown, found));
        }
        return new TotalsCheck(item.place(), column.shown(), shown, found, agrees, said);
    }

    private boolean isUnnamed(Assembler.Item item) {
        if (item.sorted().kind() == Sorted.Kind.DEVICE) {
            for (Remark remark : item.draft().remarks()) {
                if (remark.code() == IntakeSays.NO_NAME) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Every cell of the row is one of the sums so far. */
    private boolean isSum(Assembler.Item item) {
        RawRow row = item.sorted().row();
        int matched = 0;
        for (int i = 0; i < columns.size(); i++) {
            Optional<BigDecimal> stated = number(row, columns.get(i));
            if (stated.isPresent() && stated.get().signum() > 0 && sums.get(i).hasVisible(stated.get())) {
                matched++;
            }
        }
        return matched > 0 && matched == row.full();
    }

    /** The one number of a cell, of a range its upper end, in the unit of the column. */
    private static Optional<BigDecimal> number(RawRow row, Column column) {
        RawCell cell = row.cell(column.at());
        boolean usable = cell.form() == RawCell.Form.TEXT || cell.isExact();
        if (!usable || cell.isBlank()) {
            return Optional.empty();
        }
        Optional<Decimal> habit = cell.isExact() ? Optional.of(Decimal.POINT) : column.decimal();
        Figures read = FigureReader.read(Spelling.tidy(cell.text()), habit);
        if (read.broken() || read.negative()) {
            return Optional.empty();
        }
        return read.list().stream().map(Figure::value).max(BigDecimal::compareTo);
    }
}
