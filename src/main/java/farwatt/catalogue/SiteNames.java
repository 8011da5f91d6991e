package farwatt.catalogue;

import static farwatt.catalogue.Define.in;
import static farwatt.catalogue.Define.oneOf;

import farwatt.plan.Table;
import java.util.List;

/** Names of zones and bundles. */
final class SiteNames {
    private SiteNames() {}

    /** What every row on the site has. */
    static Define start(Table table) {
        return new Define(table).given("in_use", new Kind.YesNo(), "yes", "No leaves the row out of everything.");
    }

    static List<Name> zones() {
        return start(Table.ZONES)
                .given("ambient", in("degC"), "20 degC", "Air temperature now.")
                .within(-50, 80)
                .ruled("hottest", in("degC"), "ambient", "Air temperature on the hottest day.", "")
                .within(-50, 80)
                .ruled("coldest", in("degC"), "ambient", "Air temperature in the coldest night.", "")
                .within(-60, 60)
                .given("sun", in("K"), "0 K", "What sunshine adds to the air temperature where cable and gear are.")
                .within(0, 40)
                .given(
                        "setting",
                        oneOf("open", "tray", "conduit", "insulated"),
                        "open",
                        "How cables lie: in the open, in a lidded tray, in closed conduit, or in thermal insulation.")
                .given("insulation", in("mm"), "100 mm", "Thickness of the insulation around an insulated bundle.")
                .within(5, 500)
                .given("outdoor", new Kind.YesNo(), "no", "Weather reaches it.")
                .given("ingress_need", new Kind.Text(), "Ingress protection that gear here must have, such as IP66.")
                .given("building", new Kind.Text(), "The building or structure it belongs to.")
                .given("note", new Kind.Text(), "Anything to remember.")
                .names();
    }

    static List<Name> bundles() {
        return start(Table.BUNDLES)
                .given("others", in(""), "0", "How many cables in the bundle are not in this plan.")
                .within(0, 500)
                .given("others_amps", in("A"), "0 A", "Current in each of their eight conductors.")
                .within(0, 1)
                .given("others_gauge", new Kind.Gauge(), "24 AWG", "Their gauge, solid copper.")
                .within(20, 28)
                .given("others_diameter", in("mm"), "6 mm", "Their outer diameter.")
                .within(3, 12)
                .given("note", new Kind.Text(), "Anything to remember.")
                .names();
    }
}
