package farwatt.house;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import farwatt.house.Rooms.Library;
import farwatt.house.Rooms.Room;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/** The rules of the house, made from {@link Rooms}. Rooms that are still empty break none. */
final class Rules {
    private static final String HOUSE = Rooms.BASE + "..";
    private static final String NULL_ANNOTATIONS = "org.jspecify..";

    private Rules() {}

    /** A room imports only from the rooms it may see. */
    static ArchRule arrows(Room room) {
        String[] seen =
                Rooms.ALL.stream().filter(room::maySee).map(Room::pattern).toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAPackage(room.pattern())
                .should()
                .dependOnClassesThat(resideInAPackage(HOUSE).and(not(resideInAnyPackage(seen))))
                .as(room.title() + " sees only " + room.sees())
                .because(room.reason())
                .allowEmptyShould(true);
    }

    /** A library is imported only where it is at home. */
    static ArchRule home(Library library) {
        String[] rooms = Rooms.ALL.stream()
                .filter(room -> library.rooms().contains(room.name()))
                .map(Room::pattern)
                .toArray(String[]::new);
        return noClasses()
                .that()
                .resideOutsideOfPackages(rooms)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library.pattern())
                .as(library.name() + " is used only in " + library.rooms())
                .because(library.reason())
                .allowEmptyShould(true);
    }

    /** Nothing foreign comes in but the libraries that have a home. */
    static ArchRule noStrangers() {
        String[] known = Stream.concat(
                        Stream.of(HOUSE, "java..", "javax..", "org.w3c.dom..", "org.xml.sax..", NULL_ANNOTATIONS),
                        Rooms.LIBRARIES.stream().map(Library::pattern))
                .toArray(String[]::new);
        return classes()
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(known)
                .as("only libraries with a home are used")
                .because("a library that comes in by the way cannot be replaced later");
    }

    /** The solver imports nothing but the language's own library. */
    static ArchRule circuitIsBare() {
        return classes()
                .that()
                .resideInAPackage("farwatt.circuit..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("farwatt.circuit..", "java..", NULL_ANNOTATIONS)
                .as("circuit imports only java")
                .because("numbers in, numbers out: what it solves can be checked without a plan")
                .allowEmptyShould(true);
    }

    /** Plan and circuit meet in one room; this holds for the tests too. */
    static ArchRule meetInEngine() {
        return noClasses()
                .that()
                .resideOutsideOfPackage("farwatt.engine..")
                .and(dependOn("farwatt.plan.."))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("farwatt.circuit..")
                .as("plan and circuit meet only in engine")
                .because("a second place that numbers the rows would sooner or later number them otherwise")
                .allowEmptyShould(true);
    }

    /** Every class lives in a room of the table. */
    static ArchRule everyClassHasARoom() {
        return classes()
                .that()
                .resideInAPackage(HOUSE)
                .should()
                .resideInAnyPackage(Rooms.ALL.stream().map(Room::pattern).toArray(String[]::new))
                .as("every class lives in a room")
                .because("a package outside the table would be outside every rule")
                .allowEmptyShould(true);
    }

    /** No clock, no random seed, no default locale where results are made. */
    static ArchRule pure() {
        String[] rooms = Rooms.ALL.stream()
                .filter(room -> Rooms.PURE.contains(room.name()))
                .map(Room::pattern)
                .toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAnyPackage(rooms)
                .should()
                .accessTargetWhere(DescribedPredicate.describe("asks the surroundings", Rules::asksSurroundings))
                .as("results depend only on what is handed in")
                .because("the same plan gives the same numbers on every machine on every day")
                .allowEmptyShould(true);
    }

    /** Only the command line and the console write to the terminal. */
    static ArchRule quiet() {
        String[] rooms = Rooms.ALL.stream()
                .filter(room -> Rooms.SPEAKING.contains(room.name()))
                .map(Room::pattern)
                .toArray(String[]::new);
        return noClasses()
                .that()
                .resideOutsideOfPackages(rooms)
                .should()
                .accessTargetWhere(DescribedPredicate.describe("writes to the terminal", Rules::writesToTerminal))
                .as("only command, script and the start write to the terminal")
                .because("every other room answers with values, and a window has no terminal")
                .allowEmptyShould(true);
    }

    /** Names that say nothing. */
    static ArchRule tellingNames() {
        return noClasses()
                .should()
                .haveNameMatching(".*(Manager|Helper|Utils?|Impl)")
                .as("a class is named after what it is")
                .because("such a name lets anything move in")
                .allowEmptyShould(true);
    }

    private static DescribedPredicate<JavaClass> dependOn(String pattern) {
        DescribedPredicate<JavaClass> there = resideInAPackage(pattern);
        return DescribedPredicate.describe(
                "depend on " + pattern,
                one -> one.getDirectDependenciesFromSelf().stream()
                        .anyMatch(dependency -> there.test(dependency.getTargetClass())));
    }

    private static boolean asksSurroundings(JavaAccess<?> access) {
        JavaClass owner = access.getTargetOwner();
        String name = access.getTarget().getName();
        if (owner.isEquivalentTo(System.class)) {
            return Set.of("currentTimeMillis", "nanoTime", "getProperty", "getenv")
                    .contains(name);
        }
        if (owner.isEquivalentTo(Locale.class)) {
            return name.equals("getDefault");
        }
        if (owner.isEquivalentTo(Math.class)) {
            return name.equals("random");
        }
        if (owner.isEquivalentTo(Random.class)) {
            return access.getDescription().contains("Random.<init>()>");
        }
        return owner.getPackageName().equals("java.time") && (name.equals("now") || name.startsWith("system"));
    }

    private static boolean writesToTerminal(JavaAccess<?> access) {
        String name = access.getTarget().getName();
        return name.equals("printStackTrace")
                || (access.getTargetOwner().isEquivalentTo(System.class)
                        && Set.of("out", "err").contains(name));
    }
}
