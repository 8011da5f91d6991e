/**
 * From a plan to the value of every name: reading cells, ordering, solving, recalculating, explaining. The only room
 * that sees both the plan and the circuit.
 */
@NullMarked
package farwatt.engine;

import org.jspecify.annotations.NullMarked;
