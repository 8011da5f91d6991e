/** Where the program starts: the window or one command line, and nothing else. */
@NullMarked
package farwatt;

import org.jspecify.annotations.NullMarked;
