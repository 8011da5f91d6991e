/** Why a value is what it is, and what the review found. */
@NullMarked
package farwatt.window.why;

import org.jspecify.annotations.NullMarked;
