package farwatt.intake;

import java.io.IOException;
import org.apache.poi.util.RecordFormatException;

/** Tells the library's alarm at parts that unpack to too much from damage. */
final class Swelling {
    /** What a part that swells is reported with. */
    static final String ALARM = "Zip bomb";

    private static final int DEEPEST = 20;

    private Swelling() {}

    static boolean isCause(Throwable thrown) {
        Throwable cause = thrown;
        for (int depth = 0; cause != null && depth < DEEPEST; depth++) {
            String text = cause.getMessage() == null ? "" : cause.getMessage();
            boolean alarm = cause instanceof IOException || cause instanceof RecordFormatException;
            if (alarm && (text.contains(ALARM) || text.contains("MAX_ENTRY_SIZE") || text.contains("ratio"))) {
                return true;
            }
            cause = cause.getCause();
        }
        return false;
    }
}
