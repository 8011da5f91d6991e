package farwatt.intake;

import farwatt.standard.PowerClass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Brings together what the columns of a row say about power: watts, amps, volts, class. */
final class RowPower {
    private static final BigDecimal LOW_VOLTS = BigDecimal.valueOf(30);
    private static final BigDecimal HIGH_VOLTS = BigDecimal.valueOf(60);

    /** Columns that say something about power: nothing else of a row but its quantity is looked at here. */
    static final List<Meaning> COLUMNS = List.of(
            Meaning.WATTS,
            Meaning.WATTS_TYPICAL,
            Meaning.WATTS_START,
            Meaning.LOAD,
            Meaning.EFFICIENCY,
            Meaning.CURRENT,
            Meaning.VOLTS,
            Meaning.CLASS);

    private final Listing listing;
    private final RawRow row;
    private final Draft draft;

    RowPower(Listing listing, RawRow row, Draft draft) {
        this.listing = listing;
        this.row = row;
        this.draft = draft;
    }

    /** Puts the device's power cells into the draft. */
    void read() {
        Optional<BigDecimal> volts = volts();
        ClassWord word = listing.column(Meaning.CLASS)
                .map(c -> ClassWord.read(row.cell(c.at()).text()))
                .orElse(new ClassWord(ClassWord.Sort.BLANK, 0, ""));
        Power power = merged(volts);
        boolean inWatts = power.isHeld() && power.most().isEmpty();
        if (inWatts && word.sort() == ClassWord.Sort.BLANK) {
            ClassWord instead = ClassWord.read(power.original());
            if (instead.hasRight()) {
                word = instead;
                power = Power.none(power.original());
            }
        }
        power = perDevice(power);
        draft.say(power.remarks());
        put(power);
        judge(power, word);
        checkCurrent(power);
    }

    /** The most, usual and starting watts of whichever columns the list has. */
    private Power merged(Optional<BigDecimal> volts) {
        Power watts = of(Meaning.WATTS, volts);
        Power usual = of(Meaning.WATTS_TYPICAL, volts);
        Power start = of(Meaning.WATTS_START, volts);
        Power load = of(Meaning.LOAD, volts);
        if (watts.most().isEmpty() && watts.remarks().isEmpty()) {
            Power current = of(Meaning.CURRENT, volts);
            boolean only = usual.most().isEmpty() && load.most().isEmpty();
            watts = only && (current.most().isPresent() || current.isHeld()) ? current : watts;
        }
        List<Remark> remarks = new ArrayList<>(watts.remarks());
        remarks.addAll(usual.remarks());
        remarks.addAll(start.remarks());
        remarks.addAll(load.remarks());
        load(load);
        Optional<BigDecimal> most = watts.most();
        Optional<BigDecimal> typical = usual.most().or(watts::typical);
        if (usual.most().isPresent()
                && (most.isEmpty() || most.get().compareTo(usual.most().get()) < 0)) {
            if (most.isEmpty()) {
                remarks.add(Remark.change(
                        IntakeSays.TYPICAL_ONLY, PowerReader.plain(usual.most().get()) + " W"));
            }
            most = usual.most();
        }
        String original = watts.original().isEmpty() ? usual.original() : watts.original();
        return new Power(most, typical, start.most().or(watts::start), watts.source(), original, remarks);
    }

    /** Watts headed as a total are those of all devices of the row. */
    private Power perDevice(Power power) {
        boolean whole = draft.count() > 1 && power.most().isPresent() && Asking.isRowTotal(listing);
        if (!whole) {
            return power;
        }
        BigDecimal count = BigDecimal.valueOf(draft.count());
        BigDecimal each = power.most().get().divide(count, 4, RoundingMode.HALF_UP);
        List<Remark> remarks = new ArrayList<>(power.remarks());
        remarks.add(Remark.change(IntakeSays.ROW_TOTAL, watts(power), draft.count(), PowerReader.plain(each) + " W"));
        return Power.of(each, Source.COMPUTED, power.original(), remarks);
    }

    private void load(Power load) {
        load.most().ifPresent(w -> {
            draft.device("load", PowerReader.plain(w) + " W");
            String share = listing.text(row, Meaning.EFFICIENCY);
            Figures read = FigureReader.read(share, Optional.empty());
            if (read.list().size() == 1 && !read.broken()) {
                BigDecimal typed = read.list().get(0).value();
                boolean ratio = read.list().get(0).unit().isEmpty() && typed.compareTo(BigDecimal.ONE) <= 0;
                BigDecimal percent = ratio ? typed.movePointRight(2) : typed;
                draft.device("load_efficiency", PowerReader.plain(percent) + " %");
            }
        });
    }

