package farwatt.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Starts a class of the tests in a process of its own, which can be killed. */
final class Child {
    private Child() {}

    static Process start(Class<?> main, String... words) throws IOException {
        List<String> call = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx128m",
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        call.addAll(List.of(words));
        return new ProcessBuilder(call).redirectErrorStream(true).start();
    }
}
