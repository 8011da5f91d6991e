/** The single-line diagram in the window. */
@NullMarked
package farwatt.window.diagram;

import org.jspecify.annotations.NullMarked;
