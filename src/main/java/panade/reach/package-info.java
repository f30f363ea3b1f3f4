/**
 * What would bring the cost of a blend to a target: the least move of each number and price, and of pairs of numbers.
 */
@NullMarked
package panade.reach;

import org.jspecify.annotations.NullMarked;
