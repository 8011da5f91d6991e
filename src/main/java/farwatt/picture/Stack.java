package farwatt.picture;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Pictures one below the other. */
public final class Stack implements Picture {
    private final List<Picture> pictures;
    private final Palette palette;

    private Stack(List<Picture> pictures, Palette palette) {
        this.pictures = pictures;
        this.palette = palette;
    }

    /** Charts one below the other in the colours of a palette; one alone as it is. */
    public static Picture of(List<Chart> charts, Palette palette) {
        List<Picture> pictures =
                charts.stream().map(chart -> chart.picture(palette)).toList();
        return pictures.size() == 1 ? pictures.get(0) : new Stack(pictures, palette);
    }

    @Override
    public double width() {
        return pictures.stream().mapToDouble(Picture::width).max().orElse(1);
    }

    @Override
    public double height() {
        return Math.max(1, pictures.stream().mapToDouble(Picture::height).sum());
    }

    @Override
    public String title() {
        return pictures.stream().map(Picture::title).collect(Collectors.joining("; "));
    }

    @Override
    public String description() {
        return pictures.stream().map(Picture::description).collect(Collectors.joining("\n"));
    }

    @Override
    public List<Tip> tips() {
        List<Tip> all = new ArrayList<>();
        double top = 0;
        for (Picture picture : pictures) {
            for (Tip tip : picture.tips()) {
                Box box = tip.box();
                all.add(new Tip(new Box(box.x(), box.y() + top, box.width(), box.height()), tip.text()));
            }
            top += picture.height();
        }
        return all;
    }

    @Override
    public void paint(Graphics2D surface) {
        surface.setColor(new java.awt.Color(palette.rgb(Ink.PAPER)));
        surface.fill(new Rectangle2D.Double(0, 0, width(), height()));
        AffineTransform before = surface.getTransform();
        for (Picture picture : pictures) {
            picture.paint(surface);
            surface.translate(0, picture.height());
        }
        surface.setTransform(before);
    }
}
