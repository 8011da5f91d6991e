package farwatt.review;

import java.util.ArrayList;
import java.util.List;

/**
 * In which waves a node can start what it feeds.
 *
 * @param all watts if everything starts together
 * @param waves in their order; one if everything can start at once
 * @param settled watts once everything runs
 * @param peak most watts at any moment if it goes by waves
 * @param never what finds too little even after all before it have settled
 */
record Waves(double all, double settled, double peak, List<List<Tree.Feed>> waves, List<Tree.Feed> never) {
    Waves {
        waves = List.copyOf(waves);
        never = List.copyOf(never);
    }

    /**
     * Fills one wave after the other in the order given.
     *
     * @param can watts the node can give
     * @param starting by run: watts at the start
     * @param settled by run: watts once it runs
     */
    static Waves of(double can, List<Tree.Feed> asking, double[] starting, double[] settled) {
        List<List<Tree.Feed>> waves = new ArrayList<>();
        List<Tree.Feed> never = new ArrayList<>();
        List<Tree.Feed> wave = new ArrayList<>();
        double all = 0;
        double end = 0;
        double peak = 0;
        double running = 0;
        double now = 0;
        for (Tree.Feed feed : asking) {
            double start = starting[feed.run()];
            all += start;
            end += settled[feed.run()];
            if (!fits(running + now + start, can) && !wave.isEmpty()) {
                for (Tree.Feed done : wave) {
                    running += settled[done.run()];
                }
                waves.add(List.copyOf(wave));
                wave.clear();
                now = 0;
            }
            if (fits(running + now + start, can)) {
                wave.add(feed);
                now += start;
                peak = Math.max(peak, running + now);
            } else {
                never.add(feed);
            }
        }
        if (!wave.isEmpty()) {
            waves.add(List.copyOf(wave));
        }
        return new Waves(all, end, peak, waves, never);
    }

    private static boolean fits(double watts, double can) {
        return !Near.over(watts, can);
    }
}
