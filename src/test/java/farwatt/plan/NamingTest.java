package farwatt.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class NamingTest {
    @Test
    void theNextFreeNumberFollowsTheOriginals() {
        Map<String, String> expected = Map.of(
                "cam 1", "cam 2",
                "gate", "gate 2",
                "cam 09", "cam 10",
                "cam 099", "cam 100",
                "mast7", "mast8",
                "7", "8",
                "quay 2b", "quay 2b 2",
                "serial 123456789012345", "serial 123456789012345 2");
        expected.forEach(
                (original, next) -> assertEquals(next, Naming.in(Plan.EMPTY).next(original)));
    }

    @Test
    void takenIdsAreSteppedOverWithoutRegardToCaseOrTable() {
        Plan plan = Plan.EMPTY
                .and(Table.DEVICES, Row.of("cam 1"))
                .and(Table.ZONES, Row.of("CAM 2"))
                .withScenarios(List.of(new Scenario("more", "", List.of(new Step.Add("devices", Row.of("Cam 3"))))));
        Naming naming = Naming.in(plan);
        assertEquals("cam 4", naming.next("cam 1"));
        assertEquals("cam 5", naming.next("cam 1"), "what was given is taken");
        assertEquals("CAM 6", naming.next("CAM 2"));
        assertTrue(naming.isTaken("cam 6"));
    }

    @Test
    void aFreeIdIsGivenAsItIs() {
        Naming naming = Naming.in(Rows.of(List.of(Row.of("dark"))));
        assertEquals("bright", naming.free("bright"));
        assertEquals("bright 2", naming.free("bright"));
        assertEquals("dark 2", naming.free("dark"));
    }

    @Test
    void aGapIsFilledBeforeCountingOn() {
        Plan plan = Plan.EMPTY.and(Table.DEVICES, Row.of("cam 1")).and(Table.DEVICES, Row.of("cam 3"));
        Naming naming = Naming.in(plan);
        assertEquals(List.of("cam 2", "cam 4"), List.of(naming.next("cam 1"), naming.next("cam 1")));
    }
}
