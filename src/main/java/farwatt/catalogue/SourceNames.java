package farwatt.catalogue;

import static farwatt.catalogue.Define.in;
import static farwatt.catalogue.Define.oneOf;
import static farwatt.catalogue.Define.rowOf;

import farwatt.plan.Table;
import java.util.List;

/** Names of sources: what is fed from the mains. */
final class SourceNames {
    static final Kind.Choice TYPES = oneOf("1", "2", "3", "4", "passive");
    private static final String STANDARD = "IEEE 802.3 clauses 33 and 145";

    private SourceNames() {}

    static List<Name> all() {
        Define names = SiteNames.start(Table.SOURCES)
                .given("zone", rowOf(Table.ZONES), "The zone it stands in.")
                .given("type", TYPES, "3", "Type of its ports by the standard.")
                .given("ports", in(""), "1", "How many ports feed devices.")
                .within(1, 96)
                .ruled("volts", in("V"), "the type's least: 44, 50, 50, 52 V", "Volts at its ports.", STANDARD)
                .within(5, 60)
                .ruled("port_limit", in("W"), "the type's: 15.4, 30, 60, 90 W", "Most watts a port gives.", STANDARD)
                .within(1, 120)
                .ruled("budget", in("W"), "port_limit * ports", "Most watts all ports give together.", "")
                .within(1, 4000);
        return ports(names)
                .given("efficiency_ac", in(""), "0.88", "Share of mains watts that reaches the ports.")
                .within(0.3, 1)
                .given("idle", in("W"), "4 W", "Its own watts with nothing attached.")
                .within(0, 300)
                .given("battery", in("Wh"), "Energy of the battery behind it.")
                .within(1, 100000)
                .given("battery_kind", oneOf("lead-acid", "lithium"), "lead-acid", "Kind of battery.")
                .given("price", in("¤"), "Price of one.")
                .given("note", new Kind.Text(), "Anything to remember.")
                .solved("sent", in("W"), "Watts that leave its ports.", "total(sent of runs on this)")
                .solved("available", in("W"), "Watts its ports can give at most.", "budget less guard and derating")
                .solved("bound_by", BOUND, "Which limit sets what is available.", "the smallest limit")
                .solved("reserve", in("W"), "Watts left; below zero when asked for too much.", "available - sent")
                .solved("reserve_share", in("%"), "Share left.", "reserve / available")
                .solved("granted", in("W"), "Watts reserved for what it feeds.", "total(reserved watts granted)")
                .solved("ports_used", in(""), "How many runs leave it.", "count(runs on this)")
                .solved("mains", in("W"), "Watts from the mains.", "(sent + idle) / efficiency_ac")
                .solved("room_heat", in("W"), "Heat it gives off where it stands.", "mains - sent")
                .solved(
                        "runtime",
                        in("min"),
                        "How long the battery carries it.",
                        "battery * rate * cold * age * inverter / mains",
                        "trade figures for capacity by rate and cold; see practice")
                .solved(
                        "traffic",
                        in("Mb/s"),
                        "Data of everything it feeds.",
                        "total(bitrate of devices under this) * data_headroom")
                .names();
    }

    static final Kind.Choice BOUND = oneOf("right", "port", "budget", "wire", "cable", "floor");

    /** What sources and switches share on the side of their ports. */
    static Define ports(Define names) {
        return names.given(
                        "grants_by",
                        oneOf("class", "declared", "measured"),
                        "class",
                        "What it reserves for a port: the class's port watts, the declared most, or what flows.")
                .given(
                        "grant_factor",
                        in(""),
                        "1",
                        "Factor on what it reserves by class; some gear counts 1.03 to 1.14.")
                .within(1, 1.5)
                .given("guard", in("%"), "0 %", "Share of the budget it never grants.")
                .within(0, 50)
                .given("derate_from", in("degC"), "Temperature from which it gives less.")
                .within(0, 90)
                .given("derate_rate", in("%/K"), "0 %/K", "Share of the budget lost a kelvin above that.")
                .within(0, 10)
                .given("link", in("Gb/s"), "1 Gb/s", "Speed of its link upstream.")
                .within(0.01, 100);
    }
}
