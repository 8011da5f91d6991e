/** The console: scripts typed, run away from the window, looked at, kept and applied. */
@NullMarked
package farwatt.window.console;

import org.jspecify.annotations.NullMarked;
