package farwatt.picture;

/**
 * One line of text at its place.
 *
 * @param text what is written; already short enough for most fonts
 * @param x of its anchor
 * @param y of the line it stands on
 * @param size height of the font in units of the drawing
 * @param anchor which part stands at x
 * @param ink colour
 * @param weight how heavy
 * @param room the most width it may take; a wider font is to be set narrower
 */
public record Words(String text, double x, double y, double size, Anchor anchor, Ink ink, Weight weight, double room) {}
