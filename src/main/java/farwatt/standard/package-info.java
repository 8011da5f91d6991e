/** Facts as data files with their source: classes, wire, heat, reach, limits, battery, kinds of device. */
@NullMarked
package farwatt.standard;

import org.jspecify.annotations.NullMarked;
