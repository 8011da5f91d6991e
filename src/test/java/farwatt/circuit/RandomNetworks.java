package farwatt.circuit;

import java.util.Random;

/** Random networks of every kind of node, from light to overloaded. */
final class RandomNetworks {

    private final Random random;
    private int bundles;

    RandomNetworks(Random random) {
        this.random = random;
    }

    /** One to three trees, coupled by bundles or not. */
    Sketch any() {
        Sketch sketch = new Sketch();
        bundles = 1 + random.nextInt(4);
        int trees = 1 + random.nextInt(3);
        double strain = Math.exp(between(-2, 1.2));
        for (int k = 0; k < trees; k++) {
            Sketch.Row root = sketch.source(between(44, 57));
            branch(sketch, root, 3, strain);
        }
        return sketch;
    }

    /** One tree of direct switches and loads. */
    Sketch direct() {
        Sketch sketch = new Sketch();
        bundles = 1;
        Sketch.Row root = sketch.source(between(44, 57));
        Sketch.Row head = run(sketch.direct(root, between(0, 4), between(0, 1)));
        directs(sketch, head, 3, Math.exp(between(-2, 1.5)));
        return sketch;
    }

    private void directs(Sketch sketch, Sketch.Row node, int depth, double strain) {
        int children = 1 + random.nextInt(3);
        for (int k = 0; k < children; k++) {
            if (depth > 0 && random.nextInt(2) == 0) {
                directs(sketch, run(sketch.direct(node, between(0, 2), between(0, 1))), depth - 1, strain);
            } else {
                run(sketch.load(node, strain * between(0, 12)));
            }
        }
    }

    private void branch(Sketch sketch, Sketch.Row node, int depth, double strain) {
        int children = 1 + random.nextInt(4);
        for (int k = 0; k < children; k++) {
            int kind = depth == 0 ? 0 : random.nextInt(4);
            if (kind <= 1) {
                run(sketch.load(node, random.nextInt(8) == 0 ? 0 : strain * between(0.5, 15)));
            } else if (kind == 2) {
                Sketch.Row made = sketch.regulated(node, between(24, 57), between(0, 6), between(0.8, 0.97));
                branch(sketch, run(made), depth - 1, strain);
            } else {
                branch(sketch, run(sketch.direct(node, between(0, 4), between(0, 1))), depth - 1, strain);
            }
        }
    }

    private Sketch.Row run(Sketch.Row row) {
        row.metres = between(5, 100);
        row.cable = row.metres * between(0.03, 0.1);
        row.cord = random.nextBoolean() ? 0 : between(0, 0.6);
        row.fixed = random.nextInt(3) * 0.06;
        row.alpha = random.nextInt(5) == 0 ? 0.004 : Conductor.COPPER_PER_KELVIN;
        row.ambient = between(-40, 60);
        row.rth = random.nextInt(4) == 0 ? 0 : between(2, 60);
        row.othersRise = random.nextInt(3) == 0 ? between(0, 15) : 0;
        row.bundle = random.nextInt(3) == 0 ? random.nextInt(bundles) : -1;
        row.budget = random.nextBoolean() ? Double.POSITIVE_INFINITY : between(10, 90);
        row.portWatts = random.nextBoolean() ? Double.POSITIVE_INFINITY : between(15, 90);
        row.floor = between(0, 45);
        return row;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
