/** Customers' lists in: find out what a file is, read it, map it, understand it, report every row. */
@NullMarked
package farwatt.intake;

import org.jspecify.annotations.NullMarked;
