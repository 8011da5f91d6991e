package farwatt.language;

import farwatt.quantity.Decimal;
import farwatt.quantity.Dimension;
import farwatt.quantity.Reader;
import farwatt.quantity.Units;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;

/**
 * A small host: a handful of rows with columns and relations. Rows: {@code feed} feeds {@code gate} over
 * {@code trunk}, {@code gate} feeds {@code north}, {@code north} feeds {@code edge 1}; cam 1 hangs on gate, cam 2 on
 * north, lamp on edge 1; {@code load}, {@code spare cam}, {@code o'hara} and {@code größe} hang on nothing.
 */
final class Site implements Faults {
    static final Units UNITS = new Units("EUR");
    static final Set<String> NODES = Set.of("source", "switch", "node");

    /** A fault that was raised. */
    record Raised(FaultKind kind, Span span) {}

    /** A named column of some kinds of rows; a relation if it leads to a kind. */
    static final class Col implements Column, Link {
        final String name;
        final Type type;
        final String unit;
        final String leads;
        final double[] values = new double[64];

        Col(String name, Type type, String unit, String leads) {
            this.name = name;
            this.type = type;
            this.unit = unit;
            this.leads = leads;
            Arrays.fill(values, leads.isEmpty() ? 0 : -1);
        }

        @Override
        public double at(int row) {
            return values[row];
        }

        @Override
        public int follow(int row) {
            return (int) values[row];
        }

        @Override
        public double why(int row) {
            return nan(1000 + row);
        }

        Ref ref() {
            return leads.isEmpty() ? new Ref.Reads(name, this, type) : new Ref.Leads(name, this, leads);
        }

        Item item() {
            Item.What what = leads.isEmpty() ? Item.What.COLUMN : Item.What.RELATION;
            return new Item(name, what, type, unit, "About " + name + ".");
        }
    }

    final List<String> ids = new ArrayList<>();
    final List<String> kinds = new ArrayList<>();
    final Map<String, Map<String, Col>> members = new LinkedHashMap<>();
    final Map<String, Col> values = new LinkedHashMap<>();
    final Map<String, Col> plan = new LinkedHashMap<>();
    final List<String> words = new ArrayList<>();
    final List<Raised> raised = new ArrayList<>();
    private final Map<String, Integer> byId = new HashMap<>();

    /** A NaN that carries a number. */
    static double nan(int number) {
        return Double.longBitsToDouble(0x7ff8000000000000L | number);
    }

    /** The number a NaN carries. */
    static int number(double nan) {
        return (int) (Double.doubleToRawLongBits(nan) & 0xffffffffL);
    }

    @Override
    public double raise(FaultKind kind, Span span) {
        raised.add(new Raised(kind, span));
        return nan(raised.size());
    }

    Site() {
        rows("zone", "office", "quay");
        rows("source", "feed");
        rows("switch", "gate", "north", "edge 1");
        rows("run", "trunk", "run north", "run edge 1", "run cam 1", "run cam 2", "run lamp");
        rows("device", "cam 1", "cam 2", "lamp", "spare cam", "load", "o'hara", "größe");
        rows("bundle", "quay duct");
        zones();
        nodes();
        runs();
        devices();
        single(values, "dark", Type.Plain.YES_NO, "no");
        single(values, "spare", Type.of(UNITS.need("W")), "5 W");
        single(values, "limit_temp", Type.Plain.TEMPERATURE, "40 degC");
        single(values, "label", Type.Plain.TEXT, "north side");
        single(values, "favourite", new Type.RowOf("switch"), "north");
        single(values, "broken", Type.of(UNITS.need("W")), "!7");
        single(plan, "name", Type.Plain.TEXT, "Ferry landing");
        single(plan, "reserve_target", number(), "20 %");
        single(plan, "lost", Type.of(UNITS.need("W")), "12 W");
        single(plan, "slack", number(), "10 %");
    }

    static Type number() {
        return new Type.Amount(Dimension.NONE);
    }

    private void rows(String kind, String... names) {
        for (String name : names) {
            byId.put(name.toLowerCase(Locale.ROOT), ids.size());
            ids.add(name);
            kinds.add(kind);
        }
    }

