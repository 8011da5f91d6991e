package farwatt.circuit;

import java.util.Arrays;

/**
 * What a solve starts from: one connected set of trees and bundles as plain arrays.
 *
 * <p>Nodes 0..count-1 stand in depth-first preorder: a node before its children, the subtree of node i being the rows i
 * up to, not including, {@code end[i]}. The run that feeds node i has index i too; a node without a parent is a source
 * and has no run. The order of a node's children is the caller's; it decides nothing but the last bits of sums.
 *
 * <p>The caller fills rows 0..count-1 and may use the object again for a smaller or another network;
 * {@link #clear(int)} sets every row to a neutral start. The arrays are not checked: watts, ohms, heat and rises are at
 * least 0, efficiencies above 0, volts of sources and regulated switches above 0, temperatures above the point where
 * the resistance would vanish. Not for sharing between threads while it is being filled.
 *
 * <p>Temperatures and currents of run i, with x the kelvins above 20 °C, I the total amps:
 *
 * <pre>
 * ohms = cable·(1 + alpha·x) + cord·(1 + alphaCord·x) + fixed
 * x    = ambient − 20 + heat·I²·(1 + alpha·x) + othersRise·(1 + alphaOthers·x) + rise by the bundle's other runs
 * </pre>
 */
public final class FlatNetwork {

    /** Kind: fixed volts, fed by nothing in the network. */
    public static final byte SOURCE = 0;

    /** Kind: a switch that makes its own port volts; takes draw + sent/efficiency. */
    public static final byte REGULATED = 1;

    /** Kind: a switch that passes its input volts on, less throughDrop; takes its draw at its input. */
    public static final byte DIRECT = 2;

    /** Kind: a device that holds its watts; a leaf. */
    public static final byte LOAD = 3;

    /** How many nodes count. */
    public int count;

    /** Kind of node. */
    public final byte[] kind;

    /** Index of the node that feeds this one; -1 for a source. */
    public final int[] parent;

    /** One past the last node of this node's subtree. */
    public final int[] end;

    /** Port volts of a source or regulated switch. */
    public final double[] volts;

    /** Watts of a load, own watts of a switch. */
    public final double[] draw;

    /** Port watts over input watts (own draw apart) of a regulated switch. */
    public final double[] efficiency;

    /** Volts lost between input and ports of a direct switch. */
    public final double[] throughDrop;

    /** Volts that a switch needs at its input; bounds what its run may bring. */
    public final double[] floor;

    /** Watts that a node may hand out by itself, guard and derating taken off; infinite when there is no such limit. */
    public final double[] budget;

    /** Watts that a switch has a right to at its input; infinite when uncapped. */
    public final double[] right;

    /** Ohms of the cable part of the loop, as the total current sees them, at 20 °C. */
    public final double[] cable;

    /** Ohms of the cord part of the loop at 20 °C. */
    public final double[] cord;

    /** Ohms of the loop that do not warm: joints. */
    public final double[] fixed;

    /** Change of the cable part per kelvin, from 20 °C. */
    public final double[] alpha;

    /** Change of the cord part per kelvin, from 20 °C. */
    public final double[] alphaCord;

    /** °C around the run, sun included. */
    public final double[] ambient;

    /** Kelvins per square ampere that the run's own cable part makes at its 20 °C ohms: rth·cable·perMetre. */
    public final double[] heat;

    /** Kelvins per watt and metre of the bundle's heat, the margin included. */
    public final double[] rth;

    /** One over the metres of the cable part; 0 where there is none. */
    public final double[] perMetre;

    /** Kelvins made by cables of the bundle that are not in the network, were their copper at 20 °C. */
    public final double[] othersRise;

    /** Change of those cables' resistance per kelvin, from 20 °C. */
    public final double[] alphaOthers;

    /** Bundle of the run as an index 0..count-1, -1 for none. Runs of one bundle warm each other. */
    public final int[] bundle;

    /** The smaller of the run's and its parent node's port limit, W; infinite when there is none. */
    public final double[] portWatts;

    /** The run's wire limit turned into total current, A; infinite when there is none. */
    public final double[] wireAmps;

    /**
     * Makes room, with every row neutral.
     *
     * @param capacity the most nodes this object will hold
     */
    public FlatNetwork(int capacity) {
        kind = new byte[capacity];
        parent = new int[capacity];
        end = new int[capacity];
        volts = new double[capacity];
        draw = new double[capacity];
        efficiency = new double[capacity];
        throughDrop = new double[capacity];
        floor = new double[capacity];
        budget = new double[capacity];
        right = new double[capacity];
        cable = new double[capacity];
        cord = new double[capacity];
        fixed = new double[capacity];
        alpha = new double[capacity];
        alphaCord = new double[capacity];
        ambient = new double[capacity];
        heat = new double[capacity];
        rth = new double[capacity];
        perMetre = new double[capacity];
        othersRise = new double[capacity];
        alphaOthers = new double[capacity];
        bundle = new int[capacity];
        portWatts = new double[capacity];
        wireAmps = new double[capacity];
        clear(capacity);
    }

    /**
     * How many nodes this object can hold.
     *
     * @return the capacity given at the start
     */
    public int capacity() {
        return kind.length;
    }

    /**
     * Sets the count and makes rows 0..rows-1 neutral: sources of 0 V without a parent, runs of 0 ohm at 20 °C with
     * copper's temperature coefficient, no bundle, no limits.
     *
     * @param rows how many nodes are to be filled in
     */
    public void clear(int rows) {
        count = rows;
        Arrays.fill(kind, 0, rows, SOURCE);
        Arrays.fill(parent, 0, rows, -1);
        for (int i = 0; i < rows; i++) {
            end[i] = i + 1;
        }
        Arrays.fill(efficiency, 0, rows, 1);
        Arrays.fill(ambient, 0, rows, Wire.REFERENCE);
        Arrays.fill(bundle, 0, rows, -1);
        for (double[] none :
                new double[][] {volts, draw, throughDrop, floor, cable, cord, fixed, heat, rth, perMetre, othersRise}) {
            Arrays.fill(none, 0, rows, 0);
        }
        for (double[] copper : new double[][] {alpha, alphaCord, alphaOthers}) {
            Arrays.fill(copper, 0, rows, Conductor.COPPER_PER_KELVIN);
        }
        for (double[] limit : new double[][] {budget, right, portWatts, wireAmps}) {
            Arrays.fill(limit, 0, rows, Double.POSITIVE_INFINITY);
        }
    }
}
