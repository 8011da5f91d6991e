package farwatt.review;

/**
 * One corner in figures.
 *
 * @param holds true if nothing fails in it
 * @param leastReserveShare of all sources and switches, NaN where there is none
 * @param leastHeadroom volts of the device nearest its floor, NaN where there is none
 */
public record CornerVerdict(boolean holds, double leastReserveShare, double leastHeadroom) {}
