package farwatt.report;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

/** What the build wrote down about itself. */
public final class Build {
    private static final String UNKNOWN = "unknown";

    private Build() {}

    /** The program's version, such as {@code 1.0.0}. */
    public static String version() {
        Properties build = new Properties();
        try (InputStream in = Build.class.getResourceAsStream("/farwatt/build.properties")) {
            if (in != null) {
                build.load(in);
            }
        } catch (IOException e) {
            return UNKNOWN;
        }
        return build.getProperty("version", UNKNOWN);
    }
}
