/** The line on top: plan, scenarios, corner, verdict, units, undo. */
@NullMarked
package farwatt.window.top;

import org.jspecify.annotations.NullMarked;
