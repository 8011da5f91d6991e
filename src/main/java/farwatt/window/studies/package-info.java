/** Studies at the bench: what to vary and to read, a run in the background, results as table and picture. */
@NullMarked
package farwatt.window.studies;

import org.jspecify.annotations.NullMarked;
