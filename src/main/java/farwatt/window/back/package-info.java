/** A hand-over workbook that people worked in, taken back. */
@NullMarked
package farwatt.window.back;

import org.jspecify.annotations.NullMarked;
