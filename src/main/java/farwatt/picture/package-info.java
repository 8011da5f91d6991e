/** The single-line diagram and pictures of studies, drawn without a display: PNG and SVG. */
@NullMarked
package farwatt.picture;

import org.jspecify.annotations.NullMarked;
