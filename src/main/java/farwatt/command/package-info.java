/** The command line: one small class a verb. */
@NullMarked
package farwatt.command;

import org.jspecify.annotations.NullMarked;
