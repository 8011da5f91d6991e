package farwatt.intake;

import org.apache.poi.openxml4j.util.ZipSecureFile;

/** Sets up the workbook library before its first use. */
final class Poi {
    /** Bytes a part of a workbook may unpack to. */
    static final long LARGEST_PART = 50L << 20;

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

    /** To be called before a workbook is opened: the limits are the library's own and common to all who use it. */
    static void start() {
        ZipSecureFile.setMinInflateRatio(LEAST_RATIO);
        ZipSecureFile.setMaxEntrySize(LARGEST_PART);
    }
}
