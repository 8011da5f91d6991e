package farwatt.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StepPathTest {
    @Test
    void pathsAreTakenApart() {
        assertEquals(Optional.of(new StepPath("trunk", "gauge")), StepPath.of(" trunk.gauge "));
        assertEquals(Optional.of(new StepPath("cam 1", "draw")), StepPath.of("'cam 1'.draw"));
        assertEquals(Optional.of(new StepPath("it's", "draw")), StepPath.of("'it''s'.draw"));
        assertEquals(Optional.of(new StepPath("", "dark")), StepPath.of("dark"));
        assertEquals(Optional.of(new StepPath("", "slack")), StepPath.of("plan.slack"));
        assertEquals(Optional.of(new StepPath("plan", "slack")), StepPath.of("'plan'.slack"));
        assertEquals(Optional.of(new StepPath("größe", "ω_2")), StepPath.of("größe.ω_2"));
    }

    @Test
    void whatIsNoPathIsNone() {
        for (String text :
                List.of("", " ", "a.", ".b", "a.b.c", "'open.draw", "'cam 1'", "cam 1.draw", "a-b", "2x.y", "'a'b")) {
            assertTrue(StepPath.of(text).isEmpty(), text);
        }
    }

    @Test
    void whatWasPrintedIsReadBack() {
        for (String id : List.of("trunk", "cam 1", "it's", "''", "if", "plan", "a.b", "Ω", "x_1", "9")) {
            StepPath path = new StepPath(id, "draw");
            assertEquals(Optional.of(path), StepPath.of(path.text()), path.text());
        }
        assertEquals("trunk", StepPath.quoted("trunk"));
        assertEquals("'if'", StepPath.quoted("if"));
        assertEquals("'it''s'", StepPath.quoted("it's"));
    }
}
