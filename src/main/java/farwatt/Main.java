package farwatt;

import farwatt.command.CommandLineStart;

/** Starts the program. */
public final class Main {
    private Main() {}

    /** Runs the command line and leaves with its exit code. */
    public static void main(String[] arguments) {
        System.exit(CommandLineStart.run(arguments));
    }
}
