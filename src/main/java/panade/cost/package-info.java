/** The full cost of a packed weight, prices at several batch sizes, and what keeping a printed label costs. */
@NullMarked
package panade.cost;

import org.jspecify.annotations.NullMarked;
