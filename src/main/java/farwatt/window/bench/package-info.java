/** The bench below: what is compared, taken in, studied and scripted. */
@NullMarked
package farwatt.window.bench;

import org.jspecify.annotations.NullMarked;
