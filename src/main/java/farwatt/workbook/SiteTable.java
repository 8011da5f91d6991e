package farwatt.workbook;

import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.Stage;
import farwatt.engine.Calculation;
import farwatt.engine.Fault;
import farwatt.engine.Figures;
import farwatt.engine.Value;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Unit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One table of the plan as a schedule: what was planned, then what comes of it in the corner looked at. Columns that
 * say nothing in any row are left out. Reads the calculation line by line; not for several threads.
 */
final class SiteTable {
    /** Filled or not, these belong to a schedule. */
    private static final Map<Table, Set<String>> ALWAYS = Map.of(
            Table.ZONES, Set.of("ambient", "hottest", "coldest", "sun", "setting"),
            Table.BUNDLES, Set.of("others"),
            Table.SOURCES, Set.of("type", "ports", "volts", "port_limit", "budget"),
            Table.SWITCHES, Set.of("mode", "type", "ports", "volts", "port_limit", "own_draw", "efficiency"),
            Table.RUNS, Set.of("from", "to", "length", "gauge", "category", "pairs"),
            Table.DEVICES, Set.of("zone", "class", "draw", "volts_floor"));

    private static final Set<Fault.Kind> NOT_ASKED = EnumSet.of(Fault.Kind.EMPTY, Fault.Kind.NOT_APPLICABLE);
    private static final Set<String> WHOLE =
            Set.of("ports", "port", "joints", "priority", "others", "hop", "ports_used");

    private final Calculation calc;
    private final Table table;
    private final int[] places;
    private final Set<String> typed = new HashSet<>();
    private final List<Shown> shown = new ArrayList<>();

    /** A column with what its cells need to be read fast. */
    private record Shown(Name name, Figures figures) {
        boolean isGiven() {
            return name.stage() == Stage.GIVEN;
        }
    }

    SiteTable(Calculation calc, Table table) {
        this.calc = calc;
        this.table = table;
        places = InUse.places(calc, table);
        for (Row row : calc.plan().rows(table)) {
            typed.addAll(row.names());
        }
        for (Stage stage : Stage.values()) {
            for (Name name : calc.names(table)) {
                Figures figures = calc.figures(table, name.key());
                if (name.stage() == stage && says(name, figures)) {
                    shown.add(new Shown(name, figures));
                }
            }
        }
    }

    private boolean says(Name name, Figures figures) {
        if (name.key().startsWith("seen_") || name.key().equals("in_use")) {
            return false;
        }
        if (name.stage() == Stage.GIVEN) {
            return typed.contains(name.key())
                    || ALWAYS.getOrDefault(table, Set.of()).contains(name.key());
        }
        for (int place : places) {
            double value = figures.at(place);
            if (Double.isNaN(value) ? isAsked(value) : isSomething(name, place)) {
                return true;
            }
        }
        return false;
    }

    private boolean isAsked(double value) {
        return !NOT_ASKED.contains(calc.fault(value).kind());
    }

    private boolean isSomething(Name name, int place) {
        return !(name.kind() instanceof Kind.Text)
                || !calc.value(table, place, name.key()).words().isEmpty();
    }

    Schedule schedule(String title, String what) {
        int unused = calc.rows(table) - places.length;
        String note = unused == 0 ? what : what + " Rows not in use are left out: " + unused + ".";
        List<Column> columns = new ArrayList<>();
        columns.add(Column.of("id", "id", Form.WORD));
        if (isFed()) {
            columns.add(Column.of("fed_by", "fed by", Form.WORD).in(Column.Band.PLANNED));
            columns.add(Column.of("run", "run", Form.WORD).in(Column.Band.PLANNED));
        }
        shown.forEach(one -> columns.add(column(one)));
        boolean why = misses();
        if (why) {
            columns.add(
                    Column.of("why", "why a figure is missing", Form.SENTENCE).in(Column.Band.ANSWER));
        }
        return new Schedule(title, note, columns, new Schedule.Lines() {
            @Override
            public int size() {
                return places.length;
            }

            @Override
            public List<Entry> at(int line) {
                List<Entry> entries = line(places[line]);
                if (why) {
                    entries.add(Entry.words(whyNot(places[line])));
                }
                return entries;
            }
        });
    }

    private boolean isFed() {
        return table == Table.DEVICES || table == Table.SWITCHES;
    }

