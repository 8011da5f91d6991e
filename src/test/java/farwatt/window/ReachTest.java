package farwatt.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.file.PlanReader;
import farwatt.report.Refusal;
import farwatt.window.studies.StudyKind;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;
import javafx.scene.paint.Stop;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Whether everybody can read and reach what the window shows. */
class ReachTest {
    private static final double LEAST_CONTRAST = 4.5;

    @TempDir
    Path folder;

    private WindowRun run;

    @BeforeEach
    void open() throws Refusal {
        run = new WindowRun(
                folder,
                PlanReader.read(Path.of("scenarios/ferry-landing.farwatt.json")).plan());
    }

    @AfterEach
    void close() {
        run.close();
    }

    private interface Look {
        void at(String where);
    }

    /** Looks at the window with each thing on its bench, with a study's result among them. */
    private void everywhere(Look look) {
        look.at("grid");
        for (String place : run.frame.places()) {
            WindowRun.on(() -> {
                run.frame.put(place);
                return true;
            });
            if (place.equals("Studies")) {
                WindowRun.on(() -> {
                    run.frame.studies().model().run();
                    return true;
                });
                WindowRun.until(
                        "found",
                        () -> run.frame.studies().model().drawn().isPresent()
                                && run.frame.studies().model().kind() == StudyKind.SWEEP);
            }
            run.settle();
            run.picture("reach-" + place);
            look.at(place);
        }
    }

    private static void walk(Node node, List<Node> into) {
        if (!node.isVisible()) {
            return;
        }
        into.add(node);
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> walk(child, into));
        }
    }

    private List<Node> seen() {
        List<Node> all = new ArrayList<>();
        WindowRun.on(() -> {
            walk(run.frame, all);
            return true;
        });
        return all;
    }

    @Test
    void everyControlThatTheKeyboardReachesHasAName() {
        Set<String> nameless = new LinkedHashSet<>();
        int[] named = {0};
        everywhere(where -> {
            for (Node node : seen()) {
                if (node.isFocusTraversable() && !node.isDisabled()) {
                    String name = WindowRun.on(() -> name(node));
                    named[0]++;
                    if (name.isBlank()) {
                        nameless.add(where + ": " + node);
                    }
                }
            }
        });
        assertEquals(Set.of(), nameless);
        assertTrue(named[0] > 100, "only " + named[0] + " controls");
    }

    private static String name(Node node) {
        Object own = node.queryAccessibleAttribute(AccessibleAttribute.TEXT);
        String shown = node instanceof Labeled labeled ? labeled.getText() : "";
        return own != null && !own.toString().isBlank() ? own.toString() : String.valueOf(shown);
    }

    @Test
    void everyTextStandsOutFromWhatLiesBehindIt() {
        for (String theme : List.of("Light", "Dark", "High contrast")) {
            run.robot.clickOn("Look");
            run.robot.clickOn(theme);
            run.settle();
            Set<String> pale = new LinkedHashSet<>();
            int[] texts = {0};
            everywhere(where -> {
                for (Node node : seen()) {
                    if (node instanceof Text text && !text.getText().isBlank() && isLively(text)) {
                        texts[0]++;
                        double contrast = WindowRun.on(() -> contrast(text));
                        if (contrast < LEAST_CONTRAST) {
                            pale.add(String.format(
                                    java.util.Locale.ROOT, "%s: \"%s\" %.2f", where, text.getText(), contrast));
                        }
                    }
                }
            });
            assertEquals(Set.of(), pale, theme);
            assertTrue(texts[0] > 200, "only " + texts[0] + " texts");
            WindowRun.on(() -> {
                run.frame.put("");
                return true;
            });
        }
    }

    /** What cannot be used now need not be readable, by the guidelines too; nor is a prompt under typed text. */
    private static boolean isLively(Node text) {
        for (Node node = text; node != null; node = node.getParent()) {
            if (node.isDisabled() || node.getOpacity() < 0.1) {
                return false;
            }
            if (node instanceof TextInputControl input && input.getText().isEmpty()) {
                return input.getPromptText() != null;
            }
        }
        return true;
    }

    private static double contrast(Text text) {
        double least = Double.MAX_VALUE;
        for (Color ink : colours(text.getFill())) {
            for (Color paper : paper(text)) {
                least = Math.min(least, Contrast.of(ink, paper));
            }
        }
        return least;
    }

    /** The colours of the nearest thing behind that cannot be seen through. */
    private static List<Color> paper(Node text) {
        for (Parent parent = text.getParent(); parent != null; parent = parent.getParent()) {
            if (parent instanceof Region region && region.getBackground() != null) {
                var fills = region.getBackground().getFills();
                for (int i = fills.size() - 1; i >= 0; i--) {
                    List<Color> colours = colours(fills.get(i).getFill());
                    if (!colours.isEmpty() && colours.stream().allMatch(Color::isOpaque)) {
                        return colours;
                    }
                }
            }
        }
        return List.of(Color.WHITE);
    }

    private static List<Color> colours(Paint paint) {
        if (paint instanceof Color color) {
            return List.of(color);
        }
        return paint instanceof LinearGradient gradient
                ? gradient.getStops().stream().map(Stop::getColor).toList()
                : List.of();
    }

    @Test
    void theKeyboardAloneGoesRoundAllPartsOfTheWindow() {
        run.robot.type(KeyCode.F8);
        run.settle();
        Set<Node> owners = new LinkedHashSet<>();
        for (int i = 0; i < 6; i++) {
            run.robot.type(KeyCode.F6);
            WaitForAsyncUtils.waitForFxEvents();
            owners.add(WindowRun.on(() -> run.frame.getScene().getFocusOwner()));
        }
        assertEquals(6, owners.size(), owners::toString);
    }
}
