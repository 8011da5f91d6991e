package farwatt.window.grid;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.OwnColumns;
import farwatt.catalogue.Stage;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A column of the grid.
 *
 * @param name what the catalogue or the person says about it
 * @param unit in which it is shown, and which a bare number takes; "" where there is none
 * @param tint which sort of column it is
 */
public record Column(Name name, String unit, Tint tint) {
    /** Sorts of columns, told apart by colour and by a mark. */
    public enum Tint {
        IDENTITY("identity"),
        GIVEN("given"),
        SOLVED("solved"),
        /** A column of the person's own, cells typed. */
        OWN_GIVEN("own, given"),
        /** A column of the person's own with an expression. */
        OWN("own, worked out");

        private final String word;

        Tint(String word) {
            this.word = word;
        }

        /** For headings and screen readers. */
        public String word() {
            return word;
        }

        /** True where a person may type. */
        public boolean isTyped() {
            return this == IDENTITY || this == GIVEN || this == OWN_GIVEN;
        }
    }

    /** A column of the catalogue in its own unit. */
    public static Column of(Name name, Units units) {
        return new Column(name, name.kind().symbol(units), name.stage() == Stage.GIVEN ? Tint.GIVEN : Tint.SOLVED);
    }

    /** A column of the person's own. */
    public static Column own(Name name, Units units) {
        return new Column(name, name.kind().symbol(units), name.stage() == Stage.GIVEN ? Tint.OWN_GIVEN : Tint.OWN);
    }

    /** The column of a table's ids or names. */
    public static Column identity(Table table) {
        Name name = new Name(
                table,
                table.idKey(),
                new Kind.Text(),
                Stage.GIVEN,
                Name.Fallback.NONE,
                Optional.empty(),
                "What the row is called.",
                "",
                "");
        return new Column(name, "", Tint.IDENTITY);
    }

    /** All columns of a table: identity, catalogue, the person's own, each in its own unit. */
    public static List<Column> all(Plan plan, Table table) {
        Units units = new Units(plan.currency());
        List<Column> all = new ArrayList<>();
        if (table != Table.PLAN) {
            all.add(identity(table));
        }
        List<Name> names = table == Table.PRACTICE ? Catalogue.cells(table) : Catalogue.of(table);
        names.forEach(name -> all.add(of(name, units)));
        OwnColumns.of(plan).of(table).values().forEach(name -> all.add(own(name, units)));
        return all;
    }

    /** The name in headings and expressions. */
    public String key() {
        return name.key();
    }
}
