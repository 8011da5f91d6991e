/** Scenarios side by side. */
@NullMarked
package farwatt.window.compare;

import org.jspecify.annotations.NullMarked;
