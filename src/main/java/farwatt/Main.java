package farwatt;

import farwatt.command.CommandLineStart;
import farwatt.window.WindowStart;

/** Starts the program: the window where there is a display and no verb, else the command line. */
public final class Main {
    private Main() {}

    /** Runs what was called and leaves with its exit code. */
    public static void main(String[] arguments) {
        if (WindowStart.isMeant(arguments) && WindowStart.hasDisplay()) {
            WindowStart.run(arguments);
        } else {
            System.exit(CommandLineStart.run(arguments));
        }
    }
}
