/**
 * Plan files: read without losing anything, written in one canonical form, saved so that a kill at any moment leaves
 * the old or the new file; the journal that survives a crash. The form of the files is JSON and known only here.
 */
@NullMarked
package farwatt.file;

import org.jspecify.annotations.NullMarked;
