/** The window: a folder a feature, each a view (layout, bindings) and a view model (no scene types). */
@NullMarked
package farwatt.window;

import org.jspecify.annotations.NullMarked;
