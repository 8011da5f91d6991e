package farwatt.study;

import farwatt.engine.Knob;
import farwatt.engine.Trials;
import farwatt.report.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** A tolerance study: cells take values by chance, many times over; the same seed gives the same numbers. */
public final class Spread {
    /** Fewest runs. */
    public static final int LEAST_RUNS = 2;
    /** Most runs. */
    public static final int MOST_RUNS = 5_000_000;

    /** Runs unless said otherwise. */
    public static final int USUAL_RUNS = 10_000;

    private final Ground ground;
    private final List<Vary> over;
    private final List<String> reads;
    private final List<Heading> readings;
    private final int runs;
    private final Chance chance;

    private Spread(Ground ground, List<Vary> over, List<String> reads, int runs, long seed) throws Refusal {
        this.ground = ground;
        this.over = List.copyOf(over);
        this.reads = List.copyOf(reads);
        this.runs = runs;
        readings = ground.headings(reads);
        chance = new Chance(this.over, runs, seed);
    }

    /**
     * Makes a study ready.
     *
     * @throws Refusal if nothing is varied or read, a cell is varied twice, an expression cannot be understood or reads
     *     a word, or there are too few or too many runs
     */
    public static Spread of(Ground ground, List<Vary> over, List<String> reads, int runs, long seed) throws Refusal {
        Sweep.Checks.each(over, reads);
        if (runs < LEAST_RUNS || runs > MOST_RUNS) {
            throw Refusal.of(StudyCode.BAD_RUNS, runs, LEAST_RUNS, MOST_RUNS);
        }
        Spread spread = new Spread(ground, over, reads, runs, seed);
        for (Heading heading : spread.readings) {
            if (!heading.isNumber() && heading.type() != farwatt.language.Type.Plain.YES_NO) {
                throw Refusal.of(StudyCode.NOT_A_NUMBER, heading.name());
            }
        }
        return spread;
    }

    /** The varied cells, then what is read. */
    public List<Heading> columns() {
        List<Heading> all = new ArrayList<>();
        over.forEach(vary -> all.add(vary.heading()));
        all.addAll(readings);
        return all;
    }

    /**
     * Makes all runs, hands each one on in order, and tells how every expression came out.
     *
     * @throws java.util.concurrent.CancellationException if that was asked for
     */
    public List<Scatter> run(Effort effort, Sink sink) throws IOException {
        List<Knob> knobs = over.stream().map(Vary::knob).toList();
        double[][] values = new double[reads.size()][runs];
        new Crew(chance, over.size(), readings, () -> Trials.of(ground.plan(), ground.corner(), knobs, reads), effort)
                .run(point -> {
                    for (int r = 0; r < values.length; r++) {
                        values[r][(int) point.number()] = point.inside(over.size() + r);
                    }
                    sink.take(point);
                });
        List<Scatter> all = new ArrayList<>();
        for (int r = 0; r < values.length; r++) {
            all.add(Scatter.of(readings.get(r), values[r]));
        }
        return all;
    }
}
