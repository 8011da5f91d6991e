package farwatt.intake;

import org.apache.poi.openxml4j.util.ZipSecureFile;

/** Sets up the workbook library before its first use. */
final class Poi {
    /** Bytes a part of a workbook may unpack to whatever it is. */
    static final long LARGEST_UNASKED = 50L << 20;

    /** Bytes all texts of a workbook together may unpack to; they stay in memory. */
    static final long LARGEST_TEXTS = 100L << 20;

    /** Bytes a part may unpack to that packs as cells of people do; it is read from front to back. */
    private static final long LARGEST_PART = 400L << 20;

    /** Cells of people pack to a tenth; what packs to less than a fiftieth repeats itself without end. */
    private static final int DENSEST = 50;

    /** Parts of real workbooks that repeat themselves pack to half a per cent; a cap in bytes stops the others. */
    private static final double LEAST_RATIO = 0.0001;

    static {
        // else the library's logger says on standard error that it has nowhere to log to, and what is damaged
        usual("log4j2.loggerContextFactory", "org.apache.logging.log4j.simple.SimpleLoggerContextFactory");
        usual("org.apache.logging.log4j.simplelog.level", "OFF");
    }

    private Poi() {}

    private static void usual(String key, String value) {
        if (System.getProperty(key) == null) {
            System.setProperty(key, value);
        }
    }

    /** True for a part that unpacks to more than is good. */
    static boolean swells(long unpacked, long packed) {
        boolean dense = packed >= 0 && unpacked / DENSEST > packed;
        return unpacked > LARGEST_PART || (unpacked > LARGEST_UNASKED && dense);
    }

    /** To be called before a workbook is opened: the limits are the library's own and common to all who use it. */
    static void start() {
        ZipSecureFile.setMinInflateRatio(LEAST_RATIO);
        ZipSecureFile.setMaxEntrySize(LARGEST_PART);
    }
}
