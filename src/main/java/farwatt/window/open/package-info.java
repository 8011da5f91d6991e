/** The plan's file: open, save, journal, lock, changed underneath. */
@NullMarked
package farwatt.window.open;

import org.jspecify.annotations.NullMarked;
