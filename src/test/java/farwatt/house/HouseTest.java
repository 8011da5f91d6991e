package farwatt.house;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The program keeps the rules of the house. */
class HouseTest {
    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(Rooms.BASE);

    @TestFactory
    Stream<DynamicTest> everyRoomSeesOnlyWhatItMay() {
        return Rooms.ALL.stream().map(room -> holds(Rules.arrows(room)));
    }

    @TestFactory
    Stream<DynamicTest> everyLibraryStaysAtHome() {
        return Rooms.LIBRARIES.stream().map(library -> holds(Rules.home(library)));
    }

    @TestFactory
    Stream<DynamicTest> theRestOfTheHouseRulesHold() {
        return Stream.of(
                        Rules.noStrangers(),
                        Rules.circuitIsBare(),
                        Rules.everyClassHasARoom(),
                        Rules.pure(),
                        Rules.quiet(),
                        Rules.tellingNames())
                .map(HouseTest::holds);
    }

    @Test
    void planAndCircuitMeetOnlyInEngineAndItsTests() {
        Rules.meetInEngine().check(new ClassFileImporter().importPackages(Rooms.BASE));
    }

    private static DynamicTest holds(ArchRule rule) {
        return DynamicTest.dynamicTest(rule.getDescription(), () -> rule.check(PROGRAM));
    }
}
