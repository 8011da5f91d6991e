package farwatt.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.report.Refusal;
import farwatt.review.Reviewer;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

class PictureFileTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

    @TempDir
    Path folder;

    private static Picture picture(Sites site, Palette palette) {
        Calculation calc = site.calc();
        var review = Optional.of(Reviewer.review(calc));
        Heading heading = Heading.of(calc.still(), review, Optional.of("winter night"), Optional.of(DAY));
        return new DiagramPicture(Diagram.of(calc.still(), review), heading, palette);
    }

    private static Document read(byte[] svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }

    private static int colours(byte[] png) throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        Set<Integer> seen = new HashSet<>();
        for (int y = 0; y < image.getHeight(); y += 2) {
            for (int x = 0; x < image.getWidth(); x += 2) {
                seen.add(image.getRGB(x, y));
            }
        }
        return seen.size();
    }

    @Test
    void anSvgIsWellFormedAndNamesEveryRowWithTitleAndDescription() throws Exception {
        long seed = 31;
        Sites site = Sites.random(new Random(seed), 120);
        Document svg = read(PictureFile.svg(picture(site, Palette.LIGHT)));
        assertEquals("svg", svg.getDocumentElement().getLocalName());
        assertEquals("img", svg.getDocumentElement().getAttribute("role"));
        assertEquals(
                "Ferry landing · winter night",
                svg.getElementsByTagName("title").item(0).getTextContent());
        Set<String> ids = new HashSet<>();
        var titles = svg.getElementsByTagName("title");
        for (int i = 1; i < titles.getLength(); i++) {
            ids.add(titles.item(i).getTextContent().split(" · ", -1)[0]);
        }
        Diagram diagram = Diagram.of(site.calc().still(), Optional.empty());
        diagram.cards().forEach(card -> assertTrue(ids.contains(card.id()), "seed " + seed + ": " + card.id()));
        diagram.wires().forEach(wire -> assertTrue(ids.contains(wire.run()), "seed " + seed + ": " + wire.run()));
        assertTrue(svg.getElementsByTagName("desc").item(0).getTextContent().contains("planning aid"));
        assertTrue(text(svg).contains("2026-03-01"), "the date handed in");
    }

    private static String text(Document svg) {
        return svg.getDocumentElement().getTextContent();
    }

    @Test
    void hostileIdsComeToNoHarm() throws Exception {
        String hostile = "<!DOCTYPE b>&\"'\u0000\u202E]]>\uD800\uFFFF\n</svg>";
        Sites site = new Sites().source("x".repeat(80)).device(hostile, "x".repeat(80), "9 m", "5 W");
        Document svg = read(PictureFile.svg(picture(site, Palette.CONTRAST)));
        assertTrue(text(svg).contains("<!DOCTYPE b>&\"'\uFFFD\uFFFD]]>\uFFFD\uFFFD </svg>"), text(svg));
        assertTrue(text(svg).contains("x".repeat(80)));
    }

    @Test
    void aPngIsNotBlankWhateverThePlan() throws Exception {
        for (Sites site : List.of(new Sites(), new Sites().source("feed"), Sites.star(48), Sites.chain(30, 2))) {
            for (Palette palette : Palette.values()) {
                assertTrue(colours(PictureFile.png(picture(site, palette))) > 8);
            }
        }
    }

    @Test
    void aVeryLargePictureIsDrawnCoarserInsteadOfFillingTheMemory() throws Exception {
        BufferedImage image = PictureFile.image(picture(Sites.star(500), Palette.LIGHT));
        assertTrue((long) image.getWidth() * image.getHeight() < 25_000_000L);
        BufferedImage small = PictureFile.image(picture(Sites.star(4), Palette.LIGHT));
        assertTrue(small.getWidth() > 1700, "twice as fine as its units");
    }

    @Test
    void theSamePictureIsTheSameBytes() throws Exception {
        Picture picture = picture(Sites.star(5), Palette.LIGHT);
        assertArrayEquals(PictureFile.svg(picture), PictureFile.svg(picture));
        assertArrayEquals(PictureFile.png(picture), PictureFile.png(picture));
    }

    @Test
    void aFileIsReplacedWholeAndNothingIsLeftBesideIt() throws Exception {
        Path target = Files.writeString(folder.resolve("Quay.PNG"), "old");
        PictureFile.write(picture(Sites.star(2), Palette.LIGHT), target);
        assertTrue(Files.size(target) > 1000);
        PictureFile.write(picture(Sites.star(2), Palette.LIGHT), folder.resolve("quay.svg"));
        assertEquals(2, folder.toFile().list().length);
    }

    @Test
    void aPlaceThatCannotBeWrittenToIsOneSentence() throws Exception {
        Picture picture = picture(new Sites(), Palette.LIGHT);
        Path inside = Files.createDirectories(folder.resolve("folder.svg"));
        assertEquals("picture.bad_ending", refused(picture, folder.resolve("quay.gif")));
        assertEquals(
                "picture.no_folder",
                refused(picture, folder.resolve("not there").resolve("quay.png")));
        assertEquals("picture.is_folder", refused(picture, inside));
    }

    private static String refused(Picture picture, Path target) {
        return assertThrows(Refusal.class, () -> PictureFile.write(picture, target))
                .notice()
                .code();
    }

    /** What runs on a machine without fonts. */
    static final class Elsewhere {
        private Elsewhere() {}

        /** Tries to write a picture; says the sentence it is refused with. */
        public static void main(String[] words) throws Exception {
            for (String ending : List.of("png", "svg")) {
                try {
                    PictureFile.write(picture(Sites.star(2), Palette.LIGHT), Path.of(words[0] + "." + ending));
                    System.out.println("written");
                } catch (Refusal e) {
                    System.out.println(e.notice().code());
                }
            }
        }
    }

    @Test
    void withoutAnyFontItSaysSoInsteadOfFailing() throws Exception {
        Path fonts = Files.writeString(folder.resolve("fonts.conf"), "<fontconfig></fontconfig>");
        File said = folder.resolve("said.txt").toFile();
        ProcessBuilder builder = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Elsewhere.class.getName(),
                        folder.resolve("quay").toString())
                .redirectErrorStream(true)
                .redirectOutput(said);
        builder.environment().put("FONTCONFIG_FILE", fonts.toString());
        Process process = builder.start();
        assertTrue(process.waitFor(5, TimeUnit.MINUTES), "it did not end");
        List<String> lines = Files.readAllLines(said.toPath(), StandardCharsets.UTF_8);
        assertEquals(0, process.exitValue(), lines.toString());
        // a Java that brings fonts of its own can write
        assertTrue(
                lines.equals(List.of("picture.no_font", "picture.no_font"))
                        || lines.equals(List.of("written", "written")),
                lines.toString());
    }
}
