package farwatt.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Corner;
import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Grow;
import farwatt.study.Limit;
import farwatt.study.Points;
import farwatt.study.Scatter;
import farwatt.study.Sides;
import farwatt.study.Sweep;
import farwatt.study.Vary;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Studies of the demo plan as charts; the pictures lie in target/pictures afterwards. */
class StudyChartsTest {
    private static final String READ = "gate.reserve_share";
    private static final String BELOW = "Ferry landing, east gate · with everything at its most";
    private static final String AMBIENT = "quay.ambient = -20 degC .. 60 degC by 5 K";
    private static final String GAUGE = "trunk.gauge = 22 AWG, 23 AWG, 24 AWG, 26 AWG";

    private static Plan plan;
    private static Ground ground;

    @BeforeAll
    static void open() throws Exception {
        plan = PlanReader.read(Path.of("scenarios/ferry-landing.farwatt.json")).plan();
        ground = Ground.of(plan, Corner.MOST);
    }

    private static Points sweep(List<String> reads, String... over) throws Refusal {
        List<Vary> all = new ArrayList<>();
        for (String each : over) {
            all.add(Vary.of(ground, each));
        }
        return Sweep.of(ground, all, reads).points(Effort.quiet());
    }

    private static Picture drawn(String name, Chart chart) throws Exception {
        Path folder = Files.createDirectories(Path.of("target", "pictures"));
        for (Palette palette : Palette.values()) {
            Picture picture = chart.picture(palette);
            PictureFile.write(picture, folder.resolve("study-" + name + "-" + palette.word() + ".png"));
            for (Picture.Tip tip : picture.tips()) {
                Box box = tip.box();
                assertTrue(box.x() >= 0 && box.right() <= picture.width() && box.bottom() <= picture.height());
                assertTrue(!tip.text().contains("NaN") && box.width() > 0, tip::text);
            }
        }
        Picture light = chart.picture(Palette.LIGHT);
        String svg = new String(PictureFile.svg(light), StandardCharsets.UTF_8);
        assertTrue(!svg.contains("NaN") && !svg.contains("Infinity"));
        return light;
    }

    @Test
    void ambientAgainstGaugeIsAHeatMapWithALineAtThePromisedReserve() throws Exception {
        Points points = sweep(List.of(READ), AMBIENT, GAUGE);
        OptionalDouble target = StudyCharts.target(plan, READ);
        assertEquals(0.2, target.orElseThrow(), 1e-12);
        SweepChart chart = SweepChart.of(Figures.of(points), 2, 2, List.of(), target, BELOW);
        HeatMap map = (HeatMap) chart.chart();
        assertEquals(17, map.columns());
        assertEquals(4, map.rows());
        Picture picture = drawn("heat", map);
        for (int tip = 0; tip < picture.tips().size(); tip++) {
            int point = chart.point(tip);
            String said = picture.tips().get(tip).text();
            assertTrue(said.startsWith(points.text(point, 0) + ", " + points.text(point, 1) + ": "), said);
            assertEquals(tip, chart.tip(point));
            double value = map.value(tip % 17, tip / 17);
            assertEquals(points.inside(point, 2), value);
            assertEquals(points.inside(point, 2) >= 0.2, map.reaches(tip % 17, tip / 17));
        }
    }

    @Test
    void aConditionIsDrawnInWords() throws Exception {
        Points points = sweep(List.of("gate.reserve_share >= reserve_target"), AMBIENT, GAUGE);
        Chart chart = SweepChart.of(Figures.of(points), 2, 2, List.of(), OptionalDouble.empty(), BELOW)
                .chart();
        Picture picture = drawn("yes-no", chart);
        assertTrue(
                picture.tips().get(0).text().endsWith(": yes"), picture.tips().get(0)::text);
    }

    @Test
    void ofThreeVariedCellsTheThirdIsHeldAndSaidSo() throws Exception {
        Points points = sweep(List.of(READ), AMBIENT, GAUGE, "trunk.length = 60 m, 95 m, 120 m");
        Figures figures = Figures.of(points);
        assertEquals(List.of(List.of("60 m", "95 m", "120 m")), SweepChart.held(figures, 3));
        SweepChart chart = SweepChart.of(figures, 3, 3, List.of(1), StudyCharts.target(plan, READ), BELOW);
        HeatMap map = (HeatMap) chart.chart();
        assertTrue(map.caption().below().endsWith("held: trunk.length 95 m"), map.caption()::below);
        for (int tip = 0; tip < 17 * 4; tip++) {
            assertEquals("95 m", points.text(chart.point(tip), 2));
        }
        drawn("held", map);
    }

    @Test
    void oneVariedQuantityIsACurveAndOneVariedWordAStripOfCells() throws Exception {
        OptionalDouble target = StudyCharts.target(plan, READ);
        Points length = sweep(List.of(READ), "trunk.length = 10 m .. 200 m by 2 m");
        SweepChart curve = SweepChart.of(Figures.of(length), 1, 1, List.of(), target, BELOW);
        Picture picture = drawn("curve", curve.chart());
        assertEquals(length.size(), picture.tips().size());
        assertTrue(picture.tips().get(3).text().startsWith(length.text(curve.point(3), 0)));
        Points dark = sweep(List.of(READ), "dark = no, yes");
        HeatMap strip = (HeatMap)
                SweepChart.of(Figures.of(dark), 1, 1, List.of(), target, BELOW).chart();
        assertEquals(1, strip.rows());
        drawn("strip", strip);
        Points gauge = sweep(List.of(READ), GAUGE);
        drawn(
                "gauge",
                SweepChart.of(Figures.of(gauge), 1, 1, List.of(), target, BELOW).chart());
    }

