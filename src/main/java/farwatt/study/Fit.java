package farwatt.study;

/**
 * How many more of one kind a node has room for.
 *
 * @param node a source or switch
 * @param kind of device, "" where the pattern has none
 * @param pattern the device that is copied with its run
 * @param more how many fit
 * @param ports how many ports are free
 * @param stoppedBy what one more runs into, a sentence
 */
public record Fit(String node, String kind, String pattern, int more, int ports, String stoppedBy) {}
