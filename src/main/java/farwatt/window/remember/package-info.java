/** What is remembered between starts: recent plans, theme, units, size. */
@NullMarked
package farwatt.window.remember;

import org.jspecify.annotations.NullMarked;
