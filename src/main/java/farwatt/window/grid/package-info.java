/**
 * The grid: a plan's tables with their values, edited in place. {@link farwatt.window.grid.Sheet} is what it needs from
 * outside, {@link farwatt.window.grid.GridView} what a window puts on the screen. Classes without JavaFX types hold
 * what happens; the views only show it and pass on keys and clicks.
 */
@NullMarked
package farwatt.window.grid;

import org.jspecify.annotations.NullMarked;
