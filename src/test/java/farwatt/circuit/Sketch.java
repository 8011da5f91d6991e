package farwatt.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** A network as a test writes it down: rows that know their parent, laid out into arrays on demand. */
final class Sketch {

    /** One node with the run that feeds it. */
    static final class Row {
        byte kind;
        Row parent;
        final List<Row> children = new ArrayList<>();
        int index;
        double volts;
        double draw;
        double efficiency = 1;
        double throughDrop;
        double floor;
        double budget = Double.POSITIVE_INFINITY;
        double right = Double.POSITIVE_INFINITY;
        double cable;
        double cord;
        double fixed;
        double alpha = Conductor.COPPER_PER_KELVIN;
        double alphaCord = Conductor.COPPER_PER_KELVIN;
        double ambient = 20;
        double rth;
        double metres = 100;
        double othersRise;
        double alphaOthers = Conductor.COPPER_PER_KELVIN;
        int bundle = -1;
        double portWatts = Double.POSITIVE_INFINITY;
        double wireAmps = Double.POSITIVE_INFINITY;

        Row cable(double ohms) {
            cable = ohms;
            return this;
        }

        Row heat(double kelvinMetresPerWatt, double length) {
            rth = kelvinMetresPerWatt;
            metres = length;
            return this;
        }

        Row around(double celsius) {
            ambient = celsius;
            return this;
        }

        Row in(int bundleIndex) {
            bundle = bundleIndex;
            return this;
        }
    }

    final List<Row> roots = new ArrayList<>();

    Row source(double volts) {
        Row row = new Row();
        row.kind = FlatNetwork.SOURCE;
        row.volts = volts;
        roots.add(row);
        return row;
    }

    Row regulated(Row parent, double volts, double own, double efficiency) {
        Row row = under(parent, FlatNetwork.REGULATED);
        row.volts = volts;
        row.draw = own;
        row.efficiency = efficiency;
        return row;
    }

    Row direct(Row parent, double own, double throughDrop) {
        Row row = under(parent, FlatNetwork.DIRECT);
        row.draw = own;
        row.throughDrop = throughDrop;
        return row;
    }

    Row load(Row parent, double watts) {
        Row row = under(parent, FlatNetwork.LOAD);
        row.draw = watts;
        return row;
    }

    private static Row under(Row parent, byte kind) {
        Row row = new Row();
        row.kind = kind;
        row.parent = parent;
        parent.children.add(row);
        return row;
    }

    /** All rows, parents first. */
    List<Row> rows() {
        List<Row> all = new ArrayList<>(roots);
        for (int k = 0; k < all.size(); k++) {
            all.addAll(all.get(k).children);
        }
        return all;
    }

    /** Puts the children of every node into another order. */
    void shuffle(Random random) {
        Collections.shuffle(roots, random);
        rows().forEach(row -> Collections.shuffle(row.children, random));
    }

    /** Lays the rows out in depth-first preorder. */
    FlatNetwork lay() {
        FlatNetwork network = new FlatNetwork(rows().size());
        lay(network);
        return network;
    }

    /** Lays the rows out in an object that may hold more. */
    void lay(FlatNetwork network) {
        network.clear(rows().size());
        Map<Integer, Integer> bundles = new HashMap<>();
        List<Row> pending = new ArrayList<>(roots);
        Collections.reverse(pending);
        int next = 0;
        while (!pending.isEmpty()) {
            Row row = pending.remove(pending.size() - 1);
            row.index = next++;
            fill(network, row);
            network.bundle[row.index] =
                    row.bundle < 0 ? -1 : bundles.computeIfAbsent(row.bundle, any -> bundles.size());
            for (int k = row.children.size() - 1; k >= 0; k--) {
                pending.add(row.children.get(k));
            }
        }
        for (int i = next - 1; i > 0; i--) {
            int parent = network.parent[i];
            if (parent >= 0) {
                network.end[parent] = Math.max(network.end[parent], network.end[i]);
            }
        }
    }

    private static void fill(FlatNetwork network, Row row) {
        int i = row.index;
        network.kind[i] = row.kind;
        network.parent[i] = row.parent == null ? -1 : row.parent.index;
        network.volts[i] = row.volts;
        network.draw[i] = row.draw;
        network.efficiency[i] = row.efficiency;
        network.throughDrop[i] = row.throughDrop;
        network.floor[i] = row.floor;
        network.budget[i] = row.budget;
        network.right[i] = row.right;
        network.cable[i] = row.cable;
        network.cord[i] = row.cord;
        network.fixed[i] = row.fixed;
        network.alpha[i] = row.alpha;
        network.alphaCord[i] = row.alphaCord;
        network.ambient[i] = row.ambient;
        network.rth[i] = row.rth;
        network.perMetre[i] = 1 / row.metres;
        network.heat[i] = row.rth * row.cable / row.metres;
        network.othersRise[i] = row.othersRise;
        network.alphaOthers[i] = row.alphaOthers;
        network.portWatts[i] = row.portWatts;
        network.wireAmps[i] = row.wireAmps;
    }

    /** Lays out and solves with a solver of its own. */
    FlatState solve() {
        FlatNetwork network = lay();
        FlatState state = new FlatState(network.count);
        new Solver().solve(network, state);
        return state;
    }
}
