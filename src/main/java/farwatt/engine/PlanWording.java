package farwatt.engine;

import farwatt.catalogue.Wording;
import farwatt.language.Language;
import farwatt.language.Ref;
import farwatt.language.Wanted;
import farwatt.plan.Plan;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.quantity.Units;
import java.util.function.Predicate;

/** What rooms below the language must know about the expressions of one plan. */
public final class PlanWording implements Wording {
    private final Model model;

    /** @param calculation of the plan as it is before anything is renamed */
    public PlanWording(Calculation calculation) {
        this(calculation.model());
    }

    PlanWording(Model model) {
        this.model = model;
    }

    /** Writes expressions canonically without knowing a plan: all that files need. */
    public static Wording canonicalFor(Plan plan) {
        Units units = new Units(plan.currency());
        return new Wording() {
            @Override
            public String canonical(String text, Decimal decimal) {
                return Language.canonical(text, Wanted.ANY, units, decimal);
            }

            @Override
            public String renamed(Table table, String text, Renaming renaming) {
                return text;
            }
        };
    }

    @Override
    public String canonical(String text, Decimal decimal) {
        return Language.canonical(text, Wanted.ANY, model.units, decimal);
    }

    @Override
    public String renamed(Table table, String text, Renaming renaming) {
        String kind = table.isSite() ? RowKinds.of(table) : "";
        PlanScope scope = new PlanScope(model.names, kind, kind);
        return Language.rename(text, scope, meant(renaming), renaming.to());
    }

    private Predicate<Ref> meant(Renaming renaming) {
        if (renaming.of().isSite()) {
            String id = Rows.fold(renaming.from());
            return ref -> ref instanceof Ref.Fixed row && Rows.fold(row.name()).equals(id);
        }
        if (renaming.of() == Table.VALUES) {
            Col values = model.columns.need(Table.VALUES, "is");
            return ref -> ref instanceof Ref.Cell cell
                    && cell.column() == values
                    && cell.name().equals(renaming.from());
        }
        return ref -> ref instanceof Ref.Reads reads
                && reads.name().equals(renaming.from())
                && CellReads.behind(reads.column()).stream()
                        .anyMatch(col -> col.name.source().equals(OwnColumns.SOURCE));
    }
}
