package farwatt.standard;

import java.util.List;
import java.util.Optional;

/**
 * Starting figures for a kind of device: trade ranges, not a standard. A person's own figures always win.
 *
 * @param word the kind, such as "fixed camera"
 * @param typical usual watts
 * @param night watts with infrared or heating at work; NaN if not known
 * @param most most watts
 * @param usualClass the class it usually has, "" if none
 * @param bitrate bit/s
 * @param note what to mind
 */
public record DeviceKind(
        String word, double typical, double night, double most, String usualClass, double bitrate, String note) {
    private static final List<DeviceKind> ALL = Facts.rows("device-kinds").stream()
            .map(row -> new DeviceKind(
                    row.getField("kind"),
                    Facts.number(row, "typical_w"),
                    Facts.number(row, "night_w"),
                    Facts.number(row, "most_w"),
                    row.getField("usual_class"),
                    Facts.number(row, "bitrate_mbps") * 1e6,
                    row.getField("note")))
            .toList();

    public static List<DeviceKind> all() {
        return ALL;
    }

    public static Optional<DeviceKind> of(String word) {
        return ALL.stream().filter(kind -> kind.word.equals(word)).findFirst();
    }
}