    private void zones() {
        column("zone", "ambient degC", "office 22 degC", "quay 24 degC");
        column("zone", "hottest degC", "office 22 degC", "quay 38 degC");
        column("zone", "coldest degC", "office 22 degC", "quay -15 degC");
        column("zone", "sun K", "quay 10 K");
        column("zone", "setting open,tray,conduit,insulated", "office conduit", "quay open");
        column("zone", "outdoor yes/no", "quay yes");
    }

    private void nodes() {
        column("source switch node", "volts V", "feed 52 V", "gate 55 V", "north 55 V", "edge 1 48 V");
        column("source switch node", "sent W", "feed 60 W", "gate 40 W", "north 20 W", "edge 1 5 W");
        column("source switch node", "reserve_share", "feed 30 %", "gate 25 %", "north 15 %", "edge 1 !9");
        column("source switch node", "powered yes/no", "feed yes", "gate yes", "north yes");
        column("switch node", "own_draw W", "feed !5", "gate 6 W", "north 5 W", "edge 1 5 W");
        column("switch node", "efficiency %", "feed !5", "gate 94 %", "north 92 %", "edge 1 92 %");
        column("switch", "type 1,2,3,4", "gate 2", "north 3", "edge 1 2");
        column("source node", "type 1,2,3,4,passive", "feed 4", "gate 2", "north 3", "edge 1 2");
        column("switch", "mode regulated,direct", "edge 1 direct");
        relation("source switch node", "zone zone", "feed office", "gate quay", "north quay");
        relation("switch node", "run run", "gate trunk", "north run north", "edge 1 run edge 1");
        relation("switch node", "feeder node", "gate feed", "north gate", "edge 1 north");
    }

    private void runs() {
        column("run", "length m", "trunk 95 m", "run north 40 m", "run edge 1 20 m", "run cam 1 18 m", "run lamp 5 m");
        column("run", "gauge AWG", "trunk 23 AWG", "run north 24 AWG", "run edge 1 24 AWG", "run cam 1 24 AWG");
        column("run", "loss W", "trunk 5 W", "run north 2 W", "run edge 1 1 W", "run cam 1 0.5 W");
        column("run", "sent W", "trunk 50 W", "run north 20 W", "run edge 1 10 W", "run cam 1 8 W");
        column("run", "rise K", "trunk 3 K", "run north 12 K");
        column("run", "wire_temp degC", "trunk 41 degC", "run north 50 degC");
        column("run", "category 5e,6,6A", "trunk 6A", "run north 6");
        column("run", "screened yes/no", "trunk yes");
        column("run", "price_per_length EUR/m", "trunk 1.2 EUR/m");
        column("run", "conductor_ohms ohm/km", "trunk 66.8 ohm/km");
        relation("run", "from node", "trunk feed", "run north gate", "run edge 1 north", "run cam 1 gate");
        relation("run", "to node", "trunk gate", "run north north", "run edge 1 edge 1");
        relation("run", "zone zone", "trunk quay");
    }

    private void devices() {
        column("device", "draw W", "cam 1 12 W", "cam 2 6 W", "lamp 9 W", "spare cam 3 W");
        column("device", "load W", "cam 1 11 W", "cam 2 5 W", "lamp 9 W", "spare cam 3 W");
        column("device", "load_efficiency %", "cam 1 85 %", "cam 2 0 %", "lamp 100 %");
        column("device", "volts V", "cam 1 53.2 V", "cam 2 50.5 V", "lamp 46 V");
        column("device", "class", "cam 1 3", "cam 2 2", "lamp 3");
        column("device", "priority", "cam 1 1", "cam 2 3", "lamp 3");
        column("device", "powered yes/no", "cam 1 yes", "cam 2 yes");
        column("device", "kind fixed camera,dome camera,sign,lamp", "cam 1 fixed camera", "cam 2 sign", "lamp lamp");
        column("device", "note text", "cam 1 by the gate", "cam 2 by the pier");
        column("device", "bitrate b/s", "cam 1 4 Mb/s");
        relation("device", "zone zone", "cam 1 quay", "cam 2 quay", "lamp office");
        relation("device", "run run", "cam 1 run cam 1", "cam 2 run cam 2", "lamp run lamp");
        relation("device", "feeder node", "cam 1 gate", "cam 2 north", "lamp edge 1");
    }

