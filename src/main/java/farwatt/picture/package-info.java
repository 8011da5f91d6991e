/** Pictures without a display: the single-line diagram and the charts of studies, as PNG and SVG. */
@NullMarked
package farwatt.picture;

import org.jspecify.annotations.NullMarked;
