/** Reads a brief: batch, bounds, rules, cost basis and label order. */
@NullMarked
package panade.document.brief;

import org.jspecify.annotations.NullMarked;
