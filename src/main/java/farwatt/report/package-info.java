/** What every room says to a person: notices with a place, spans, progress, cancel. */
@NullMarked
package farwatt.report;

import org.jspecify.annotations.NullMarked;
