package farwatt.catalogue;

import static farwatt.catalogue.Define.in;
import static farwatt.catalogue.Define.oneOf;

import farwatt.plan.Table;
import java.util.List;

/** Names of the plan as a whole, of values, own columns and needs. */
final class PlanNames {
    private PlanNames() {}

    static List<Name> all() {
        return new Define(Table.PLAN)
                .given("name", new Kind.Text(), "What the plan is called.")
                .given("currency", new Kind.Text(), "EUR", "Code of the money in which prices are typed.")
                .given("reserve_target", in("%"), "20 %", "The share of what a node can give that should stay unused.")
                .within(0, 90)
                .given(
                        "heat_margin",
                        in(""),
                        "1.25",
                        "Factor on the self-heating of cables: 1.25 to design, 1 to compare with a measurement,"
                                + " 0 to leave self-heating out.")
                .within(0, 3)
                .given("slack", in("%"), "10 %", "What the take-off adds to every length.")
                .within(0, 100)
                .given(
                        "corner",
                        oneOf("most", "typical", "hot", "cold", "hotstart"),
                        "most",
                        "The corner that tables show: which draws at which temperatures.")
                .solved("lost", in("W"), "Watts lost in all cables.", "total(loss of runs)")
                .solved("sent", in("W"), "Watts that all sources send.", "total(sent of sources)")
                .solved("mains", in("W"), "Watts that all sources take from the mains.", "total(mains of sources)")
                .solved(
                        "least_reserve_share",
                        in("%"),
                        "The smallest reserve share of all sources and switches.",
                        "min(least(reserve_share of sources), least(reserve_share of switches))")
                .solved(
                        "least_headroom",
                        in("V"),
                        "The smallest distance of a device's volts from its floor.",
                        "least(headroom of devices)")
                .derived("fails", in(""), "How many findings fail in the corner looked at.", "counted", "")
                .derived("warnings", in(""), "How many findings warn in the corner looked at.", "counted", "")
                .solved("cable_length", in("m"), "Metres of all runs without slack.", "total(length of runs)")
                .solved(
                        "cost",
                        in("¤"),
                        "What has a price, added up: gear, and cable with slack by its price per length.",
                        "total(price of sources) + total(price of switches) + total(price of devices)"
                                + " + total(length * (1 + plan.slack) * price_per_length of runs)")
                .names();
    }

    static List<Name> values() {
        return new Define(Table.VALUES)
                .given(
                        "is",
                        new Kind.Text(),
                        "The value: a quantity, a yes/no, a word in double quotes, or an expression.")
                .given("note", new Kind.Text(), "Anything to remember.")
                .names();
    }

    /** The cells of a practice row; the constants themselves are {@link PracticeNames}. */
    static List<Name> practice() {
        return new Define(Table.PRACTICE)
                .given("is", new Kind.Text(), "What takes the place of our value.")
                .given("why", new Kind.Text(), "The reason.")
                .given("note", new Kind.Text(), "Anything to remember.")
                .names();
    }

    static List<Name> columns() {
        return new Define(Table.COLUMNS)
                .given("table", new Kind.Text(), "The table that gets the column.")
                .given("kind", oneOf("quantity", "yes/no", "text"), "quantity", "What an input column holds.")
                .given("is", new Kind.Text(), "The expression of a derived column; an input column has none.")
                .given("unit", new Kind.Text(), "The unit in which the column is typed and shown.")
                .given("note", new Kind.Text(), "Anything to remember.")
                .names();
    }

    static List<Name> needs() {
        return new Define(Table.NEEDS)
                .given("holds", new Kind.Text(), "The condition, an expression that is yes when the need is met.")
                .given("level", oneOf("fail", "warn"), "fail", "What it means when the condition does not hold.")
                .given("note", new Kind.Text(), "Anything to remember.")
                .names();
    }
}
