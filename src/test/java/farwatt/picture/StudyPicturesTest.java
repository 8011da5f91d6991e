package farwatt.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StudyPicturesTest {
    private static final Units UNITS = new Units("EUR");
    private static final Measure SHARE = new Measure("gate.reserve_share", UNITS.need("%"));
    private static final Measure LENGTH = new Measure("trunk.length", UNITS.need("m"));
    private static final Caption CAPTION = new Caption("Reserve of the gate", "Ferry landing · 2026-03-01");

    private static HeatMap heat(int columns, int rows, HeatMap.Cells cells) {
        return new HeatMap(
                CAPTION,
                new Scale(
                        "quay.ambient",
                        IntStream.range(0, columns).mapToObj(i -> i + " °C").toList()),
                new Scale(
                        "trunk.gauge",
                        IntStream.range(0, rows).mapToObj(i -> i + " AWG").toList()),
                cells,
                SHARE,
                OptionalDouble.of(0.2));
    }

    private static Curve curve(Curve.Form form, Point... points) {
        return new Curve(
                CAPTION,
                LENGTH,
                SHARE,
                List.of(points),
                form,
                List.of(
                        new Guide(Guide.Way.LEVEL, 0.2, "target 20 %"),
                        new Guide(Guide.Way.UPRIGHT, 95, "holds up to 95 m"),
                        new Guide(Guide.Way.UPRIGHT, Double.NaN, "nowhere")));
    }

    private static String svg(Picture picture) throws Exception {
        return new String(PictureFile.svg(picture), StandardCharsets.UTF_8);
    }

    /** Every picture must come out as both forms and say its title, whatever its figures. */
    private static String drawn(Picture picture) throws Exception {
        BufferedImage image = PictureFile.image(picture);
        assertTrue(IntStream.range(0, image.getWidth() * image.getHeight() / 7)
                        .map(i -> image.getRGB(i * 7 % image.getWidth(), i * 7 / image.getWidth()))
                        .distinct()
                        .count()
                > 3);
        String svg = svg(picture);
        assertTrue(svg.contains("Reserve of the gate") && !svg.contains("NaN") && !svg.contains("Infinity"), svg);
        return svg;
    }

    @Test
    void aHeatMapHasNumbersWhereTheyFitAndATitleForEveryCell() throws Exception {
        String small = drawn(heat(5, 4, (x, y) -> 0.3 - 0.02 * x - 0.03 * y).picture(Palette.LIGHT));
        assertTrue(small.contains(">19<") && small.contains("4 °C, 3 AWG: 13 %"), small);
        assertTrue(small.contains("20 target"));
        String large =
                drawn(heat(100, 100, (x, y) -> 0.3 - 0.002 * x - 0.001 * y).picture(Palette.DARK));
        assertTrue(!large.contains(">19<") && large.contains("99 °C, 99 AWG: 0.3 %"));
    }

    @Test
    void theLineOfAHeatMapRunsWhereTheTargetIsPassedAndNowhereElse() throws Exception {
        HeatMap some = heat(4, 1, (x, y) -> x < 2 ? 0.2 : 0.19);
        assertTrue(some.reaches(1, 0) && !some.reaches(2, 0));
        List<List<Point>> line = new HeatPicture(some, Palette.LIGHT).contour();
        assertEquals(1, line.size());
        assertEquals(line.get(0).get(0).x(), line.get(0).get(1).x(), "upright, between the second and third column");
        HeatMap corner = heat(3, 3, (x, y) -> (x == 2 && y < 2) || y == 0 ? 1 : 0);
        assertEquals(4, new HeatPicture(corner, Palette.LIGHT).contour().size());
        assertEquals(List.of(), new HeatPicture(heat(4, 4, (x, y) -> 0.4), Palette.LIGHT).contour());
        assertEquals(List.of(), new HeatPicture(heat(4, 4, (x, y) -> Double.NaN), Palette.LIGHT).contour());
    }

    @Test
    void heatMapsOfAnyFigures() throws Exception {
        drawn(heat(0, 0, (x, y) -> 0).picture(Palette.LIGHT));
        drawn(heat(1, 1, (x, y) -> 0.2).picture(Palette.LIGHT));
        drawn(heat(3, 3, (x, y) -> Double.NaN).picture(Palette.CONTRAST));
        String gaps = drawn(heat(3, 3, (x, y) -> x == y ? Double.POSITIVE_INFINITY : -1e9 * x)
                .picture(Palette.LIGHT));
        assertTrue(gaps.contains("no value"));
    }

    @Test
    void curvesOfAnyFigures() throws Exception {
        for (Curve.Form form : Curve.Form.values()) {
            drawn(curve(form).picture(Palette.LIGHT));
            drawn(curve(form, new Point(1, Double.NaN)).picture(Palette.LIGHT));
            drawn(curve(form, new Point(95, 0.2)).picture(Palette.DARK));
            drawn(curve(form, new Point(1, 0.4), new Point(95, 0.4)).picture(Palette.LIGHT));
            drawn(curve(form, new Point(1, 0.4), new Point(90, Double.NaN), new Point(95, -0.1))
                    .picture(Palette.CONTRAST));
            drawn(curve(form, new Point(1, 1e12), new Point(2, -1e12), new Point(3, Double.POSITIVE_INFINITY))
                    .picture(Palette.LIGHT));
        }
        String said = curve(Curve.Form.LINE, new Point(95, 0.2))
                .picture(Palette.LIGHT)
                .description();
        assertTrue(said.contains("95 m: 20 %") && said.contains("holds up to 95 m"), said);
    }

    @Test
    void aSpreadCountsEveryTrialAndFindsPercentiles() throws Exception {
        Random random = new Random(7);
        List<Double> values = random.doubles(2000, 0.1, 0.3).boxed().toList();
        Spread spread = new Spread(CAPTION, SHARE, values, List.of(5.0, 50.0, 95.0), OptionalDouble.of(0.2));
        Curve curve = spread.curve();
        assertEquals(1, curve.points().stream().mapToDouble(Point::y).sum(), 1e-9, "seed 7");
        assertEquals(4, curve.guides().size());
        drawn(spread.picture(Palette.LIGHT));
        double[] five = DoubleStream.of(1, 2, 3, 4, 5).toArray();
        assertEquals(3, Spread.percentile(five, 50));
        assertEquals(1.2, Spread.percentile(five, 5), 1e-12);
        assertEquals(5, Spread.percentile(five, 100));
        for (List<Double> odd : List.of(List.<Double>of(), List.of(0.2), List.of(0.2, 0.2), List.of(0.0, Double.NaN))) {
            drawn(new Spread(CAPTION, SHARE, odd, List.of(50.0), OptionalDouble.empty()).picture(Palette.LIGHT));
        }
    }

    @Test
    void theStrongestInputComesFirstAndOneWithoutAValueBeforeIt() throws Exception {
        Sensitivity study = new Sensitivity(
                CAPTION,
                SHARE,
                0.2,
                List.of(
                        new Sensitivity.Input("weak", "9 m", 0.201, "11 m", 0.199),
                        new Sensitivity.Input("strong", "9 m", 0.3, "11 m", 0.1),
                        new Sensitivity.Input("breaks", "9 m", 0.2, "11 m", Double.NaN)));
        assertEquals(
                List.of("breaks", "strong", "weak"),
                study.ordered().stream().map(Sensitivity.Input::name).toList());
        String svg = drawn(study.picture(Palette.LIGHT));
        assertTrue(svg.contains("11 m → 10 %") && svg.contains("11 m → no value"), svg);
        drawn(new Sensitivity(CAPTION, new Measure("", Unit.ONE), 1, List.of()).picture(Palette.DARK));
        drawn(new Sensitivity(CAPTION, SHARE, Double.NaN, study.inputs()).picture(Palette.DARK));
    }
}
