/** The cheapest blend without an ingredient, and what each stand-in for it would cost. */
@NullMarked
package panade.substitute;

import org.jspecify.annotations.NullMarked;
