package farwatt.workbook;

import farwatt.engine.Corner;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a hand-over was written of; kept among the workbook's properties, which programs leave alone.
 *
 * @param scenario its id, "" for the plan itself
 * @param corner the one that was looked at
 * @param fingerprint of the plan file, "" if there was none
 */
public record Origin(String scenario, Corner corner, String fingerprint) {
    private static final String SCENARIO = "Farwatt hand-over";
    private static final String CORNER = "Farwatt corner";
    private static final String PLAN = "Farwatt plan";
    private static final String BASE = "base";

    static Origin of(Handover content) {
        return new Origin(
                content.scenario().orElse(""),
                content.calc().corner(),
                content.planFingerprint().orElse(""));
    }

    Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put(SCENARIO, scenario.isEmpty() ? BASE : scenario);
        words.put(CORNER, corner.word());
        if (!fingerprint.isEmpty()) {
            words.put(PLAN, fingerprint);
        }
        return words;
    }

    static Optional<Origin> of(Map<String, String> words) {
        String scenario = words.getOrDefault(SCENARIO, "");
        if (scenario.isEmpty()) {
            return Optional.empty();
        }
        Corner corner = Corner.of(words.getOrDefault(CORNER, "")).orElse(Corner.TYPICAL);
        return Optional.of(new Origin(scenario.equals(BASE) ? "" : scenario, corner, words.getOrDefault(PLAN, "")));
    }

    /** True when the plan file is another than the one the workbook was written from. */
    public boolean isOlderThan(String fingerprintNow) {
        return !fingerprint.isEmpty() && !fingerprint.equals(fingerprintNow);
    }
}
