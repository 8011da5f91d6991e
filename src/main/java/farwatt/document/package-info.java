/** An open plan: the changes made to it, undo and redo, and where it was saved. */
@NullMarked
package farwatt.document;

import org.jspecify.annotations.NullMarked;
