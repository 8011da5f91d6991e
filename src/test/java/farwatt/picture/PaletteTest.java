package farwatt.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.report.Code;
import farwatt.report.Messages;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PaletteTest {
    @Test
    void everyInkThatIsReadStandsOutFromPaperAndCard() {
        Set<Ink> read = EnumSet.complementOf(EnumSet.of(Ink.PAPER, Ink.CARD, Ink.TRACK));
        for (Palette palette : Palette.values()) {
            for (Ink ground : EnumSet.of(Ink.PAPER, Ink.CARD)) {
                for (Ink ink : read) {
                    double contrast = Palette.contrast(palette.rgb(ink), palette.rgb(ground));
                    assertTrue(contrast >= 4.5, palette + ": " + ink + " on " + ground + " " + contrast);
                }
            }
            assertEquals(palette, Palette.of(palette.word()).orElseThrow());
        }
        assertEquals(21, Palette.contrast(0, 0xFFFFFF), 1e-9);
        assertTrue(Palette.of("pink").isEmpty());
    }

    @Test
    void theRampGrowsSteadilyLighterAndNumbersOnItCanBeRead() {
        double before = 0;
        for (int i = 0; i <= 100; i++) {
            int rgb = Ramp.rgb(i / 100.0);
            double light = Palette.contrast(rgb, 0);
            assertTrue(light > before, "step " + i);
            before = light;
            assertTrue(Palette.contrast(rgb, Ramp.text(rgb)) >= 4.5, "step " + i);
        }
    }

    @Test
    void marksAreToldApartByShapeAndWordAlone() {
        Set<Object> shapes = new HashSet<>();
        Set<String> words = new HashSet<>();
        for (Mark mark : Mark.values()) {
            assertTrue(shapes.add(mark.outline().toString() + mark.sign()), mark.word());
            assertTrue(words.add(mark.word()), mark.word());
        }
    }

    @Test
    void everySentenceHasACodeAndEveryCodeASentence() {
        assertEquals(
                Stream.of(PictureCode.values()).map(Code::key).collect(Collectors.toCollection(TreeSet::new)),
                Messages.all("picture").keySet());
    }
}
