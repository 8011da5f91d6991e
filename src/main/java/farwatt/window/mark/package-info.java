/** Shapes that go with words, so that nothing is said by colour alone. */
@NullMarked
package farwatt.window.mark;

import org.jspecify.annotations.NullMarked;
