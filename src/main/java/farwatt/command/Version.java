package farwatt.command;

import farwatt.report.Build;
import picocli.CommandLine.IVersionProvider;

/** The program's version, as the build wrote it down. */
final class Version implements IVersionProvider {
    /** Such as {@code 1.0.0}. */
    static String number() {
        return Build.version();
    }

    @Override
    public String[] getVersion() {
        return new String[] {"Farwatt " + number()};
    }
}