    private Column column(Shown one) {
        Name name = one.name();
        Unit unit = unit(name);
        Form form = form(name, unit);
        Column.Band band = one.isGiven() ? Column.Band.PLANNED : Column.Band.ANSWER;
        Column column = Column.of(name.key(), name.key().replace('_', ' '), form)
                .in(band)
                .in(form.isNumber() ? Figure.unit(unit) : "");
        Column told = one.isGiven() ? column : column.saying(how(name));
        return isAddedUp(name) ? told.summed() : told;
    }

    private static String how(Name name) {
        String formula = name.formula().isEmpty() ? "" : "\nFormula in names: " + name.formula();
        String source = name.source().isEmpty() ? "" : "\nRests on: " + name.source();
        return name.sentence() + formula + source;
    }

    private Unit unit(Name name) {
        boolean number = name.kind() instanceof Kind.Quantity || name.kind() instanceof Kind.Gauge;
        return number && calc.rows(table) > 0 ? calc.value(table, 0, name.key()).unit() : Unit.ONE;
    }

    private static Form form(Name name, Unit unit) {
        if (name.kind() instanceof Kind.Quantity || name.kind() instanceof Kind.Gauge) {
            return WHOLE.contains(name.key()) ? Form.WHOLE : Form.of(unit);
        }
        boolean sentence = name.key().equals("note") || name.key().equals("powered_why");
        return sentence ? Form.SENTENCE : Form.WORD;
    }

    private boolean isAddedUp(Name name) {
        return switch (table) {
            case RUNS -> Set.of("length", "loss").contains(name.key());
            case SOURCES -> Set.of("sent", "mains", "room_heat").contains(name.key());
            case DEVICES -> Set.of("watts", "price").contains(name.key());
            default -> false;
        };
    }

    private List<Entry> line(int place) {
        List<Entry> entries = new ArrayList<>(shown.size() + 4);
        String id = calc.id(table, place);
        entries.add(Entry.words(id));
        if (isFed()) {
            entries.add(Entry.words(related(place, "feeder")));
            entries.add(Entry.words(related(place, "run")));
        }
        Row row = calc.plan().rows(table).at(place);
        shown.forEach(one -> entries.add(entry(one, row, place)));
        return entries;
    }

    private Entry entry(Shown one, Row row, int place) {
        String key = one.name().key();
        if (one.name().kind() instanceof Kind.RowOf) {
            return row(one.name(), row, place);
        }
        Value value = calc.value(table, place, key);
        Entry entry = Figure.of(value);
        if (!one.isGiven()) {
            return toned(key, entry, value);
        }
        String typedText = row.text(key);
        if (typedText.isEmpty()) {
            return entry.in(Tone.QUIET);
        }
        return value.isPresent() ? entry : Entry.words(typedText).in(Tone.BAD);
    }

    /** The id of the row a cell names; the zone of a run is found where none was typed. */
    private Entry row(Name name, Row row, int place) {
        String typedText = row.text(name.key());
        String found = related(place, name.key());
        if (found.isEmpty() && table == Table.RUNS && name.key().equals("zone")) {
            Optional<Plan.Spot> zone = calc.reckonedIn(place, calc.corner());
            return Entry.words(zone.map(this::id).orElse(typedText)).in(Tone.QUIET);
        }
        return found.isEmpty() ? Entry.words(typedText).in(Tone.BAD) : Entry.words(found);
    }

    private String related(int place, String relation) {
        return calc.related(table, place, relation).map(this::id).orElse("");
    }

    private String id(Plan.Spot spot) {
        return calc.id(spot.table(), spot.place());
    }

    private static Entry toned(String key, Entry entry, Value value) {
        boolean bad = switch (key) {
            case "powered" -> value.inside() == 0;
            case "headroom", "reserve", "reserve_share" -> value.inside() < 0;
            default -> false;
        };
        return value.isPresent() && bad ? entry.in(Tone.BAD) : entry;
    }

    private boolean misses() {
        for (int place : places) {
            if (!whyNot(place).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** Each reason once, in the order of the columns. */
    private String whyNot(int place) {
        Row row = calc.plan().rows(table).at(place);
        Set<String> reasons = new java.util.LinkedHashSet<>();
        for (Shown one : shown) {
            double value = one.figures().at(place);
            if (Double.isNaN(value)) {
                Fault fault = calc.fault(value);
                boolean left = one.isGiven() && row.text(one.name().key()).isEmpty();
                if (!left && fault.kind() != Fault.Kind.NOT_APPLICABLE) {
                    reasons.add(fault.text());
                }
            }
        }
        return String.join(" ", reasons);
    }
}
