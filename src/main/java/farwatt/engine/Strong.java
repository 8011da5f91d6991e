package farwatt.engine;

import java.util.Arrays;

/**
 * Finds the strongly connected sets of a graph in the order in which they can be worked out: what is read comes before
 * what reads it (Tarjan 1972), without recursion.
 */
abstract class Strong {
    private final int[] number;
    private final int[] low;
    private final boolean[] open;
    private int[] stack = new int[64];
    private int depth;
    private int count;

    Strong(int nodes) {
        number = new int[nodes];
        low = new int[nodes];
        open = new boolean[nodes];
        Arrays.fill(number, -1);
    }

    /** What a node reads. */
    abstract int[] reads(int node);

    /**
     * Told of every set, in order.
     *
     * @param loops true if the members need each other, or the one member itself
     */
    abstract void found(int[] set, boolean loops);

    /** Goes over every node. */
    final void run() {
        for (int node = 0; node < number.length; node++) {
            if (number[node] < 0) {
                walk(node);
            }
        }
    }

    private void walk(int start) {
        java.util.ArrayDeque<int[][]> frames = new java.util.ArrayDeque<>();
        frames.push(enter(start));
        while (!frames.isEmpty()) {
            int[][] frame = frames.peek();
            int node = frame[0][0];
            int next = frame[0][1];
            int[] reads = frame[1];
            if (next < reads.length) {
                frame[0][1]++;
                int read = reads[next];
                if (number[read] < 0) {
                    frames.push(enter(read));
                } else if (open[read]) {
                    low[node] = Math.min(low[node], number[read]);
                }
                continue;
            }
            frames.pop();
            if (!frames.isEmpty()) {
                int above = frames.peek()[0][0];
                low[above] = Math.min(low[above], low[node]);
            }
            if (low[node] == number[node]) {
                close(node, reads);
            }
        }
    }

    private int[][] enter(int node) {
        number[node] = count;
        low[node] = count++;
        open[node] = true;
        if (depth == stack.length) {
            stack = Arrays.copyOf(stack, depth * 2);
        }
        stack[depth++] = node;
        return new int[][] {{node, 0}, reads(node)};
    }

    private void close(int node, int[] reads) {
        int from = depth;
        do {
            from--;
            open[stack[from]] = false;
        } while (stack[from] != node);
        int[] set = Arrays.copyOfRange(stack, from, depth);
        depth = from;
        boolean loops = set.length > 1;
        for (int read : reads) {
            loops |= read == node;
        }
        found(set, loops);
    }
}
