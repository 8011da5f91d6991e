package farwatt.script;

import java.time.Duration;

/**
 * What a run may take.
 *
 * @param megabytes memory of the process that runs scripts
 * @param statements of the script, its modules included
 * @param longest by the clock
 * @param printed characters that it may print
 */
public record Limits(int megabytes, long statements, Duration longest, long printed) {
    /** Room for any script that a person waits for. */
    public static final Limits USUAL = new Limits(768, 2_000_000_000L, Duration.ofMinutes(30), 8_000_000);
}
