package farwatt.script;

import farwatt.quantity.Show;
import farwatt.report.Cancel;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Grow;
import farwatt.study.Grown;
import farwatt.study.Limit;
import farwatt.study.Limited;
import farwatt.study.Room;
import farwatt.study.Sensitivity;
import farwatt.study.Spread;
import farwatt.study.Sweep;
import farwatt.study.Vary;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.graalvm.polyglot.Value;

/** Runs the studies that scripts ask for. A cancel ends the whole process, so none is asked for here. */
final class Studying {
    private static final String OVER = "over";
    private static final String VARY = "vary";
    private static final String READ = "read";

    private final WorkingPlan working;
    private final String kind;
    private final Value options;
    private final Effort effort;

    private Studying(WorkingPlan working, String kind, Value options, Console console) {
        this.working = working;
        this.kind = kind;
        this.options = options;
        int threads = Runtime.getRuntime().availableProcessors();
        this.effort = new Effort(threads, console::progress, new Cancel(), System::nanoTime);
    }

    /** The result as JSON: columns, points, and what the kind of study has to say besides. */
    static String study(WorkingPlan working, String kind, Value options, Console console) {
        Studying studying = new Studying(working, kind, options, console);
        try {
            return studying.run();
        } catch (Refusal e) {
            throw ScriptFailure.of(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String run() throws Refusal, IOException {
        Ground ground = Ground.of(working.plan());
        return switch (kind) {
            case "sweep" -> sweep(ground);
            case "grow" -> grow(ground);
            case "limit" -> limit(ground);
            case "spread" -> spread(ground);
            case "sensitivity" -> sensitivity(ground);
            default -> StudyJson.room(Room.of(ground, effort));
        };
    }

    private String sweep(Ground ground) throws Refusal {
        Handed.check(options, kind, List.of(OVER, READ));
        List<Vary> over = over(ground, OVER, ", ");
        List<String> paths = over.stream().map(vary -> vary.heading().name()).toList();
        return StudyJson.sweep(paths, Sweep.of(ground, over, reads()).points(effort));
    }

    private String grow(Ground ground) throws Refusal {
        Handed.check(options, kind, List.of("copy", "until", "most"));
        String id = Handed.text(Handed.needed(options, kind, "copy"), "copy");
        if (working.plan().find(id).isEmpty()) {
            throw ScriptFailure.of(
                    ScriptCode.NO_ROW, id, Near.hint(id, working.plan().ids()));
        }
        int most = (int) Handed.whole(options, "most", Grow.USUAL_MOST);
        Grown grown = Grow.until(ground, id, text("until"), most, effort);
        return StudyJson.grown(grown);
    }

    private String limit(Ground ground) throws Refusal {
        Handed.check(options, kind, List.of(VARY, "holds"));
        List<Vary> vary = over(ground, VARY, " .. ");
        if (vary.size() != 1) {
            throw ScriptFailure.of(ScriptCode.ONE_CELL, vary.size());
        }
        Limited limited = Limit.find(ground, vary.get(0), text("holds"), effort);
        return StudyJson.limited(limited);
    }

    private String spread(Ground ground) throws Refusal, IOException {
        Handed.check(options, kind, List.of(VARY, "runs", READ, "seed"));
        int runs = (int) Handed.whole(options, "runs", Spread.USUAL_RUNS);
        Spread spread = Spread.of(ground, over(ground, VARY, ", "), reads(), runs, Handed.whole(options, "seed", 1));
        return StudyJson.scatter(spread.run(effort, point -> {}));
    }

    private String sensitivity(Ground ground) throws Refusal {
        Handed.check(options, kind, List.of(READ, "step"));
        double step = Sensitivity.USUAL_STEP;
        Optional<Value> typed = Handed.member(options, "step");
        if (typed.isPresent()) {
            step = Asking.present(working, Handed.text(typed.get(), "step")).inside();
        }
        return StudyJson.effects(Sensitivity.of(ground, text(READ), step, effort));
    }

    private String text(String key) {
        return Handed.text(Handed.needed(options, kind, key), key);
    }

    private List<String> reads() {
        return Handed.list(Handed.needed(options, kind, READ)).stream()
                .map(value -> Handed.text(value, READ))
                .toList();
    }

    /** The cells that are varied; a path that names none is refused with a near name. */
    private List<Vary> over(Ground ground, String key, String between) throws Refusal {
        Value cells = Handed.needed(options, kind, key);
        List<Vary> all = new ArrayList<>();
        for (String path : Handed.keys(cells, key)) {
            Target.of(working.plan(), working.cells(), path);
            all.add(Vary.of(ground, path, values(cells.getMember(path), between)));
        }
        return all;
    }

    private static String values(Value value, String between) {
        return Handed.list(value).stream().map(Studying::words).collect(Collectors.joining(between));
    }

    private static String words(Value value) {
        if (value.isBoolean()) {
            return value.asBoolean() ? "yes" : "no";
        }
        if (value.isNumber() && value.fitsInDouble() && Double.isFinite(value.asDouble())) {
            return Show.exact(value.asDouble(), farwatt.quantity.Unit.ONE);
        }
        return Handed.text(value, "a value");
    }
}
