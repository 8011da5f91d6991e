/** The window as a whole, and what it asks people. */
@NullMarked
package farwatt.window.frame;

import org.jspecify.annotations.NullMarked;
