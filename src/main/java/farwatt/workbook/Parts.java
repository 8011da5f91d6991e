package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.plan.Table;
import farwatt.quantity.Units;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The tables of a hand-over in their order. */
final class Parts {
    /** Tables of the plan that have a sheet of their own, in the order of the sheets. */
    static final Map<Table, String> SITE = site();

    private Parts() {}

    private static Map<Table, String> site() {
        Map<Table, String> site = new LinkedHashMap<>();
        site.put(Table.DEVICES, Titles.DEVICES);
        site.put(Table.RUNS, Titles.RUNS);
        site.put(Table.SOURCES, Titles.SOURCES);
        site.put(Table.SWITCHES, Titles.SWITCHES);
        site.put(Table.ZONES, Titles.ZONES);
        site.put(Table.BUNDLES, Titles.BUNDLES);
        return Collections.unmodifiableMap(site);
    }

    static List<Schedule> of(Handover content, List<NodePower> power) {
        Calculation calc = content.calc();
        Units units = new Units(calc.plan().currency());
        List<Schedule> all = new ArrayList<>();
        all.add(PowerTable.of(calc, power));
        SITE.forEach((table, title) -> all.add(site(calc, table, title)));
        all.add(TypedTable.of(calc));
        all.add(FindingTable.findings(content.review(), units));
        all.add(FindingTable.cautions(content.review()));
        all.add(TakeOffTable.of(calc));
        all.add(LabelTable.of(calc));
        all.add(TestTable.of(calc));
        all.add(Judging.table(calc));
        all.add(ReasonTable.why(calc, content.review().verdict()));
        all.add(ReasonTable.names(units));
        all.addAll(SideTables.tables(content.sides()));
        all.removeIf(table -> !content.has(table.name()) || (table.lines().size() == 0 && mayGo(table.name())));
        content.studies().forEach(study -> all.add(study.schedule()));
        return all;
    }

    /** An empty sheet of one of these says nothing; formulas elsewhere look into the others. */
    private static boolean mayGo(String name) {
        return List.of(Titles.BUNDLES, Titles.ZONES, Titles.TYPED, Titles.WHY).contains(name);
    }

    private static Schedule site(Calculation calc, Table table, String title) {
        String what = switch (table) {
            case DEVICES -> "What the network is for, and what reaches it ";
            case RUNS -> "Every cable: what was planned, what flows and what is lost ";
            case SOURCES -> "What is fed from the mains, and what it gives ";
            case SWITCHES -> "What lives off one run and feeds others, and what it gives ";
            case ZONES -> "Where things are and how warm it gets there";
            default -> "Cables that lie together and warm each other";
        };
        String note = what.endsWith(" ") ? what + calc.corner().phrase() : what;
        return new SiteTable(calc, table).schedule(title, note + ". Quiet figures are defaults.");
    }
}
