/** Long work with progress and cancel, one type for all of it. */
@NullMarked
package farwatt.window.work;

import org.jspecify.annotations.NullMarked;
