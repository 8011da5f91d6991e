package farwatt.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Several ports in one cell: 1-4, ports 3, 5 and 7. */
final class Ports {
    private static final Pattern LIST =
            Pattern.compile("(?i)(?:ports?\\s*)?(\\d{1,2}(?:\\s*(?:[-–,;+/&]|and|und|to|bis)\\s*\\d{1,2})+)");
    private static final Pattern SPAN = Pattern.compile("(\\d{1,2})(?:\\s*(?:[-–]|to|bis)\\s*(\\d{1,2}))?");
    private static final int MOST = 96;

    private Ports() {}

    /** The numbers in their order; empty when the text lists none. */
    static List<String> of(String text) {
        Matcher m = LIST.matcher(text);
        List<String> ports = new ArrayList<>();
        if (m.matches()) {
            Matcher span = SPAN.matcher(m.group(1));
            while (span.find()) {
                int from = Integer.parseInt(span.group(1));
                int to = span.group(2) == null ? from : Integer.parseInt(span.group(2));
                for (int port = from; port <= Math.min(to, MOST); port++) {
                    ports.add(String.valueOf(port));
                }
            }
        }
        return ports;
    }
}
