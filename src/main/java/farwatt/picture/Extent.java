package farwatt.picture;

/**
 * Room for a picture on a screen, in units of about a pixel. Texts keep their size, so that a picture in too little
 * room comes out larger than asked for.
 */
public record Extent(double width, double height) {}
