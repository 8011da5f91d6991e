package farwatt.workbook;

/** What the parts of a hand-over are called. */
final class Titles {
    static final String SUMMARY = "Summary";
    static final String POWER = "Power at each node";
    static final String DEVICES = "Devices";
    static final String RUNS = "Runs";
    static final String SOURCES = "Sources";
    static final String SWITCHES = "Switches";
    static final String FINDINGS = "Findings";
    static final String CAUTIONS = "Cautions";

    private Titles() {}
}
