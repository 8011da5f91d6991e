package farwatt.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** No file and no method of the program grows beyond what can be read in one go. */
class SizeTest {
    private static final int FILE_LINES = 400;
    private static final int METHOD_LINES = 50;

    /** Who may be longer, and why: {@code plan/Plan.java} for a file, {@code plan/Plan.java#apply} for a method. */
    private static final Map<String, String> EXCEPTIONS = Map.of();

    private static final Path MAIN = Path.of(System.getProperty("farwatt.root", ""), "src/main/java/farwatt");

    @Test
    void noFileIsLongerThanItsCap() throws IOException {
        List<String> tooLong = new ArrayList<>();
        for (Path file : sources()) {
            int lines = Files.readAllLines(file).size();
            if (lines > FILE_LINES && !EXCEPTIONS.containsKey(shortName(file))) {
                tooLong.add(shortName(file) + " has " + lines + " lines");
            }
        }
        assertEquals(List.of(), tooLong, "at most " + FILE_LINES + " lines a file");
    }

    @Test
    void noMethodIsLongerThanItsCap() throws IOException {
        List<String> tooLong = methods().stream()
                .filter(method -> method.lines() > METHOD_LINES)
                .filter(method -> !EXCEPTIONS.containsKey(method.file() + "#" + method.name()))
                .map(Sizes.Method::toString)
                .toList();
        assertEquals(List.of(), tooLong, "at most " + METHOD_LINES + " lines a method");
    }

    @Test
    void everyExceptionIsStillNeeded() throws IOException {
        Set<String> needed = methods().stream()
                .filter(method -> method.lines() > METHOD_LINES)
                .map(method -> method.file() + "#" + method.name())
                .collect(Collectors.toCollection(TreeSet::new));
        for (Path file : sources()) {
            if (Files.readAllLines(file).size() > FILE_LINES) {
                needed.add(shortName(file));
            }
        }
        Set<String> idle = new TreeSet<>(EXCEPTIONS.keySet());
        idle.removeAll(needed);
        assertEquals(Set.of(), idle, "exceptions that can go");
    }

    @Test
    void linesAreCountedFromTheHeadToTheClosingBrace() throws IOException {
        JavaFileObject source = source("""
                class Sample {
                    static {
                        int none = 0;
                    }

                    /** Not counted. */
                    @Deprecated
                    void four() {
                        Runnable r = () -> {};
                    }

                    int one() { return 1; }

                    Sample() {
                    }

                    Object inner() {
                        return new Object() {
                            public String toString() {
                                return "}";
                            }
                        };
                    }
                }
                """);
        Map<String, Long> lines =
                Sizes.of(List.of(source)).stream().collect(Collectors.toMap(Sizes.Method::name, Sizes.Method::lines));
        assertEquals(
                Map.of("<initialiser>", 3L, "four", 4L, "one", 1L, "<init>", 2L, "inner", 7L, "toString", 3L), lines);
    }

    private static JavaFileObject source(String text) {
        return new SimpleJavaFileObject(URI.create("planted:///Sample.java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return text;
            }
        };
    }

    private static List<Sizes.Method> methods() throws IOException {
        try (StandardJavaFileManager files =
                ToolProvider.getSystemJavaCompiler().getStandardFileManager(null, Locale.ROOT, null)) {
            return Sizes.of(files.getJavaFileObjectsFromPaths(sources())).stream()
                    .map(method -> new Sizes.Method(shortName(Path.of(method.file())), method.name(), method.lines()))
                    .toList();
        }
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> all = Files.walk(MAIN)) {
            return all.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }

    private static String shortName(Path file) {
        return MAIN.relativize(file).toString().replace('\\', '/');
    }
}
