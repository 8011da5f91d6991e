package farwatt.standard;

import java.util.List;

/**
 * A power class of IEEE 802.3 clauses 33 and 145. Watts and volts were compared with public texts; peaks are to be
 * checked against your edition.
 *
 * @param number 0 to 8
 * @param pairs pairs that carry power
 * @param portWatts most watts at the source's port
 * @param deviceWatts most watts at the device
 * @param portVolts least volts at the port
 * @param loopOhms loop that the standard assumes between the two
 * @param floorVolts least volts at the device
 * @param peakWatts most watts at the device for up to 50 ms at 5 % duty
 */
public record PowerClass(
        int number,
        int pairs,
        double portWatts,
        double deviceWatts,
        double portVolts,
        double loopOhms,
        double floorVolts,
        double peakWatts) {
    private static final List<PowerClass> ALL = Facts.rows("power-classes").stream()
            .map(row -> new PowerClass(
                    Facts.whole(row, "class"),
                    Facts.whole(row, "pairs"),
                    Facts.number(row, "port_watts"),
                    Facts.number(row, "device_watts"),
                    Facts.number(row, "port_volts"),
                    Facts.number(row, "loop_ohms"),
                    Facts.number(row, "floor_volts"),
                    Facts.number(row, "peak_watts")))
            .toList();

    /** How far a class's port watts may lie above a port's limit and still fit: the table is rounded that much. */
    public static final double PORT_TOLERANCE = 0.1;

    /** Classes 0 to 8 in order. */
    public static List<PowerClass> all() {
        return ALL;
    }

    /** The class of a number from 0 to 8. */
    public static PowerClass of(int number) {
        return ALL.get(number);
    }

    /** The smallest class of 1 to 8 whose device watts hold a draw, within 1e-9 relative; 9 if none does. */
    public static int holding(double draw) {
        for (int number = 1; number <= 8; number++) {
            double most = ALL.get(number).deviceWatts;
            if (draw <= most + 1e-9 * most) {
                return number;
            }
        }
        return 9;
    }

    /** The largest class of 1 to 8, up to a top, whose port watts fit a port's limit; 0 if none does. */
    public static int fitting(double portLimit, int top) {
        for (int number = top; number >= 1; number--) {
            if (ALL.get(number).portWatts <= portLimit + PORT_TOLERANCE) {
                return number;
            }
        }
        return 0;
    }
}
