package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Plan;
import farwatt.quantity.Units;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Grow;
import farwatt.study.Grown;
import farwatt.study.Points;
import farwatt.study.Scatter;
import farwatt.study.Sensitivity;
import farwatt.study.Spread;
import farwatt.study.Sweep;
import farwatt.study.Vary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Studies as sheets: the study's own figures, in a table that the workbook can draw. */
class StudySheetsTest {
    private static final StudySheets SHEETS = new StudySheets("Ferry landing");

    private static Points sweep(List<String> over, String... reads) throws Exception {
        Ground ground = Ground.of(Landing.plan());
        List<Vary> varied = new ArrayList<>();
        for (String one : over) {
            varied.add(Vary.of(ground, one));
        }
        return Sweep.of(ground, varied, List.of(reads)).points(Effort.quiet());
    }

    private static double number(Entry entry) {
        return ((Entry.Amount) entry.shown()).value();
    }

    @Test
    void oneCellThatVariesGivesLinesByUnit() throws Exception {
        Points points = sweep(
                List.of("trunk.length = 20 m .. 100 m by 20 m"),
                "gate.reserve_share",
                "trunk.loss",
                "feed.reserve_share",
                "gate.powered");
        List<StudyTable> sheets = SHEETS.sweep(points, 1);
        assertEquals(3, sheets.size(), sheets::toString);
        StudyTable shares = sheets.get(0);
        assertEquals(StudyTable.Shape.LINE, shares.shape());
        assertEquals(
                List.of("trunk.length, m", "gate.reserve_share", "feed.reserve_share"),
                shares.columns().stream().map(Column::title).toList());
        assertEquals("trunk.loss, W", sheets.get(1).columns().get(1).title());
        for (int i = 0; i < points.size(); i++) {
            assertEquals(20.0 * (i + 1), number(shares.lines().get(i).get(0)), 1e-12);
            assertEquals(points.inside(i, 1), number(shares.lines().get(i).get(1)), 0.0);
            assertEquals(
                    points.inside(i, 2), number(sheets.get(1).lines().get(i).get(1)), 0.0);
            assertEquals(Tone.GOOD, sheets.get(2).lines().get(i).get(1).tone());
        }
        assertEquals(StudyTable.Shape.TABLE, sheets.get(2).shape());
    }

    @Test
    void twoCellsGiveAShadedMapAndThreeAList() throws Exception {
        List<String> two = List.of("trunk.length = 20 m, 95 m", "trunk.gauge = 22 AWG, 24 AWG");
        StudyTable map = SHEETS.sweep(sweep(two, "gate.reserve_share"), 2).get(0);
        assertEquals(StudyTable.Shape.HEAT, map.shape());
        assertEquals(2, map.schedule().lines().size());
        assertEquals(3, map.schedule().columns().size());
        List<String> three = new ArrayList<>(two);
        three.add("quay.ambient = 0 degC, 20 degC");
        StudyTable list = SHEETS.sweep(sweep(three, "gate.reserve_share"), 3).get(0);
        assertEquals(StudyTable.Shape.TABLE, list.shape());
        assertEquals(8, list.lines().size());
    }

    @Test
    void aPointWithoutAFigureIsEmptyAndSaysWhy() throws Exception {
        Points points = sweep(List.of("'mast radio'.draw = 14 W, 900 W"), "gate.volts_in");
        StudyTable table = SHEETS.sweep(points, 1).get(0);
        assertEquals("why a figure is missing", table.columns().get(2).title());
        assertEquals(Entry.NONE, table.lines().get(1).get(1));
        assertTrue(table.lines().get(1).get(2).shown() instanceof Entry.Words, table.toString());
        assertEquals(Entry.NONE, table.lines().get(0).get(2));
    }

    @Test
    void aSpreadIsCountedWholeInRoundRanges() throws Exception {
        Ground ground = Ground.of(Landing.plan());
        List<Vary> vary = List.of(Vary.of(ground, "trunk.length = 95 m +- 10 %"));
        double[] values = new double[500];
        Scatter scatter = Spread.of(ground, vary, List.of("gate.volts_in"), values.length, 3)
                .run(Effort.quiet(), point -> values[(int) point.number()] = point.inside(1))
                .get(0);
        StudyTable table = SHEETS.spread(scatter, values);
        assertEquals(StudyTable.Shape.HISTOGRAM, table.shape());
        double sum = 0;
        for (List<Entry> line : table.lines()) {
            sum += number(line.get(1));
        }
        assertEquals(500, sum);
        assertTrue(table.lines().size() > 5 && table.lines().size() < 25, table.toString());
        assertTrue(table.note().contains("500 runs: the middle is 5"), table.note());
    }

    @Test
    void rangesHoldEveryValueOnce() {
        long seed = 11;
        Random random = new Random(seed);
        var volt = new Units("EUR").need("V");
        for (int turn = 0; turn < 300; turn++) {
            double scale = Math.pow(10, random.nextInt(13) - 6);
            double[] values = random.doubles(1 + random.nextInt(60))
                    .map(v -> (v - 0.5) * scale)
                    .toArray();
            Bins bins = Bins.of(volt, values);
            int sum = bins.counts().values().stream().mapToInt(i -> i).sum();
            assertEquals(values.length, sum, "seed " + seed + " turn " + turn + " " + Arrays.toString(values));
            assertTrue(bins.counts().size() <= 23, bins + " seed " + seed);
        }
        assertEquals(
                1, Bins.of(volt, new double[] {48.5, 48.5, Double.NaN}).counts().size());
        assertEquals(0, Bins.of(volt, new double[] {Double.NaN}).counts().size());
    }

    @Test
    void growthAndEffectsHaveWhatIsDrawnBesideTheFirstColumn() throws Exception {
        Plan plan = Landing.plan();
        Ground ground = Ground.of(plan);
        Grown grown = Grow.until(
                ground, "cam 1", "gate.reserve_share < 1 %", 5, List.of("gate.reserve_share", "1 %"), Effort.quiet());
        StudyTable growth = SHEETS.grow(grown, "cam 1");
        assertEquals("gate.reserve_share", growth.columns().get(1).heading());
        assertEquals(grown.points().size(), growth.lines().size());
        StudyTable effects = SHEETS.sensitivity(Sensitivity.of(ground, "gate.volts_in", 0.05, Effort.quiet()));
        assertEquals("change a step down, V", effects.columns().get(1).title());
        assertTrue(effects.lines().size() > 3, effects.toString());
        double first = Math.abs(number(effects.lines().get(0).get(1)));
        double last =
                Math.abs(number(effects.lines().get(effects.lines().size() - 1).get(1)));
        assertTrue(first >= last, first + " " + last);
    }
}
