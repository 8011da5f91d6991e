package farwatt.study;

import farwatt.engine.Trials;

/** The points of a sweep in one loop on one thread, trials kept between. */
final class Walk {
    private final Sweep sweep;
    private final Trials trials;

    Walk(Sweep sweep) {
        this.sweep = sweep;
        trials = sweep.trials();
    }

    double sum() {
        double[] sum = {0};
        Plot plot = sweep.plot();
        plot.walk(0, (int) plot.size(), trials, offset -> {
            trials.work();
            sum[0] += trials.inside(0) + trials.inside(1) + trials.inside(2);
        });
        return sum[0];
    }
}
