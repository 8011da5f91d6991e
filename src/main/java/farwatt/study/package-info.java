/** Many calculations of one plan: what happens when cells take other values, and how far one can go. */
@NullMarked
package farwatt.study;

import org.jspecify.annotations.NullMarked;
