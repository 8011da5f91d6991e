/**
 * The console's language host: scripts run in a child process of their own, which this room starts, talks to and ends,
 * and the objects they are offered.
 */
@NullMarked
package farwatt.script;

import org.jspecify.annotations.NullMarked;
