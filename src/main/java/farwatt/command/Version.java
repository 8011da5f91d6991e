package farwatt.command;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The program's version, as the build wrote it down. */
final class Version implements IVersionProvider {
    /** Such as {@code 1.0.0}. */
    static String number() {
        Properties build = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("/farwatt/build.properties")) {
            if (in != null) {
                build.load(in);
            }
        } catch (IOException e) {
            return "unknown";
        }
        return build.getProperty("version", "unknown");
    }

    @Override
    public String[] getVersion() {
        return new String[] {"Farwatt " + number()};
    }
}
