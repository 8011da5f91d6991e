package farwatt.window;

import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.report.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import javafx.application.Application;

/** Starts the window. */
public final class WindowStart {
    private static final String DEMO = "ferry-landing.farwatt.json";

    private WindowStart() {}

    /** True for a call without a verb: nothing at all, or a plan file alone. */
    public static boolean isMeant(String[] arguments) {
        return arguments.length == 0
                || (arguments.length == 1
                        && arguments[0].toLowerCase(Locale.ROOT).endsWith(".farwatt.json"));
    }

    /** True where a window can be shown. */
    public static boolean hasDisplay() {
        String platform = System.getProperty("glass.platform", "");
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        boolean screen = system.contains("win")
                || system.contains("mac")
                || !String.valueOf(System.getenv().getOrDefault("DISPLAY", "")).isBlank();
        return platform.equals("Monocle") || (screen && !Boolean.getBoolean("java.awt.headless"));
    }

    /** Shows the window and comes back when it is closed. */
    public static void run(String[] arguments) {
        Application.launch(FarwattWindow.class, arguments);
    }

    /** The plan that is open when nothing else is. */
    static Plan demo() throws IOException, Refusal {
        try (InputStream in = WindowStart.class.getResourceAsStream("/farwatt/scenarios/" + DEMO)) {
            if (in == null) {
                throw new IllegalStateException("no demo plan");
            }
            return PlanReader.read(in.readAllBytes(), DEMO).plan();
        }
    }
}
