package farwatt.catalogue;

import static farwatt.catalogue.Define.in;
import static farwatt.catalogue.Define.rowOf;

import farwatt.plan.Table;
import java.util.List;

/** Names of devices: what the plan is for. */
final class DeviceNames {
    private static final String STANDARD = "IEEE 802.3 clauses 33 and 145";

    private DeviceNames() {}

    static List<Name> all() {
        Define names = SiteNames.start(Table.DEVICES)
                .given("kind", new Kind.Text(), "What it is; choosing one suggests figures, never hidden defaults.")
                .given("zone", rowOf(Table.ZONES), "The zone it hangs in.")
                .ruled("class", SwitchNames.CLASSES, "the smallest that holds draw", "Class it asks for.", STANDARD)
                .given("load", in("W"), "Watts of the gear behind a converter.")
                .within(0, 150)
                .given("load_efficiency", in("%"), "100 %", "Share of its watts that the converter passes on.")
                .within(30, 100)
                .ruled(
                        "draw",
                        in("W"),
                        "load / load_efficiency, else the class's device watts",
                        "Most watts it takes when running.",
                        STANDARD)
                .within(0, 100)
                .ruled("draw_typical", in("W"), "draw", "Watts it usually takes.", "")
                .within(0, 100)
                .ruled("draw_start", in("W"), "draw", "Watts it takes when it starts in the cold.", "")
                .within(0, 150)
                .ruled("volts_floor", in("V"), "the class's", "Least volts at its input.", STANDARD)
                .within(3, 57)
                .given("priority", in(""), "3", "Who is granted first where power is short; 1 before 2.")
                .within(1, 9)
                .given("bitrate", in("Mb/s"), "0 Mb/s", "Data it sends or takes.")
                .within(0, 10000);
        return SwitchNames.gear(names)
                .solved("volts", in("V"), "Volts at its input.", "run.volts_far")
                .solved("amps", in("A"), "Current at its input.", "run.amps")
                .solved("watts", in("W"), "Watts it takes in the corner looked at.", "draw of the corner")
                .solved("headroom", in("V"), "Volts above its floor.", "volts - volts_floor")
                .solved(
                        "class_granted",
                        SwitchNames.CLASSES,
                        "Class its port grants.",
                        "the smaller of class and the port's top class",
                        STANDARD)
                .solved("powered", new Kind.YesNo(), "Whether its port grants it power.", "grants of its feeder")
                .solved("powered_why", new Kind.Text(), "Why it is dark, in words.", "grants of its feeder")
                .names();
    }
}
