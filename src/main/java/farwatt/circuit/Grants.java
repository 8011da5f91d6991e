package farwatt.circuit;

import java.util.Arrays;

/**
 * Who gets power: each source and switch hands out what it has available, child by child.
 *
 * <p>Fill the inputs for nodes 0..count-1 (a node before its children), call {@link #grant()}, read the outputs. The
 * order in which children ask is the caller's. One that does not fit is passed over and later ones still get their turn;
 * a node left dark darkens all below. Watts throughout. One object a thread; nothing is allocated by a call.
 */
public final class Grants {

    /** Outcome: has power. A node that is nobody's child always has. */
    public static final byte POWERED = 0;

    /** Outcome: what it needs did not fit what was left. */
    public static final byte REFUSED = 1;

    /** Outcome: the node that would feed it is dark itself. */
    public static final byte PARENT_DARK = 2;

    /** Outcome: the port is too small for any class, so it grants nothing. */
    public static final byte NO_CLASS = 3;

    /** Input: how many nodes count. */
    public int count;

    /** Input: the children of node i are {@code child[first[i]]} up to, not including, {@code child[first[i + 1]]}. */
    public final int[] first;

    /** Input: the children, node by node, in the order in which they ask. */
    public final int[] child;

    /** Input: watts reserved for a node at the port that feeds it; not a number where the port can grant nothing. */
    public final double[] need;

    /** Input: watts that a node may hand out; may be infinite. */
    public final double[] available;

    /** Output: one of the outcomes above. */
    public final byte[] outcome;

    /** Output: watts handed out by a node. */
    public final double[] granted;

    /** Output: watts that a node still has to hand out, never below zero; zero where it is dark. */
    public final double[] left;

    /**
     * Makes room.
     *
     * @param capacity the most nodes this object will hold
     */
    public Grants(int capacity) {
        first = new int[capacity + 1];
        child = new int[capacity];
        need = new double[capacity];
        available = new double[capacity];
        outcome = new byte[capacity];
        granted = new double[capacity];
        left = new double[capacity];
    }

    /** Fills the outputs from the inputs. */
    public void grant() {
        Arrays.fill(outcome, 0, count, POWERED);
        for (int node = 0; node < count; node++) {
            if (outcome[node] == POWERED) {
                handOut(node);
            } else {
                darken(node);
            }
        }
    }

    private void handOut(int node) {
        double pot = available[node];
        double given = 0;
        for (int k = first[node]; k < first[node + 1]; k++) {
            int asking = child[k];
            if (Double.isNaN(need[asking])) {
                outcome[asking] = NO_CLASS;
            } else if (Tolerance.fits(given + need[asking], pot)) {
                given += need[asking];
            } else {
                outcome[asking] = REFUSED;
            }
        }
        granted[node] = given;
        left[node] = Math.max(0, pot - given);
    }

    private void darken(int node) {
        for (int k = first[node]; k < first[node + 1]; k++) {
            outcome[child[k]] = PARENT_DARK;
        }
        granted[node] = 0;
        left[node] = 0;
    }
}
