package farwatt.command;

import farwatt.report.Messages;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;
import picocli.CommandLine.ParseResult;

/** Runs one call of the command line; every failure becomes one sentence and an exit code. */
public final class CommandLineStart {
    private CommandLineStart() {}

    /** Runs a call and gives its exit code. */
    public static int run(String[] arguments) {
        Output output = Output.standard();
        try {
            return commandLine(output).execute(expand(arguments));
        } catch (Refusal e) {
            output.say(e.notice().line());
            return Exit.WRONG;
        } catch (OutOfMemoryError e) {
            output.say(Messages.text(CommandCode.OUT_OF_MEMORY));
            return Exit.STOPPED;
        } finally {
            output.flush();
        }
    }

    /** Puts the arguments of a file, one a line, in the place of {@code --args FILE}. */
    private static String[] expand(String[] arguments) throws Refusal {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < arguments.length; i++) {
            if (!arguments[i].equals("--args") || i + 1 == arguments.length) {
                all.add(arguments[i]);
                continue;
            }
            String file = arguments[++i];
            try {
                Files.readAllLines(Path.of(file), StandardCharsets.UTF_8).stream()
                        .filter(line -> !line.isBlank())
                        .forEach(all::add);
            } catch (IOException | InvalidPathException e) {
                throw Refusal.of(CommandCode.NO_ARGUMENT_FILE, file);
            }
        }
        return all.toArray(new String[0]);
    }

    private static CommandLine commandLine(Output output) {
        IFactory usual = CommandLine.defaultFactory();
        IFactory factory = new IFactory() {
            @Override
            public <K> K create(Class<K> type) throws Exception {
                return usual.create(type);
            }
        };
        CommandLine line = new CommandLine(new Farwatt(output), factory);
        line.setOut(new java.io.PrintWriter(output.raw(), true, StandardCharsets.UTF_8));
        line.setErr(new java.io.PrintWriter(output.errors(), true, StandardCharsets.UTF_8));
        line.setParameterExceptionHandler((e, args) -> {
            output.say(String.valueOf(e.getMessage()));
            CommandLine.UnmatchedArgumentException.printSuggestions(
                    e, e.getCommandLine().getErr());
            output.say("Call " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help for how.");
            return Exit.WRONG;
        });
        line.setExecutionExceptionHandler((e, command, result) -> fail(e, output, result));
        return line;
    }

    private static int fail(Exception e, Output output, ParseResult result) {
        boolean trace = result.originalArgs().contains("--trace");
        if (trace) {
            e.printStackTrace(output.errors());
        }
        if (e instanceof Refusal refusal) {
            output.say(refusal.notice().line());
            return Exit.WRONG;
        }
        if (e instanceof CancellationException) {
            output.say(String.valueOf(e.getMessage()));
            return Exit.STOPPED;
        }
        if (e instanceof IOException) {
            output.say(Messages.text(CommandCode.BAD_OUTPUT, "The file", String.valueOf(e.getMessage())));
            return Exit.WRONG;
        }
        output.say(Messages.text(CommandCode.BUG, e.getClass().getSimpleName()));
        return Exit.STOPPED;
    }
}
