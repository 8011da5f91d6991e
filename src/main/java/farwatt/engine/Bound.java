package farwatt.engine;

import farwatt.language.Checked;
import farwatt.language.Planned;
import java.util.List;

/**
 * An expression ready for the rows it stands in.
 *
 * @param text as typed
 * @param checked what it means, for explanations
 * @param deps what it reads
 */
record Bound(String text, Checked checked, Planned planned, List<Dep> deps) {}
