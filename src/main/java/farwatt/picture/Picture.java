package farwatt.picture;

import java.awt.Graphics2D;
import java.util.List;

/** Something that can be drawn on any surface. Drawing twice gives the same picture. */
public interface Picture {
    /** Width in units of about a pixel. */
    double width();

    /** Height in units of about a pixel. */
    double height();

    /** One line that says what it shows. */
    String title();

    /** What it shows in words, for those who cannot see it. */
    String description();

    /** Places that have something to say of their own. */
    List<Tip> tips();

    /** Draws all of it, the ground included. */
    void paint(Graphics2D surface);

    /**
     * What a place of a picture says.
     *
     * @param box the place
     * @param text one line
     */
    record Tip(Box box, String text) {}
}
