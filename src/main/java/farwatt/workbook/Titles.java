package farwatt.workbook;

import java.util.List;
import java.util.Map;

/** What the parts of a hand-over are called; formulas find tables by these names. */
final class Titles {
    static final String SUMMARY = "Summary";
    static final String POWER = "Power at each node";
    static final String DEVICES = "Devices";
    static final String RUNS = "Runs";
    static final String SOURCES = "Sources";
    static final String SWITCHES = "Switches";
    static final String ZONES = "Zones";
    static final String BUNDLES = "Bundles";
    static final String TYPED = "Values and needs";
    static final String FINDINGS = "Findings";
    static final String CAUTIONS = "Cautions";
    static final String TAKE_OFF = "Take-off";
    static final String LABELS = "Cable labels";
    static final String GRID = "Labels to cut";
    static final String TEST = "Test sheet";
    static final String JUDGING = "Judging readings";
    static final String WHY = "Why the verdict";
    static final String SCENARIOS = "Scenarios side by side";
    static final String ORDERS = "Take-off side by side";
    static final String NAMES = "How figures come about";

    /** Every sheet that may be of ours. */
    static final List<String> ALL = List.of(
            SUMMARY, POWER, DEVICES, RUNS, SOURCES, SWITCHES, ZONES, BUNDLES, TYPED, FINDINGS, CAUTIONS, TAKE_OFF,
            LABELS, GRID, TEST, JUDGING, WHY, NAMES, SCENARIOS, ORDERS);

    /** Sheets that only go with another one: their formulas look into it, or the other way round. */
    static final Map<String, String> FOLLOWING = Map.of(JUDGING, TEST, GRID, LABELS);

    private Titles() {}
}
