/** What to order for the plan looked at. */
@NullMarked
package farwatt.window.takeoff;

import org.jspecify.annotations.NullMarked;
