/** A customer's list: what was understood, mending, taking in. */
@NullMarked
package farwatt.window.list;

import org.jspecify.annotations.NullMarked;
