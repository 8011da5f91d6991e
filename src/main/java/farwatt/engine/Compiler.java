package farwatt.engine;

import farwatt.catalogue.Stage;
import farwatt.language.Checked;
import farwatt.language.Frame;
import farwatt.language.GatherPlan;
import farwatt.language.Hoist;
import farwatt.language.Language;
import farwatt.language.Parsed;
import farwatt.language.Planned;
import farwatt.language.Problem;
import farwatt.language.Ref;
import farwatt.language.Type;
import farwatt.language.Wanted;
import farwatt.quantity.Decimal;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes expressions ready: read, checked against the names of the plan, planned once for all rows that share their
 * text. Gathers over whole tables are lifted out and shared.
 */
final class Compiler {
    private final Names names;
    private final Faults faults;
    private final Frame frame;
    private final Map<String, Bound> ready = new HashMap<>();
    private final Map<String, GatherVertex> gathers = new LinkedHashMap<>();

    Compiler(Names names, Faults faults, Frame frame) {
        this.names = names;
        this.faults = faults;
        this.frame = frame;
    }

    /** Gathers lifted out so far. */
    List<GatherVertex> gathers() {
        return List.copyOf(gathers.values());
    }

    /** An expression that is ready, or the notices that say why not. */
    record Result(Optional<Bound> bound, List<Notice> notices) {}

    /**
     * Makes an expression ready.
     *
     * @param kind of the row it stands in, "" for none
     * @param latest the last stage whose names it may use
     */
    Result compile(String text, String kind, Wanted wanted, Stage latest, Place place) {
        String key = kind + "\n" + latest + "\n" + wanted + "\n" + text;
        Bound known = ready.get(key);
        if (known != null) {
            return new Result(Optional.of(known), List.of());
        }
        Parsed parsed = Language.parse(text, names.units, Decimal.POINT);
        if (!parsed.problems().isEmpty()) {
            return new Result(Optional.empty(), say(parsed.problems(), place));
        }
        PlanScope scope = new PlanScope(names, kind, kind);
        Checked checked = Language.check(parsed, scope, wanted);
        List<Notice> notices = say(checked.problems(), place);
        if (notices.isEmpty()) {
            notices = tooEarly(checked, latest, place);
        }
        if (!notices.isEmpty()) {
            return new Result(Optional.empty(), notices);
        }
        Planned planned = planned(checked, scope, this::lift, place, place.text());
        Bound bound = new Bound(text, checked, planned, CellReads.deps(planned.uses()));
        if (!(planned.formula() instanceof Waiting)) {
            ready.put(key, bound);
        }
        return new Result(Optional.of(bound), List.of());
    }

    /** @param who what the expression is called where it cannot be worked out */
    private Planned planned(Checked checked, PlanScope scope, Hoist hoist, Place place, String who) {
        Planned planned = Language.plan(checked, scope, hoist);
        return Waiting.of(checked)
                .map(ref -> Waiting.on(
                        ref,
                        checked,
                        planned,
                        faults.raise(Fault.Kind.UNREADABLE, place, EngineCode.UNTYPED, who, ref.name())))
                .orElse(planned);
    }

    /** The same for a text that is only looked at: nothing is shared and gathers stay where they are. */
    Optional<Bound> look(String text, String kind) {
        PlanScope scope = new PlanScope(names, kind, kind);
        Checked checked = Language.check(Language.parse(text, names.units, Decimal.POINT), scope, Wanted.ANY);
        if (!checked.problems().isEmpty()) {
            return Optional.empty();
        }
        Planned planned = planned(checked, scope, Hoist.NONE, Place.NONE, text);
        return Optional.of(new Bound(text, checked, planned, CellReads.deps(planned.uses())));
    }

    private static List<Notice> say(List<Problem> problems, Place place) {
        return problems.stream()
                .map(p -> new Notice(Level.FAIL, p.code().key(), place, p.text()))
                .toList();
    }

    /** What a person fills in may not look at what follows from it. */
    private List<Notice> tooEarly(Checked checked, Stage latest, Place place) {
        List<Notice> notices = new ArrayList<>();
        for (Checked.Known known : checked.known()) {
            for (Col col : columns(known.ref())) {
                if (col.name.stage().compareTo(latest) > 0) {
                    notices.add(Notice.of(
                            Level.FAIL,
                            EngineCode.USES_SOLVED,
                            place,
                            place.name(),
                            col.key(),
                            col.name.stage().word()));
                    break;
                }
            }
        }
        return notices;
    }

    private static List<Col> columns(Ref ref) {
        if (ref instanceof Ref.Reads reads) {
            return CellReads.behind(reads.column());
        }
        return ref instanceof Ref.Cell cell ? CellReads.behind(cell.column()) : List.of();
    }

    private Optional<Ref.Cell> lift(GatherPlan gather) {
        GatherVertex vertex = gathers.computeIfAbsent(gather.key(), key -> {
            Col out = Columns.single(key, names.layout);
            names.ownType(out, gather.type());
            double nothing = faults.raise(
                    Fault.Kind.ARITHMETIC,
                    Place.NONE,
                    EngineCode.NO_ROWS,
                    gather.expr().kind().word(),
                    gather.expr().rows().table().name());
            return new GatherVertex(out, gather, CellReads.gatherDeps(gather), frame, nothing, names.layout.rows());
        });
        Type type = gather.type();
        return Optional.of(new Ref.Cell(gather.key(), vertex.out(), vertex.out().base, type));
    }
}
