/** Drawings of the picture room on the window. */
@NullMarked
package farwatt.window.raster;

import org.jspecify.annotations.NullMarked;
