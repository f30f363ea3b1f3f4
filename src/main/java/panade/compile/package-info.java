/** Turns a brief into a linear model, and every row and column back into a line of the brief. */
@NullMarked
package panade.compile;

import org.jspecify.annotations.NullMarked;
