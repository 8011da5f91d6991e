package farwatt.bench;

import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryUsage;
import java.util.concurrent.atomic.AtomicLong;
import javax.management.NotificationEmitter;
import javax.management.openmbean.CompositeData;

/**
 * The most bytes of heap that were in use right after a collection: what had to be kept, without what merely was not
 * swept yet. Read from the collectors' own notices; for one fork of a benchmark.
 */
public final class Heap {
    private static final String FINISHED = "com.sun.management.gc.notification";

    private final AtomicLong most = new AtomicLong();

    /** Starts to listen. */
    public static Heap watched() {
        Heap heap = new Heap();
        for (GarbageCollectorMXBean collector : ManagementFactory.getGarbageCollectorMXBeans()) {
            ((NotificationEmitter) collector)
                    .addNotificationListener(
                            (notice, unused) -> {
                                if (notice.getType().equals(FINISHED)) {
                                    heap.see((CompositeData) notice.getUserData());
                                }
                            },
                            null,
                            null);
        }
        return heap;
    }

    private void see(CompositeData notice) {
        CompositeData info = (CompositeData) notice.get("gcInfo");
        long used = 0;
        for (Object row : ((javax.management.openmbean.TabularData) info.get("memoryUsageAfterGc")).values()) {
            CompositeData pool = (CompositeData) row;
            String name = (String) pool.get("key");
            boolean heap = !name.contains("Code") && !name.contains("Metaspace") && !name.contains("Class");
            used += heap ? MemoryUsage.from((CompositeData) pool.get("value")).getUsed() : 0;
        }
        most.accumulateAndGet(used, Math::max);
    }

    /** Says the figure in a line of its own. */
    public void say(String of) {
        System.out.println(of + ": at most " + (most.get() >> 20) + " MB in use after a collection");
    }
}