    private Power of(Meaning meaning, Optional<BigDecimal> volts) {
        return listing.column(meaning)
                .map(c -> PowerReader.read(row.cell(c.at()), c, volts))
                .orElse(Power.none(""));
    }

    private Optional<BigDecimal> volts() {
        return listing.column(Meaning.VOLTS).flatMap(c -> {
            Figures read = FigureReader.read(row.cell(c.at()).text(), c.decimal());
            boolean one = read.list().size() == 1 && !read.broken() && !read.negative();
            return one ? Optional.of(read.list().get(0).value()) : Optional.empty();
        });
    }

    private void put(Power power) {
        power.most().ifPresent(w -> {
            String text = PowerReader.plain(w) + " W";
            draft.device("draw", text);
            draft.understood(new Understood("draw", text, power.source(), power.original()));
            if (w.signum() == 0) {
                draft.say(Remark.flag(IntakeSays.ZERO_WATTS));
            }
            power.typical()
                    .filter(t -> t.compareTo(w) != 0)
                    .ifPresent(t -> draft.device("draw_typical", PowerReader.plain(t) + " W"));
            power.start()
                    .filter(s -> s.compareTo(w) != 0)
                    .ifPresent(s -> draft.device("draw_start", PowerReader.plain(s) + " W"));
        });
    }

    private void judge(Power power, ClassWord word) {
        switch (word.sort()) {
            case OUTSIDE -> draft.say(Remark.hold(IntakeSays.FED_OTHERWISE, typedClass(), watts(power)));
            case PASSIVE -> draft.say(Remark.flag(IntakeSays.PASSIVE_FEED));
            case UNREAD -> draft.say(Remark.flag(IntakeSays.CLASS_NOT_READ, typedClass()));
            case CLASS, TYPE, TYPE_OPEN -> right(power, word);
            case BLANK -> {}
        }
        boolean load = draft.device().has("load");
        if (power.most().isEmpty() && !load && !word.hasRight() && !power.isHeld() && listing.saysPower()) {
            draft.say(Remark.hold(IntakeSays.NO_POWER));
        }
    }

    private String watts(Power power) {
        return power.most().map(w -> PowerReader.plain(w) + " W").orElse("–");
    }

    private String typedClass() {
        return listing.text(row, Meaning.CLASS);
    }

    private void right(Power power, ClassWord word) {
        String most = Cells.watts(word.deviceWatts());
        if (word.sort() == ClassWord.Sort.TYPE_OPEN) {
            draft.say(Remark.flag(IntakeSays.TYPE_OPEN, word.shown()));
        }
        if (power.most().isPresent()) {
            if (word.sort() == ClassWord.Sort.CLASS) {
                draft.device("class", String.valueOf(word.number()));
            }
            double draw = power.most().get().doubleValue();
            if (draw > word.deviceWatts() * (1 + 1e-9)) {
                int needed = PowerClass.holding(draw);
                draft.say(Remark.flag(IntakeSays.ABOVE_RIGHT, watts(power), most, word.shown(), needed));
            }
        } else if (!power.isHeld()) {
            draft.device("class", String.valueOf(word.topClass()));
            draft.understood(new Understood("draw", most, Source.CLASS, power.original()));
            draft.say(Remark.change(IntakeSays.FROM_CLASS, most, word.shown()));
        }
    }

    /** Watts and amps of one row must give volts that a network cable can have. */
    private void checkCurrent(Power power) {
        Optional<Column> column = listing.column(Meaning.CURRENT);
        if (column.isEmpty() || power.most().isEmpty() || power.source() == Source.COMPUTED) {
            return;
        }
        RawCell cell = row.cell(column.get().at());
        Figures read =
                FigureReader.read(Spelling.tidy(cell.text()), column.get().decimal());
        if (read.list().size() != 1
                || read.broken()
                || read.list().get(0).value().signum() == 0) {
            return;
        }
        ListUnit unit =
                read.list().get(0).unit().or(column.get().heading()::unit).orElse(ListUnit.AMPERE);
        BigDecimal amps = unit.base(read.list().get(0).value());
        BigDecimal volts = power.most().get().divide(amps, 2, RoundingMode.HALF_EVEN);
        if (volts.compareTo(LOW_VOLTS) < 0 || volts.compareTo(HIGH_VOLTS) > 0) {
            draft.say(
                    Remark.flag(IntakeSays.ODD_VOLTS, watts(power), PowerReader.plain(amps), PowerReader.plain(volts)));
        }
    }
}
