/**
 * Power flow and cable heat as numbers only: arrays in, arrays and a status out.
 *
 * <p>Nothing here knows of plans, names or sentences, and nothing imports more than the Java library. All values are
 * SI doubles (W, V, A, ohm, m, °C for temperatures, K for differences). A solve allocates nothing, always starts cold
 * and therefore never depends on what was solved before.
 */
@NullMarked
package farwatt.circuit;

import org.jspecify.annotations.NullMarked;
