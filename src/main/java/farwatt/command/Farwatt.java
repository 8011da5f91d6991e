package farwatt.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program as a whole; without a verb it shows the demo plan. */
@Command(
        name = "farwatt",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Plans networks that carry power and data over one long cable to places without a mains outlet.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:check found a failing finding or need",
            "2:the file or the call is wrong",
            "3:stopped by a limit or cancelled"
        },
        subcommands = {
            CheckVerb.class,
            SolveVerb.class,
            AskVerb.class,
            ExplainVerb.class,
            CompareVerb.class,
            SweepVerb.class,
            GrowVerb.class,
            LimitVerb.class,
            SpreadVerb.class,
            SensitivityVerb.class,
            RoomVerb.class,
            ScriptVerb.class,
            IntakeVerb.class,
            TakeOffVerb.class,
            WorkbookVerb.class,
            DiagramVerb.class,
            NamesVerb.class,
            TidyVerb.class
        })
final class Farwatt implements Callable<Integer> {
    final Output output;

    @Spec
    CommandSpec spec = CommandSpec.create();

    @Option(names = "--trace", scope = ScopeType.INHERIT, description = "Shows where in the program a failure began.")
    boolean trace;

    Farwatt(Output output) {
        this.output = output;
    }

    @Override
    public Integer call() throws Exception {
        return Demo.run(output);
    }
}
