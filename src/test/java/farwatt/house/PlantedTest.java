package farwatt.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import farwatt.house.Rooms.Library;
import farwatt.house.Rooms.Room;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every rule of the house can fail, and fails for nothing else. A second house is built in which every room imports
 * every other room and every library, one class for each; each rule must name exactly the classes that break it.
 */
class PlantedTest {
    private static final Pattern PLANTED = Pattern.compile("farwatt\\.(\\w+\\.)?\\w*X\\w+");

    private static JavaClasses house;

    @BeforeAll
    static void build(@TempDir Path folder) throws IOException {
        PlantedHouse planted = new PlantedHouse();
        for (Library library : Rooms.LIBRARIES) {
            planted.add(library.packageName(), "Thing", "");
        }
        planted.add("stranger", "Thing", "");
        planted.add("farwatt.attic", "AnX1", "");
        for (Room room : Rooms.ALL) {
            furnish(planted, room);
        }
        house = planted.build(folder);
    }

    private static void furnish(PlantedHouse planted, Room room) {
        String place = room.packageName();
        planted.add(place, "Thing", "");
        for (Room other : Rooms.ALL) {
            planted.add(place, sees(other), other.packageName() + ".Thing thing;");
        }
        for (Library library : Rooms.LIBRARIES) {
            planted.add(place, "UsesX" + library.name(), library.packageName() + ".Thing thing;");
        }
        planted.add(place, "UsesXStranger", "stranger.Thing thing;");
        planted.add(place, "MixesXBoth", "farwatt.plan.Thing plan; farwatt.circuit.Thing circuit;");
        planted.add(place, "AsksXClock", "Object now() { return java.time.Instant.now(); }");
        planted.add(place, "AsksXMillis", "long now() { return System.currentTimeMillis(); }");
        planted.add(place, "AsksXLocale", "Object here() { return java.util.Locale.getDefault(); }");
        planted.add(place, "AsksXLuck", "Object luck() { return new java.util.Random(); }");
        planted.add(place, "KeepsXSeed", "Object luck() { return new java.util.Random(7); }");
        planted.add(place, "WritesXOut", "void say() { System.out.println(); }");
        planted.add(place, "WritesXTrace", "void say(Exception e) { e.printStackTrace(); }");
        planted.add(place, "LooseXHelper", "");
    }

    @Test
    void theTableHasNoWayBack() {
        Set<String> below = new HashSet<>();
        for (Room room : Rooms.ALL) {
            assertTrue(below.containsAll(room.sees()), room.title() + " sees only rooms listed before it");
            below.add(room.name());
        }
    }

    @TestFactory
    Stream<DynamicTest> aRoomIsStoppedFromSeeingEachForbiddenRoom() {
        return Rooms.ALL.stream()
                .map(room -> DynamicTest.dynamicTest(room.title(), () -> {
                    Set<String> forbidden = Rooms.ALL.stream()
                            .filter(other -> !room.maySee(other))
                            .map(other -> room.packageName() + "." + sees(other))
                            .collect(Collectors.toCollection(TreeSet::new));
                    if (!(room.sees().contains("plan") && room.sees().contains("circuit"))) {
                        forbidden.add(room.packageName() + ".MixesXBoth");
                    }
                    assertEquals(forbidden, broken(Rules.arrows(room)));
                }));
    }

    @TestFactory
    Stream<DynamicTest> aLibraryIsStoppedInEachForeignRoom() {
        return Rooms.LIBRARIES.stream()
                .map(library -> DynamicTest.dynamicTest(library.name(), () -> {
                    Set<String> homes = library.rooms();
                    assertEquals(inRoomsBut(homes, "UsesX" + library.name()), broken(Rules.home(library)));
                }));
    }

    @Test
    void aStrangeLibraryIsStoppedEverywhere() {
        assertEquals(inRoomsBut(Set.of(), "UsesXStranger"), broken(Rules.noStrangers()));
    }

    @Test
    void theCircuitIsStoppedFromImportingAnythingButJava() {
        Set<String> foreign = Stream.concat(
                        Rooms.LIBRARIES.stream().map(library -> "UsesX" + library.name()),
                        Rooms.ALL.stream()
                                .filter(room -> !room.name().equals("circuit"))
                                .map(PlantedTest::sees))
                .map(name -> "farwatt.circuit." + name)
                .collect(Collectors.toCollection(TreeSet::new));
        foreign.add("farwatt.circuit.UsesXStranger");
        foreign.add("farwatt.circuit.MixesXBoth");
        assertEquals(foreign, broken(Rules.circuitIsBare()));
    }

    @Test
    void planAndCircuitAreStoppedFromMeetingOutsideEngine() {
        assertEquals(inRoomsBut(Set.of("engine"), "MixesXBoth"), broken(Rules.meetInEngine()));
    }

    @Test
    void aClassOutsideEveryRoomIsFound() {
        assertEquals(Set.of("farwatt.attic.AnX1"), broken(Rules.everyClassHasARoom()));
    }

    @Test
    void askingTheSurroundingsIsStoppedInEachPureRoom() {
        Set<String> impure = Rooms.ALL.stream()
                .map(Room::name)
                .filter(name -> !Rooms.PURE.contains(name))
                .collect(Collectors.toSet());
        Set<String> expected = new TreeSet<>();
        Stream.of("AsksXClock", "AsksXMillis", "AsksXLocale", "AsksXLuck")
                .forEach(name -> expected.addAll(inRoomsBut(impure, name)));
        assertEquals(expected, broken(Rules.pure()));
    }

    @Test
    void writingToTheTerminalIsStoppedInEachQuietRoom() {
        Set<String> expected = inRoomsBut(Rooms.SPEAKING, "WritesXOut");
        expected.addAll(inRoomsBut(Rooms.SPEAKING, "WritesXTrace"));
        assertEquals(expected, broken(Rules.quiet()));
    }

    @Test
    void aNameThatSaysNothingIsFound() {
        assertEquals(inRoomsBut(Set.of(), "LooseXHelper"), broken(Rules.tellingNames()));
    }

    private static String sees(Room other) {
        return "SeesX" + (other.name().isEmpty() ? "start" : other.name());
    }

    private static Set<String> inRoomsBut(Set<String> exempt, String name) {
        return Rooms.ALL.stream()
                .filter(room -> !exempt.contains(room.name()))
                .map(room -> room.packageName() + "." + name)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The planted classes the rule complains of: each complaint begins with its culprit. */
    private static Set<String> broken(ArchRule rule) {
        Set<String> culprits = new TreeSet<>();
        for (String complaint : rule.evaluate(house).getFailureReport().getDetails()) {
            Matcher culprit = PLANTED.matcher(complaint);
            assertTrue(culprit.find(), complaint);
            culprits.add(culprit.group());
        }
        return culprits;
    }
}
