package farwatt.picture;

/**
 * How much a node has in reserve: of a source or switch the share of its watts that is left, of a device the share of
 * its volts that lies above its floor.
 *
 * @param track the whole bar
 * @param filled share of it that is filled, 0 to 1
 * @param ink what it is filled with
 */
public record Bar(Box track, double filled, Ink ink) {}
