/** Exact numbers with units, and nothing about food. */
@NullMarked
package panade.quantity;

import org.jspecify.annotations.NullMarked;
