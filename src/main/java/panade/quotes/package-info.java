/** The cheapest blend under each of several price lists, and the regret of staying with another list's blend. */
@NullMarked
package panade.quotes;

import org.jspecify.annotations.NullMarked;
