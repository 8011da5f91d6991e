package farwatt.script;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.util.Comparator;
import java.util.Optional;

/**
 * Ends the process when its heap stays full. Java by itself gives up only after it has cleared a full heap over and
 * over, which takes a minute and more while nothing moves.
 */
final class MemoryWatch {
    /** What Java itself ends with where it is told to end for want of memory. */
    static final int OUT_OF_MEMORY = 3;

    private static final double FULL = 0.97;
    private static final long PAUSE = 200;

    private MemoryWatch() {}

    /** Looks five times a second whether the place of all that stays was still full after it was cleared. */
    static void start() {
        Optional<MemoryPoolMXBean> largest = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP && pool.getCollectionUsage() != null)
                .max(Comparator.comparingLong(pool -> pool.getUsage().getMax()));
        largest.ifPresent(pool -> {
            Thread watch = new Thread(() -> watch(pool), "memory");
            watch.setDaemon(true);
            watch.start();
        });
    }

    private static void watch(MemoryPoolMXBean pool) {
        try {
            while (true) {
                Thread.sleep(PAUSE);
                MemoryUsage left = pool.getCollectionUsage();
                if (left.getUsed() > FULL * left.getMax()) {
                    Runtime.getRuntime().halt(OUT_OF_MEMORY);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
