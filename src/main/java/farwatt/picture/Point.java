package farwatt.picture;

/** A point of a drawing; y grows downwards. */
public record Point(double x, double y) {}
