package farwatt.intake;

import org.apache.poi.openxml4j.util.ZipSecureFile;

/** Sets up the workbook library before its first use. */
final class Poi {
    /** Bytes a part of a workbook may unpack to. */
    static final long LARGEST_PART = 50L << 20;

    /** Parts of real workbooks that repeat themselves pack to half a per cent; a cap in bytes stops the others. */
    private static final double LEAST_RATIO = 0.0001;

    static {
        // the library's logger says on standard error that it has nowhere to log to
        String key = "log4j2.loggerContextFactory";
        if (System.getProperty(key) == null) {
            System.setProperty(key, "org.apache.logging.log4j.simple.SimpleLoggerContextFactory");
        }
    }

    private Poi() {}

    /** To be called before a workbook is opened: the limits are the library's own and common to all who use it. */
    static void start() {
        ZipSecureFile.setMinInflateRatio(LEAST_RATIO);
        ZipSecureFile.setMaxEntrySize(LARGEST_PART);
    }
}
