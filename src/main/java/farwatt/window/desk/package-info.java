/** An open plan as the window sees it: edits at once, answers from another thread as stills. */
@NullMarked
package farwatt.window.desk;

import org.jspecify.annotations.NullMarked;
