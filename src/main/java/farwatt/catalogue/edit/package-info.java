/** Edits that go by what columns mean: entries, copies, drops, renames; each makes changes from a plan. */
@NullMarked
package farwatt.catalogue.edit;

import org.jspecify.annotations.NullMarked;
