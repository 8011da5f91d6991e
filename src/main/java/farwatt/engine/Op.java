package farwatt.engine;

import java.util.List;

/** One step of a {@link Course}: something worked out again, with everything it reads up to date. */
abstract class Op {
    abstract void run();

    /** How dear it is, about in values worked out. */
    abstract int cost();

    /** Some rows of a column. */
    static Op rows(RowVertex vertex, int[] places) {
        return new Op() {
            @Override
            void run() {
                double[] values = vertex.out.v;
                for (int place : places) {
                    values[place] = vertex.value(place);
                }
            }

            @Override
            int cost() {
                return places.length;
            }
        };
    }

    /** Some blocks of a gather. */
    static Op gather(GatherVertex vertex, int[] blocks) {
        return new Op() {
            @Override
            void run() {
                vertex.again(blocks);
            }

            @Override
            int cost() {
                return blocks.length * 8;
            }
        };
    }

    /** Everything of a vertex. */
    static Op whole(Vertex vertex) {
        List<Col> outs = vertex.outs();
        return new Op() {
            @Override
            void run() {
                vertex.all();
                outs.forEach(col -> col.changed.clear());
            }

            @Override
            int cost() {
                return outs.stream().mapToInt(col -> col.v.length).sum();
            }
        };
    }
}
