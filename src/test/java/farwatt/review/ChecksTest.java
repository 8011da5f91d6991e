package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Corner;
import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every check with a plan that just passes it and one that just fails it, and the sentence it says then. */
class ChecksTest {
    private record Pair(String passes, String fails) {}

    private static Map<String, Pair> pairs() throws IOException {
        Map<String, Pair> pairs = new LinkedHashMap<>();
        String[] parts = Golden.read("plans.txt").split("(?m)^== ", -1);
        for (String part : Arrays.copyOfRange(parts, 1, parts.length)) {
            int end = part.indexOf('\n');
            String[] plans = part.substring(end).split("(?m)^-- (passes|fails)$", -1);
            pairs.put(part.substring(0, end).strip(), new Pair(plans[0] + plans[1], plans[0] + plans[2]));
        }
        return pairs;
    }

    private static List<Finding> of(String plan, String code) {
        return Sketch.review(plan).findings().stream()
                .filter(f -> f.code().equals(code))
                .toList();
    }

    @Test
    void everyCodeHasAPairOfPlans() throws IOException {
        Set<String> codes = new TreeSet<>();
        Arrays.stream(ReviewCode.values()).forEach(code -> codes.add(code.key()));
        assertEquals(codes, new TreeSet<>(pairs().keySet()));
    }

    @Test
    void aPlanWithinItsLimitsIsNotBlamed() throws IOException {
        for (Map.Entry<String, Pair> each : pairs().entrySet()) {
            List<Finding> found = of(each.getValue().passes(), each.getKey());
            assertTrue(found.isEmpty(), () -> each.getKey() + " " + found);
        }
    }

    @Test
    void aPlanPastALimitIsToldWhereWhatAndHowMuch() throws IOException {
        StringBuilder all = new StringBuilder();
        for (Map.Entry<String, Pair> each : pairs().entrySet()) {
            List<Finding> found = of(each.getValue().fails(), each.getKey());
            assertFalse(found.isEmpty(), each.getKey());
            for (Finding f : found) {
                String corner = f.corner().map(Corner::word).orElse("always");
                all.append(String.join(
                                " · ",
                                f.code(),
                                f.level().word(),
                                corner,
                                f.place().text()))
                        .append('\n')
                        .append(f.text())
                        .append('\n');
                if (!f.caution().isEmpty()) {
                    all.append("! ").append(f.caution()).append('\n');
                }
                all.append('\n');
            }
        }
        Golden.compare("findings.txt", all.toString());
    }
}
