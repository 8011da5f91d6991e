/** Dimensions, units, parsing and printing; SI doubles inside. */
@NullMarked
package farwatt.quantity;

import org.jspecify.annotations.NullMarked;
