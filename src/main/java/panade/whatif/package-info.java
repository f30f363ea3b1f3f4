/** A brief with numbers, prices and stock changed in memory, and how the documents take what is typed. */
@NullMarked
package panade.whatif;

import org.jspecify.annotations.NullMarked;
