/** Judges solved values: findings, the verdict over all corners, what to mind. */
@NullMarked
package farwatt.review;

import org.jspecify.annotations.NullMarked;
