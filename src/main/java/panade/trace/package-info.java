/** The curve of the least cost over one price or one number of a bound, proved at every breakpoint. */
@NullMarked
package panade.trace;

import org.jspecify.annotations.NullMarked;
