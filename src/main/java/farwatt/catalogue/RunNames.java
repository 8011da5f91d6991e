package farwatt.catalogue;

import static farwatt.catalogue.Define.in;
import static farwatt.catalogue.Define.oneOf;
import static farwatt.catalogue.Define.rowOf;

import farwatt.plan.Table;
import java.util.List;

/** Names of runs: one cable from a node to what it feeds. */
final class RunNames {
    private RunNames() {}

    static List<Name> all() {
        return built(answers(cable(ends()))).names();
    }

    private static Define ends() {
        return SiteNames.start(Table.RUNS)
                .given("from", rowOf(Table.SOURCES, Table.SWITCHES), "The source or switch that feeds it.")
                .given("to", rowOf(Table.SWITCHES, Table.DEVICES), "The switch or device it feeds.")
                .given("port", in(""), "The port it leaves from.")
                .within(1, 96)
                .given("port_limit", in("W"), "Most watts of this port where ports differ.")
                .within(1, 120)
                .ruled("zone", rowOf(Table.ZONES), "the hotter end's", "The zone it was reckoned in.", "practice")
                .given("length", in("m"), "The whole run, cords included.")
                .within(0, 1000)
                .given("cord_length", in("m"), "0 m", "The part of it that is stranded cord.")
                .within(0, 50);
    }

    private static Define cable(Define names) {
        return names.given("gauge", new Kind.Gauge(), "24 AWG", "Gauge of the solid cable.")
                .within(20, 28)
                .given("cord_gauge", new Kind.Gauge(), "24 AWG", "Gauge of the cords.")
                .within(20, 28)
                .given("metal", oneOf("copper", "clad"), "copper", "Copper, or copper-clad aluminium.")
                .given("category", oneOf("6", "5e", "6A", "7", "7A", "8", "5"), "6", "Category of the cable.")
                .given("screened", new Kind.YesNo(), "no", "Whether the cable has a screen.")
                .given("sheath", oneOf("indoor", "outdoor", "buried"), "indoor", "What its sheath is made for.")
                .ruled("pairs", oneOf("2", "4"), "by the class granted", "Pairs that carry power.", "IEEE 802.3")
                .given("joints", in(""), "2", "Mated connections on the way.")
                .within(0, 12)
                .given(
                        "basis",
                        oneOf("wire", "limit", "datasheet", "measured", "pair"),
                        "wire",
                        "How its resistance is known: gauge and metal, the category's ceiling, a data sheet, a measured"
                                + " loop, or a reading over one pair.")
                .given("conductor_ohms", in("ohm/km"), "Ohms of one conductor by the data sheet at 20 °C.")
                .within(20, 300)
                .given("measured_loop", in("ohm"), "Loop that the whole current sees, joints included.")
                .within(0.01, 100)
                .given("pair_loop", in("ohm"), "A tester's reading over the two conductors of one pair.")
                .within(0.02, 200)
                .given("measured_at", in("degC"), "20 degC", "Temperature at which it was measured.")
                .within(-40, 80)
                .given("bundle", rowOf(Table.BUNDLES), "The bundle it lies in.")
                .ruled("cable_diameter", in("mm"), "the category's", "Outer diameter.", "typical cable")
                .within(3, 12)
                .given("heat_rated", in("degC"), "60 degC", "Hottest its conductors may get.")
                .within(40, 105)
                .given("amps_limit", in("A"), "Amps a conductor may carry, from the adopted code's table.")
                .within(0.05, 3)
                .given("leaves_building", new Kind.YesNo(), "no", "Whether it leaves the building.")
                .given("surge", new Kind.YesNo(), "no", "Whether both ends have surge protection.")
                .given("price_per_length", in("¤/m"), "Price of the cable.")
                .given("seen_volts_near", in("V"), "Volts read at its near end.")
                .within(0, 60)
                .given("seen_volts_far", in("V"), "Volts read at its far end.")
                .within(0, 60)
                .given("seen_amps", in("A"), "Amps read at the port.")
                .within(0, 4)
                .given("seen_watts", in("W"), "Watts read at the port.")
                .within(0, 120)
                .ruled("seen_temp", in("degC"), "the corner's", "Temperature of the cable when read.", "")
                .within(-40, 80)
                .given("note", new Kind.Text(), "Anything to remember.");
    }

    private static Define answers(Define names) {
        return names.solved(
                        "loop",
                        in("ohm"),
                        "Resistance that the whole current sees, there and back, at wire_temp.",
                        "2 pairs: one conductor's path; 4 pairs: half of it",
                        "ASTM B258; lay factors of practice")
                .solved("volts_near", in("V"), "Volts where it starts.", "volts of from")
                .solved("volts_far", in("V"), "Volts where it ends.", "(V + sqrt(V^2 - 4 * loop * received)) / 2")
                .solved("amps", in("A"), "The whole current.", "received / volts_far")
                .solved(
                        "amps_per_wire",
                        in("A"),
                        "Current of the conductor that carries most.",
                        "amps / 2 with 2 pairs, amps / 4 * (1 + pair_unbalance) with 4",
                        "IEEE 802.3 clause 145, check against your edition")
                .solved("sent", in("W"), "Watts that enter it.", "volts_near * amps")
                .solved("received", in("W"), "Watts that arrive.", "volts_far * amps")
                .solved("loss", in("W"), "Watts that stay in it.", "amps^2 * loop")
                .solved("drop", in("V"), "Volts that stay in it.", "volts_near - volts_far")
                .solved("drop_share", in("%"), "Share of the volts that stay in it.", "drop / volts_near")
                .solved(
                        "wire_temp",
                        in("degC"),
                        "Temperature of its conductors.",
                        "air + sun + rise",
                        "our calibration against published bundle measurements, 9 % rms")
                .solved("rise", in("K"), "What it and its bundle heat it by.", "heat a metre * thermal resistance")
                .solved(
                        "cliff_share",
                        in("%"),
                        "How much of the most that can arrive is asked for; past 100 % there is no answer.",
                        "received / (volts_near^2 / (4 * loop))",
                        "maximum power transfer")
                .solved(
                        "reach",
                        in("m"),
                        "Longest fixed part that data allows with these cords at this temperature.",
                        "fixed * (1 + growth) + cord * factor <= 102 m and fixed + cord <= 100 m",
                        "ISO/IEC 11801, TIA-568; practice, editable");
    }

    private static Define built(Define names) {
        return names.derived(
                        "seen_loop",
                        in("ohm"),
                        "Loop by the readings.",
                        "(seen_volts_near - seen_volts_far) / seen_amps",
                        "")
                .derived("seen_ratio", in(""), "Loop read over loop expected at seen_temp.", "seen_loop / expected", "")
                .derived(
                        "seen_spread",
                        in("%"),
                        "Uncertainty of that ratio.",
                        "sqrt(2 * (0.25 V)^2 / drop^2 + 0.02^2 + 0.08^2)",
                        "practice")
                .derived(
                        "seen_verdict",
                        new Kind.Text(),
                        "What the readings say.",
                        "seen_ratio against its bands",
                        "practice");
    }
}
