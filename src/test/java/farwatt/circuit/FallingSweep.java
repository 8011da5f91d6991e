package farwatt.circuit;

import java.util.Arrays;

/**
 * The slow way, for comparison: start where nothing drops and nothing is warm, then in turn take all currents from the
 * volts, all temperatures from the currents, all volts from the drops, until nothing moves. Volts only fall and
 * temperatures only rise, so it ends at the physical answer or shows that there is none.
 */
final class FallingSweep {

    final double[] volts;
    final double[] amps;
    final double[] above;
    boolean stands;

    FallingSweep(FlatNetwork in, int mostTurns) {
        volts = new double[in.count];
        amps = new double[in.count];
        above = new double[in.count];
        for (int i = 0; i < in.count; i++) {
            volts[i] = in.parent[i] < 0 ? 0 : near(in, i);
            above[i] = in.ambient[i] - 20 + in.othersRise[i];
        }
        int still = 0;
        for (int turn = 0; turn < mostTurns && still < 20; turn++) {
            double moved = 0;
            currents(in);
            temperatures(in);
            for (int i = 0; i < in.count; i++) {
                if (in.parent[i] >= 0) {
                    double next = near(in, i) - amps[i] * ohms(in, i);
                    if (!(next > 0) || above[i] >= 180) {
                        return;
                    }
                    moved = Math.max(moved, Math.abs(next - volts[i]) / next);
                    volts[i] = next;
                }
            }
            still = moved <= 1e-15 ? still + 1 : 0;
        }
        stands = still >= 20;
        if (!stands) {
            throw new IllegalStateException("the sweep did not end");
        }
    }

    private double near(FlatNetwork in, int i) {
        int parent = in.parent[i];
        return in.kind[parent] == FlatNetwork.DIRECT ? volts[parent] - in.throughDrop[parent] : in.volts[parent];
    }

    double ohms(FlatNetwork in, int i) {
        return in.cable[i] * (1 + in.alpha[i] * above[i]) + in.cord[i] * (1 + in.alphaCord[i] * above[i]) + in.fixed[i];
    }

    private void currents(FlatNetwork in) {
        double[] below = new double[in.count];
        for (int i = in.count - 1; i >= 0; i--) {
            if (in.parent[i] < 0) {
                continue;
            }
            amps[i] = switch (in.kind[i]) {
                case FlatNetwork.REGULATED -> (in.draw[i] + below[i] * in.volts[i] / in.efficiency[i]) / volts[i];
                case FlatNetwork.DIRECT -> in.draw[i] / volts[i] + below[i];
                default -> in.draw[i] / volts[i];
            };
            below[in.parent[i]] += amps[i];
        }
    }

    private void temperatures(FlatNetwork in) {
        double[] bundles = new double[in.count];
        double[] own = new double[in.count];
        for (int i = 0; i < in.count; i++) {
            own[i] = amps[i] * amps[i] * in.cable[i] * (1 + in.alpha[i] * above[i]) * in.perMetre[i];
            if (in.bundle[i] >= 0) {
                bundles[in.bundle[i]] += own[i];
            }
        }
        double[] next = new double[in.count];
        for (int i = 0; i < in.count; i++) {
            double heat = in.bundle[i] >= 0 ? bundles[in.bundle[i]] : own[i];
            next[i] = in.ambient[i] - 20 + in.rth[i] * heat + in.othersRise[i] * (1 + in.alphaOthers[i] * above[i]);
        }
        System.arraycopy(next, 0, above, 0, next.length);
    }

    @Override
    public String toString() {
        return Arrays.toString(volts);
    }
}
