package farwatt.engine;

import farwatt.report.Code;
import farwatt.report.Messages;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Faults as values: a fault travels through columns and formulas as a NaN whose payload says which one it is, so that a
 * result without a value still knows where that began. Common reasons are written into the payload itself, row and name
 * included, and cost nothing until someone asks for their words; others get a number here, the same fault always the
 * same one. One a calculation; not for several threads.
 */
final class Faults {
    private static final long QUIET = 0x7ff8_0000_0000_0000L;
    private static final long PAYLOAD = 0x0007_ffff_ffff_ffffL;
    private static final long LACKS = 1L << 50;
    private static final int LACK_AT = 44;
    private static final int NAME_AT = 24;
    private static final int NAMES = (1 << (LACK_AT - NAME_AT)) - 1;
    private static final int ROWS = (1 << NAME_AT) - 1;
    private static final Lack[] ALL = Lack.values();
    private static final int ALL_LACKS = 0x3f;

    private final Layout layout;
    private final List<Fault> known = new ArrayList<>();
    private final Map<Fault, Integer> numbers = new HashMap<>();
    private final List<String> names = new ArrayList<>();
    private final Map<String, Integer> nameNumbers = new HashMap<>();

    Faults(Layout layout) {
        this.layout = layout;
        if (layout.rows() > ROWS) {
            throw new IllegalArgumentException(layout.rows() + " rows are more than a fault can tell apart");
        }
        name("");
        // number 0 is a plain NaN: no fault of ours may look like it
        raise(new Fault(Fault.Kind.ARITHMETIC, Place.NONE, Messages.text(EngineCode.NO_NUMBER)));
    }

    /** The number of a name, for {@link #lack}. */
    int name(String name) {
        return nameNumbers.computeIfAbsent(name, n -> {
            names.add(n);
            return names.size() - 1;
        });
    }

    /** The value that stands for a common reason of a row. */
    double lack(Lack lack, int row) {
        return lack(lack, row, 0);
    }

    /**
     * The value that stands for a common reason of a row under a name.
     *
     * @param name as {@link #name} numbered it
     */
    double lack(Lack lack, int row, int name) {
        return said(lack, row, name);
    }

    /** The value itself; for one that grew beyond all numbers on the way, the value that says so. */
    static double sound(double value, int row) {
        boolean isFault = Double.isNaN(value) && !isPlain(value);
        return isFault || Double.isFinite(value) ? value : said(Lack.TOO_LARGE, row, 0);
    }

    private static double said(Lack lack, int row, int name) {
        long said = (long) lack.ordinal() << LACK_AT | (long) name << NAME_AT | row;
        return Double.longBitsToDouble(QUIET | LACKS | said);
    }

    /** True where a cell has no value because nothing stands in it, and not because of something it reads. */
    boolean isBlank(Col col, int place) {
        return same(col.v[place], lack(Lack.EMPTY, col.base + place, col.number));
    }

    /** The value that stands for this fault. */
    double raise(Fault fault) {
        Integer number = numbers.get(fault);
        if (number == null) {
            number = known.size();
            known.add(fault);
            numbers.put(fault, number);
        }
        return Double.longBitsToDouble(QUIET | number);
    }

    double raise(Fault.Kind kind, Place origin, Code code, Object... parts) {
        return raise(new Fault(kind, origin, Messages.text(code, parts)));
    }

    /** The fault that a NaN stands for. */
    Fault of(double value) {
        return of(value, known, names, layout);
    }

    /** The faults known now, for other threads. */
    Frozen frozen() {
        return new Frozen(List.copyOf(known), List.copyOf(names), layout);
    }

    /** Faults as they were known at one moment; immutable. */
    record Frozen(List<Fault> known, List<String> names, Layout layout) {
        /** The fault that a NaN of that moment stands for. */
        Fault of(double value) {
            return Faults.of(value, known, names, layout);
        }
    }

    private static Fault of(double value, List<Fault> known, List<String> names, Layout layout) {
        long payload = Double.doubleToRawLongBits(value) & PAYLOAD;
        return isLack(payload) ? words(payload, names, layout) : known.get(number(payload, known.size()));
    }

    /** The kind of the fault that a NaN stands for. */
    Fault.Kind kind(double value) {
        long payload = Double.doubleToRawLongBits(value) & PAYLOAD;
        return isLack(payload)
                ? lack(payload).kind
                : known.get(number(payload, known.size())).kind();
    }

    private static boolean isLack(long payload) {
        return (payload & LACKS) != 0;
    }

    private static Lack lack(long payload) {
        return ALL[(int) (payload >>> LACK_AT) & ALL_LACKS];
    }

    private static int number(long payload, int size) {
        return payload < size ? (int) payload : 0;
    }

    private static Fault words(long payload, List<String> names, Layout layout) {
        Lack lack = lack(payload);
        int row = (int) payload & ROWS;
        String name = names.get((int) (payload >>> NAME_AT) & NAMES);
        String id = layout.id(row);
        if (lack == Lack.EMPTY) {
            Place place = layout.place(row, name);
            return new Fault(lack.kind, place, Messages.text(lack.code, place.text()));
        }
        String called = RowKinds.called(RowKinds.of(layout.table(row)));
        Object[] parts = lack == Lack.NO_SUCH_NAME ? new Object[] {id, called, name} : new Object[] {id};
        return new Fault(lack.kind, layout.place(row), Messages.text(lack.code, parts));
    }

    /** How many faults have a number. */
    int size() {
        return known.size();
    }

    /** True for a NaN that is no fault of ours: a rule that has no value to give. */
    static boolean isPlain(double value) {
        return (Double.doubleToRawLongBits(value) & PAYLOAD) == 0;
    }

    /** True when two results are the same to the last bit, a fault being the same as itself. */
    static boolean same(double a, double b) {
        return Double.doubleToRawLongBits(a) == Double.doubleToRawLongBits(b);
    }
}
