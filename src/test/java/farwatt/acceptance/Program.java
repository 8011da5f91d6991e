package farwatt.acceptance;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Starts the packaged jar as a person would. */
final class Program {
    static final Path ROOT = Path.of(System.getProperty("farwatt.root", "."));
    static final Path JAR = Path.of(System.getProperty("farwatt.jar", "target/farwatt.jar"));

    /** What came of one call. */
    record Run(int exit, String out, String err) {
        /** No call may ever show where in the code it failed. */
        boolean isClean() {
            return !(out + err).contains("\tat ") && !(out + err).contains("Exception") && !out.contains("NaN");
        }
    }

    private Program() {}

    static Path scenario(String name) {
        return ROOT.resolve("scenarios").resolve(name);
    }

    static Run run(Object... arguments) throws IOException, InterruptedException {
        return run(Map.of(), JAR, arguments);
    }

    static Run run(Map<String, String> environment, Path jar, Object... arguments)
            throws IOException, InterruptedException {
        List<String> call = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx1g"));
        // the program counts for coverage as its tests do
        ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(argument -> argument.startsWith("-javaagent:"))
                .forEach(call::add);
        call.addAll(List.of("-jar", jar.toString()));
        for (Object argument : arguments) {
            call.add(argument.toString());
        }
        Path out = Files.createTempFile("out", ".txt");
        Path err = Files.createTempFile("err", ".txt");
        try {
            ProcessBuilder builder =
                    new ProcessBuilder(call).redirectOutput(out.toFile()).redirectError(err.toFile());
            builder.environment().putAll(environment);
            builder.environment().remove("DISPLAY");
            Process process = builder.start();
            if (!process.waitFor(120, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError("still running after two minutes: " + call);
            }
            return new Run(
                    process.exitValue(),
                    Files.readString(out, StandardCharsets.UTF_8),
                    Files.readString(err, StandardCharsets.UTF_8));
        } finally {
            Files.deleteIfExists(out);
            Files.deleteIfExists(err);
        }
    }
}
