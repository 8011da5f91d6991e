package farwatt.catalogue;

import static farwatt.catalogue.Define.in;
import static farwatt.catalogue.Define.oneOf;
import static farwatt.catalogue.Define.rowOf;

import farwatt.plan.Table;
import java.util.List;

/** Names of edge switches: what lives off one run and feeds others. */
final class SwitchNames {
    private static final String STANDARD = "IEEE 802.3 clauses 33 and 145";
    static final Kind.Choice CLASSES = oneOf("0", "1", "2", "3", "4", "5", "6", "7", "8");

    private SwitchNames() {}

    static List<Name> all() {
        Define names = SiteNames.start(Table.SWITCHES)
                .given("zone", rowOf(Table.ZONES), "The zone it hangs in.")
                .given(
                        "mode",
                        oneOf("regulated", "direct"),
                        "regulated",
                        "Whether it makes its own port volts or passes the uplink's on.")
                .given("type", SourceNames.TYPES, "2", "Type of its ports by the standard.")
                .given("ports", in(""), "8", "How many ports feed devices.")
                .within(1, 96)
                .ruled("volts", in("V"), "the type's least: 44, 50, 50, 52 V", "Volts at its ports.", STANDARD)
                .within(5, 60)
                .ruled("port_limit", in("W"), "the type's: 15.4, 30, 60, 90 W", "Most watts a port gives.", STANDARD)
                .within(1, 120)
                .ruled("budget", in("W"), "none beyond the uplink", "Most watts all ports give together.", "")
                .within(1, 2000)
                .given("own_draw", in("W"), "5 W", "Its own watts with nothing attached.")
                .within(0, 60)
                .given("efficiency", in("%"), "92 %", "Share of the watts after its own draw that reaches the ports.")
                .within(40, 100)
                .given("uplink_class", CLASSES, "8", "Class it asks for at its uplink.")
                .given(
                        "uplink_right",
                        oneOf("class", "extended"),
                        "class",
                        "Whether it keeps to its class's device watts or, knowing its cable, uses what the port gives.")
                .given("through_drop", in("V"), "1 V", "Volts lost inside a direct switch.")
                .within(0, 5)
                .ruled("volts_floor", in("V"), "the uplink class's", "Least volts at its input.", STANDARD)
                .within(3, 57)
                .given("priority", in(""), "2", "Who is granted first where power is short; 1 before 2.")
                .within(1, 9);
        return answers(gear(SourceNames.ports(names))).names();
    }

    /** What hangs outside carries: switches and devices alike. */
    static Define gear(Define names) {
        return names.given("ingress", new Kind.Text(), "Its ingress protection, such as IP67.")
                .given("coldest_rated", in("degC"), "Coldest air its maker allows.")
                .within(-60, 20)
                .given("hottest_rated", in("degC"), "Hottest air its maker allows.")
                .within(20, 100)
                .given("price", in("¤"), "Price of one.")
                .given("note", new Kind.Text(), "Anything to remember.");
    }

    private static Define answers(Define names) {
        return names.solved("volts_in", in("V"), "Volts at its input.", "run.volts_far")
                .solved("received", in("W"), "Watts at its input.", "own_draw + sent / efficiency")
                .solved(
                        "receivable",
                        in("W"),
                        "Watts that can arrive at most over its run.",
                        "V * I - I^2 * R, I the least of port watts / V, wire limit, V / 2R, (V - floor) / R",
                        "maximum power transfer; our statement of the limits")
                .solved(
                        "available",
                        in("W"),
                        "Watts its ports can give at most.",
                        "min(budget, efficiency * (min(receivable, right) - own_draw))")
                .solved("bound_by", SourceNames.BOUND, "Which limit sets what is available.", "the smallest limit")
                .solved("sent", in("W"), "Watts that leave its ports.", "total(sent of runs on this)")
                .solved("reserve", in("W"), "Watts left; below zero when asked for too much.", "available - sent")
                .solved("reserve_share", in("%"), "Share left.", "reserve / available")
                .solved("granted", in("W"), "Watts reserved for what it feeds.", "total(reserved watts granted)")
                .solved("ports_used", in(""), "How many runs leave it.", "count(runs on this)")
                .solved(
                        "class_granted",
                        CLASSES,
                        "Class its uplink port grants.",
                        "the smaller of uplink_class and the port's top class",
                        STANDARD)
                .solved("hop", in(""), "How many edge switches lie between it and the source, itself included.", "")
                .solved(
                        "traffic",
                        in("Mb/s"),
                        "Data of everything it feeds.",
                        "total(bitrate of devices under this) * data_headroom")
                .solved("powered", new Kind.YesNo(), "Whether its uplink port grants it power.", "grants of its feeder")
                .solved("powered_why", new Kind.Text(), "Why it is dark, in words.", "grants of its feeder");
    }
}
