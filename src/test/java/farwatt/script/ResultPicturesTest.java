package farwatt.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.picture.Palette;
import farwatt.picture.Picture;
import farwatt.picture.PictureFile;
import farwatt.report.Refusal;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ResultPicturesTest {
    private static Picture drawn(String text) throws Refusal {
        Scripts.Ran ran = Scripts.run(text);
        assertEquals(Outcome.State.DONE, ran.outcome().state(), ran.outcome().said());
        return ResultPictures.of(ran.said().pictures.get(0), "the landing", Palette.LIGHT);
    }

    private static String svg(Picture picture) throws Refusal {
        return new String(PictureFile.svg(picture), StandardCharsets.UTF_8);
    }

    @Test
    void twoVariedColumnsGiveACellForEveryPair() throws Refusal {
        Picture picture = drawn("""
                sweep({over: {'quay.ambient': span('0 degC', '40 degC', '10 K'), 'trunk.gauge': ['22 AWG', '24 AWG']},
                  read: ['plan.lost', 'gate.reserve_share']}).picture('gate.reserve_share')""");
        assertEquals(5 * 2, picture.tips().size(), picture.tips()::toString);
        assertTrue(picture.title().startsWith("gate.reserve_share over quay.ambient and trunk.gauge"));
        assertTrue(svg(picture).contains("22 AWG"));
    }

    @Test
    void oneVariedColumnAndWhatALimitOrGrowthLookedAtAreCurves() throws Refusal {
        Picture picture = drawn(
                "sweep({over: {'quay.ambient': span('0 degC', '40 degC', '10 K')}, read: ['plan.lost']}).picture('plan.lost')");
        assertTrue(svg(picture).contains("quay.ambient"));
        assertEquals(5, picture.tips().size());
        drawn("const g = grow({copy: 'cam 1', until: 'gate.reserve_share < reserve_target', most: 4});"
                + "g.picture(g.columns[1].name)");
    }

    @Test
    void effectsAreBarsAroundTheValueAsItIs() throws Refusal {
        Picture picture = drawn("sensitivity({read: 'gate.reserve_share', step: '5 %'}).picture('effect')");
        assertEquals("What moves gate.reserve_share", picture.title());
        assertTrue(svg(picture).contains("trunk.length"));
    }

    @Test
    void scatterIsWhatShareOfTheTrialsLiesBelow() throws Refusal {
        Picture picture =
                drawn("spread({vary: {'trunk.length': '95 m ± 5 %'}, runs: 200, read: ['gate.reserve_share']})"
                        + ".picture('gate.reserve_share')");
        assertTrue(svg(picture).contains("trials below"));
        assertTrue(svg(picture).contains("middle"));
    }

    @Test
    void aTableOfWordsAndFiguresIsDrawnOverItsFirstColumn() throws Refusal {
        Picture picture = drawn(
                "table(plan.rows('runs').map(({id, loss}) => ({id, loss})), {loss: 'W'}).picture('loss', 'loss.svg')");
        assertEquals(
                Scripts.ferry().rows(farwatt.plan.Table.RUNS).size(),
                picture.tips().size());
        assertTrue(picture.tips().get(0).text().contains("trunk"), picture.tips()::toString);
    }

    @Test
    void whatCannotBeDrawnIsRefusedInPlainWords() {
        assertThrows(Refusal.class, () -> drawn("table([{a: 1}, {a: 2}]).picture('a')"));
        Refusal words = assertThrows(Refusal.class, () -> drawn("table(plan.rows('runs')).picture('to')"));
        assertTrue(words.notice().text().contains("word"), words.notice().text());
    }
}