    @Test
    void manyPointsAreThinnedOutAndATextIsRefused() throws Exception {
        Points many = sweep(
                List.of(READ), "quay.ambient = -20 degC .. 60 degC by 0.25 K", "trunk.length = 10 m .. 200 m by 1 m");
        HeatMap map = (HeatMap) SweepChart.of(Figures.of(many), 2, 2, List.of(), OptionalDouble.of(0.2), BELOW)
                .chart();
        assertTrue(map.columns() <= 150 && map.rows() <= 100, map.columns() + " by " + map.rows());
        assertTrue(map.caption().below().contains("one value of every 3 of quay.ambient is drawn"));
        drawn("thinned", map);
        Points words = sweep(List.of("trunk.from"), GAUGE);
        assertThrows(
                Refusal.class, () -> SweepChart.of(Figures.of(words), 1, 1, List.of(), OptionalDouble.empty(), BELOW));
    }

    @Test
    void growthShowsHowTheReserveFallsToWhereItStops() throws Exception {
        String until = "gate.reserve_share < reserve_target";
        var grown = Grow.until(ground, "cam 1", until, 50, Sides.of(ground, until), Effort.quiet());
        Curve curve = (Curve) StudyCharts.of(grown, "cam 1", BELOW);
        assertEquals(grown.points().size(), curve.points().size());
        assertEquals(grown.points().inside(0, 3), curve.points().get(0).y());
        assertTrue(curve.guides().stream().anyMatch(guide -> guide.at() == grown.fitted()));
        assertTrue(curve.guides().stream().anyMatch(guide -> guide.way() == Guide.Way.LEVEL && guide.at() == 0.2));
        drawn("grown", curve);
        String plain = "not gate.powered";
        drawn(
                "grown-condition",
                StudyCharts.of(
                        Grow.until(ground, "cam 1", plain, 8, Sides.of(ground, plain), Effort.quiet()),
                        "cam 1",
                        BELOW));
    }

    @Test
    void aLimitIsMarkedWhereTheConditionIsLost() throws Exception {
        String holds = "gate.reserve_share >= reserve_target";
        Vary vary = Vary.of(ground, "trunk.length = 1 m .. 300 m");
        var limited = Limit.find(ground, vary, holds, Effort.quiet());
        var sides = Sides.along(ground, vary, holds, limited, Effort.quiet());
        Curve curve = (Curve) StudyCharts.of(limited, sides, BELOW);
        double at = limited.farthest().orElseThrow();
        assertTrue(curve.guides().stream().anyMatch(guide -> guide.at() == at));
        for (Point point : curve.points()) {
            assertTrue((point.x() <= at) == (point.y() >= 0.2 * (1 - 1e-9)), point::toString);
        }
        drawn("limit", curve);
        drawn("limit-condition", StudyCharts.of(limited, java.util.Optional.empty(), BELOW));
    }

    @Test
    void aSpreadAndASensitivity() throws Exception {
        var spread = farwatt.study.Spread.of(
                ground, List.of(Vary.of(ground, "trunk.length = 95 m ~ 5 %")), List.of(READ), 5000, 7);
        List<Double> values = new ArrayList<>();
        List<Scatter> scatter = spread.run(Effort.quiet(), point -> values.add(point.inside(1)));
        DoubleStream all = values.stream().mapToDouble(v -> v);
        Curve curve = (Curve) StudyCharts.of(scatter.get(0), all, OptionalDouble.of(0.2), BELOW);
        Guide middle = curve.guides().get(1);
        assertEquals(scatter.get(0).levels().get(4), middle.at(), 1e-12);
        drawn("spread", curve);
        var effects = farwatt.study.Sensitivity.of(ground, READ, 0.05, Effort.quiet());
        Sensitivity chart = (Sensitivity) StudyCharts.of(effects, BELOW);
        assertEquals(24, chart.inputs().size());
        assertTrue(chart.caption()
                .below()
                .contains("the 24 strongest of " + effects.effects().size()));
        drawn("sensitivity", chart);
    }

    @Test
    void picturesStandOneBelowTheOther() throws Exception {
        Points points = sweep(List.of(READ, "gate.volts"), AMBIENT, GAUGE);
        List<Chart> charts = new ArrayList<>();
        for (int read = 2; read < 4; read++) {
            charts.add(SweepChart.of(Figures.of(points), 2, read, List.of(), OptionalDouble.empty(), BELOW)
                    .chart());
        }
        Picture both = Stack.of(charts, Palette.LIGHT);
        Picture first = charts.get(0).picture(Palette.LIGHT);
        assertEquals(first.tips().get(0), both.tips().get(0));
        assertEquals(first.tips().size() * 2, both.tips().size());
        Path file = Files.createDirectories(Path.of("target", "pictures")).resolve("study-stack.svg");
        PictureFile.write(both, file);
        assertTrue(Files.size(file) > 0);
    }
}
