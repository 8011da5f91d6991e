/** The names of everything: table, kind, unit, stage, default, sentence, formula, source; one data structure. */
@NullMarked
package farwatt.catalogue;

import org.jspecify.annotations.NullMarked;
