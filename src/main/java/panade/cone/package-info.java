/** Least cost under second-order cones, by cuts that are checked and between two proved bounds. */
@NullMarked
package panade.cone;

import org.jspecify.annotations.NullMarked;
