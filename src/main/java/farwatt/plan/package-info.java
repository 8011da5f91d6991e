/** What a person filled in: immutable rows of cells as typed, sealed changes, scenarios. */
@NullMarked
package farwatt.plan;

import org.jspecify.annotations.NullMarked;
