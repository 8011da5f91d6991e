package farwatt.script;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.Engine;
import org.graalvm.polyglot.EnvironmentAccess;
import org.graalvm.polyglot.HostAccess;
import org.graalvm.polyglot.PolyglotAccess;
import org.graalvm.polyglot.ResourceLimits;
import org.graalvm.polyglot.Source;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.io.IOAccess;

/**
 * One script's own world: the language, the objects of the prelude, and nothing of the machine. Confined to one thread;
 * the language's engine is shared by all of them.
 */
final class Sandbox implements AutoCloseable {
    private static final String LANGUAGE = "js";
    /** Sources of ours begin with this; they are left out of what people see of a chain of calls. */
    static final String OURS = "farwatt:";

    private static final Engine ENGINE = Engine.newBuilder(LANGUAGE)
            .option("engine.WarnInterpreterOnly", "false")
            .out(OutputStream.nullOutputStream())
            .err(OutputStream.nullOutputStream())
            .build();
    private static final Source PRELUDE = prelude();

    private final Context context;
    private final Value shown;

    Sandbox(WorkingPlan working, Script script, List<String> arguments, long statements, Console console) {
        context = context(script.folder(), statements);
        shown = context.eval(PRELUDE).execute(Offered.of(working, arguments, console));
    }

    private static Context context(Optional<Path> folder, long statements) {
        Context.Builder builder = Context.newBuilder(LANGUAGE)
                .engine(ENGINE)
                .allowExperimentalOptions(true)
                .allowHostAccess(HostAccess.NONE)
                .allowHostClassLoading(false)
                .allowCreateThread(false)
                .allowCreateProcess(false)
                .allowNativeAccess(false)
                .allowInnerContextOptions(false)
                .allowEnvironmentAccess(EnvironmentAccess.NONE)
                .allowPolyglotAccess(PolyglotAccess.NONE)
                .allowIO(IOAccess.newBuilder()
                        .fileSystem(new ModuleFiles(folder))
                        .build())
                .in(InputStream.nullInputStream())
                .out(OutputStream.nullOutputStream())
                .err(OutputStream.nullOutputStream())
                .resourceLimits(ResourceLimits.newBuilder()
                        .statementLimit(statements, source -> !source.getName().startsWith(OURS))
                        .build())
                .option("js.strict", "true");
        for (String off :
                List.of("load", "print", "console", "graal-builtin", "polyglot-builtin", "global-arguments")) {
            builder.option("js." + off, "false");
        }
        return builder.option("js.java-package-globals", "false")
                .option("js.performance", "false")
                .option("js.shared-array-buffer", "false")
                .option("js.unhandled-rejections", "throw")
                .build();
    }

    private static Source prelude() {
        try (InputStream in = Objects.requireNonNull(Sandbox.class.getResourceAsStream("/farwatt/script/prelude.js"))) {
            return Source.newBuilder(LANGUAGE, new InputStreamReader(in, StandardCharsets.UTF_8), OURS + "prelude")
                    .internal(true)
                    .build();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Runs a script and gives its last value as people read it. */
    String run(Script script) throws IOException {
        Source.Builder source = script.folder().isPresent()
                ? Source.newBuilder(
                                LANGUAGE,
                                script.folder().get().resolve(script.name()).toFile())
                        .content(script.text())
                : Source.newBuilder(LANGUAGE, script.text(), script.name());
        boolean module = script.name().endsWith(".mjs") || ModuleText.isModule(script.text());
        if (module) {
            source.mimeType("application/javascript+module");
        }
        Value value = context.eval(source.name(script.name()).build());
        return module || script.kind() == Script.Kind.FILE
                ? ""
                : shown.execute(value).asString();
    }

    @Override
    public void close() {
        context.close(true);
    }
}
