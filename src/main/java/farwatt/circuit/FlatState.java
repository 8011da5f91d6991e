package farwatt.circuit;

/**
 * What a solve answers, row by row as in {@link FlatNetwork}; run i feeds node i.
 *
 * <p>Every row 0..count-1 is written by every solve. A figure that has no meaning in a row is not a number: the run
 * figures of a source, the limits of a load, everything but the status in a tree that failed. Figures of a failure
 * stand in the row of the failed tree's source. Not for sharing between threads while a solve writes it.
 */
public final class FlatState {

    /** Status: the tree has an operating point. */
    public static final byte OK = 0;

    /** Status: some part of the tree asks for more watts than its volts and ohms can bring. */
    public static final byte NO_OPERATING_POINT = 1;

    /** Status: some wire of the tree finds no temperature below 200 °C. */
    public static final byte RUNAWAY = 2;

    /** Bound: nothing is limited in this row. */
    public static final byte NONE = 0;

    /** Bound: the watts that the switch has a right to. */
    public static final byte RIGHT = 1;

    /** Bound: the port that feeds the run, or what its node has left for it. */
    public static final byte PORT = 2;

    /** Bound: the node's own budget. */
    public static final byte BUDGET = 3;

    /** Bound: the current that the wires may carry. */
    public static final byte WIRE = 4;

    /** Bound: the most that the cable can bring (half the volts lost), or bring below 200 °C. */
    public static final byte CABLE = 5;

    /** Bound: the volts that the switch needs at its input. */
    public static final byte FLOOR = 6;

    /** Total amps of the run. */
    public final double[] amps;

    /** Volts where the run starts. */
    public final double[] voltsNear;

    /** Volts where the run ends: the input of node i. */
    public final double[] voltsFar;

    /** Loop ohms at the wire's temperature. */
    public final double[] ohms;

    /** Wire temperature, °C. */
    public final double[] temp;

    /** Kelvins of the wire above its ambient. */
    public final double[] rise;

    /** Watts lost in the run: I²·R. */
    public final double[] loss;

    /** Watts into the run: voltsNear·amps. */
    public final double[] sent;

    /** Watts out of the run: voltsFar·amps. */
    public final double[] received;

    /**
     * Watts received over the most that the run could bring at its ohms, V²/(4·R); 0 for a run without resistance, not
     * a number in a tree of direct switches, where a single run has no such limit of its own.
     */
    public final double[] cliffShare;

    /** Watts into all runs that leave the node; 0 for a load. */
    public final double[] nodeSent;

    /** Watts that the node takes at its input; not a number for a source. */
    public final double[] nodeReceived;

    /** Most amps that a switch's run may carry. */
    public final double[] mostAmps;

    /** Most watts that a switch's run may bring. */
    public final double[] receivable;

    /** Most watts that a source or switch can hand out. */
    public final double[] available;

    /** Watts still to hand out: available − nodeSent; below zero when more is asked for. */
    public final double[] reserve;

    /**
     * Which limit set available. When several would have set the same (give or take {@link Tolerance#REL}), the first
     * in the order RIGHT, PORT, BUDGET, WIRE, CABLE, FLOOR.
     */
    public final byte[] boundBy;

    /** Status of the tree that the node stands in. */
    public final byte[] status;

    /** At a failed tree's source: the run at which no answer was left; -1 where the tree is fine. */
    public final int[] culprit;

    /** At a failed tree's source: watts asked for at the end of the culprit; not a number within direct switches. */
    public final double[] asked;

    /**
     * At a failed tree's source: the most watts that the culprit can bring from its volts with its wire below 200 °C
     * (without self-heating V²/(4·R)); not a number within direct switches.
     */
    public final double[] possible;

    /**
     * Makes room.
     *
     * @param capacity the most nodes this object will hold
     */
    public FlatState(int capacity) {
        amps = new double[capacity];
        voltsNear = new double[capacity];
        voltsFar = new double[capacity];
        ohms = new double[capacity];
        temp = new double[capacity];
        rise = new double[capacity];
        loss = new double[capacity];
        sent = new double[capacity];
        received = new double[capacity];
        cliffShare = new double[capacity];
        nodeSent = new double[capacity];
        nodeReceived = new double[capacity];
        mostAmps = new double[capacity];
        receivable = new double[capacity];
        available = new double[capacity];
        reserve = new double[capacity];
        boundBy = new byte[capacity];
        status = new byte[capacity];
        culprit = new int[capacity];
        asked = new double[capacity];
        possible = new double[capacity];
    }

    /**
     * How many nodes this object can hold.
     *
     * @return the capacity given at the start
     */
    public int capacity() {
        return amps.length;
    }
}
