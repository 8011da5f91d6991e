package farwatt.standard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StandardTest {
    @Test
    void everyClassKeepsToThePowerLeftByItsOwnLoop() {
        for (PowerClass c : PowerClass.all()) {
            double amps = c.portWatts() / c.portVolts();
            double arrives = c.portWatts() - amps * amps * c.loopOhms();
            assertEquals(c.deviceWatts(), arrives, 0.07, "class " + c.number());
        }
    }

    @Test
    void aClassIsFoundByItsNumber() {
        for (int number = 0; number <= 8; number++) {
            assertEquals(number, PowerClass.of(number).number());
        }
        assertEquals(44.3, PowerClass.of(5).floorVolts());
        assertEquals(41.1, PowerClass.of(8).floorVolts());
        assertEquals(4, PowerClass.of(5).pairs());
    }

    @Test
    void theSmallestClassThatHoldsADraw() {
        assertEquals(1, PowerClass.holding(0));
        assertEquals(3, PowerClass.holding(12.95));
        assertEquals(3, PowerClass.holding(12.95 * (1 + 1e-10)));
        assertEquals(4, PowerClass.holding(12.951));
        assertEquals(8, PowerClass.holding(71.3));
        assertEquals(9, PowerClass.holding(71.31));
    }

    @Test
    void theLargestClassThatAPortCanGrant() {
        assertEquals(4, PowerClass.fitting(30, 6), "a type 3 port limited to 30 W");
        assertEquals(3, PowerClass.fitting(15.4, 3));
        assertEquals(6, PowerClass.fitting(60, 6));
        assertEquals(8, PowerClass.fitting(90, 8));
        assertEquals(4, PowerClass.fitting(29.9, 8), "the table is rounded by as much");
        assertEquals(3, PowerClass.fitting(29.89, 8));
        assertEquals(0, PowerClass.fitting(3, 8));
    }

    @Test
    void portTypesKnowTheirTopClass() {
        assertEquals(Optional.of(6), PortType.of("3").map(PortType::topClass));
        assertEquals(Optional.of(52.0), PortType.of("4").map(PortType::volts));
        assertEquals(Optional.empty(), PortType.of("passive"));
        for (PortType type : PortType.all()) {
            assertEquals(type.topClass(), PowerClass.fitting(type.watts(), 8), type.word());
        }
    }

    @Test
    void categoriesAndKindsAreFoundByWord() {
        assertEquals(0.006, CableCategory.of("6").diameter(), 1e-12);
        assertThrows(NoSuchElementException.class, () -> CableCategory.of("9"));
        assertTrue(DeviceKind.of("fixed camera").isPresent());
        assertTrue(DeviceKind.of("lighthouse").isEmpty());
        for (DeviceKind kind : DeviceKind.all()) {
            assertTrue(kind.typical() <= kind.most(), kind.word());
            assertFalse(kind.bitrate() < 0, kind.word());
        }
    }

    @Test
    void everyConstantSaysWhatItIsAndWhereItComesFrom() {
        Set<String> names = new HashSet<>();
        for (Constant c : Constant.all()) {
            assertTrue(names.add(c.name()), c.name());
            assertFalse(c.sentence().isBlank(), c.name());
            assertFalse(c.source().isBlank(), c.name());
            assertEquals(Double.isNaN(c.low()), Double.isNaN(c.high()), c.name());
        }
    }

    @Test
    void aDataFileThatIsMissingIsABug() {
        assertThrows(IllegalStateException.class, () -> Facts.rows("no-such-file"));
    }
}