    /** A column of kinds; the rest of the heading is the unit or the words; cells are ids with what they hold. */
    private void column(String ofKinds, String heading, String... cells) {
        String name = heading.split(" ", 2)[0];
        String unit = heading.contains(" ") ? heading.substring(name.length() + 1) : "";
        Type type = type(unit);
        Col column = new Col(name, type, UNITS.of(unit).isPresent() ? unit : "", "");
        for (String cell : cells) {
            int row = rowOf(cell);
            column.values[row] = value(cell.substring(ids.get(row).length() + 1), type);
        }
        put(ofKinds, column);
    }

    private void relation(String ofKinds, String heading, String... cells) {
        String[] parts = heading.split(" ", 2);
        Type type = new Type.RowOf(parts[1]);
        Col column = new Col(parts[0], type, "", parts[1]);
        for (String cell : cells) {
            int row = rowOf(cell);
            column.values[row] = byId.get(cell.substring(ids.get(row).length() + 1));
        }
        put(ofKinds, column);
    }

    private void put(String ofKinds, Col column) {
        for (String kind : ofKinds.split(" ", -1)) {
            members.computeIfAbsent(kind, k -> new LinkedHashMap<>()).put(column.name, column);
        }
    }

    private void single(Map<String, Col> among, String name, Type type, String is) {
        Col column = new Col(name, type, "", "");
        column.values[0] = value(is, type);
        among.put(name, column);
    }

    private int rowOf(String cell) {
        return byId.entrySet().stream()
                .filter(e -> cell.startsWith(e.getKey() + " "))
                .max((a, b) -> Integer.compare(a.getKey().length(), b.getKey().length()))
                .orElseThrow(() -> new AssertionError(cell))
                .getValue();
    }

    /** The type of a unit, of "yes/no", "text" or of words with commas between. */
    static Type type(String heading) {
        if (heading.equals("yes/no")) {
            return Type.Plain.YES_NO;
        }
        if (heading.equals("text")) {
            return Type.Plain.TEXT;
        }
        if (heading.contains(",")) {
            return new Type.Choice(List.of(heading.split(",", -1)));
        }
        return Type.of(UNITS.need(heading));
    }

    private double value(String is, Type type) {
        if (is.startsWith("!")) {
            return nan(Integer.parseInt(is.substring(1)));
        }
        if (type instanceof Type.Choice choice) {
            return choice.words().indexOf(is);
        }
        if (type instanceof Type.RowOf) {
            return byId.get(is);
        }
        if (type == Type.Plain.YES_NO) {
            return is.equals("yes") ? 1 : 0;
        }
        return type == Type.Plain.TEXT
                ? word(is)
                : Reader.read(is, UNITS, Decimal.POINT).orElseThrow().inside();
    }

    double word(String text) {
        if (!words.contains(text)) {
            words.add(text);
        }
        return words.indexOf(text);
    }

    /** The row of an id; −1 for "-". */
    int row(String id) {
        return id.equals("-") ? -1 : byId.get(id.toLowerCase(Locale.ROOT));
    }

    /** What a text in a cell of a row may refer to; with "-" it stands in no row. */
    Scope at(String id) {
        Optional<String> kind = id.equals("-") ? Optional.empty() : Optional.of(kinds.get(row(id)));
        return new SiteScope(this, kind, kind);
    }

    /** The rows of a kind that are in use. */
    RowSet set(String kind) {
        return new RowSet() {
            private final int[] all = rowsWhere(row -> true);

            private int[] rowsWhere(IntPredicate holds) {
                Set<String> idle = Set.of("spare cam", "load", "o'hara", "größe");
                return java.util.stream.IntStream.range(0, ids.size())
                        .filter(row -> kinds.get(row).equals(kind) && !idle.contains(ids.get(row)))
                        .filter(holds)
                        .toArray();
            }

            @Override
            public int[] rows() {
                return all;
            }

            @Override
            public int[] on(int node) {
                return rowsWhere(row -> up(row) == node);
            }

            @Override
            public int[] under(int node) {
                return rowsWhere(row -> {
                    int at = up(row);
                    while (at >= 0 && at != node) {
                        at = up(at);
                    }
                    return at == node;
                });
            }
        };
    }

    private int up(int row) {
        Col way = members.get(kinds.get(row)).get(kinds.get(row).equals("run") ? "from" : "feeder");
        return way == null ? -1 : way.follow(row);
    }
}
