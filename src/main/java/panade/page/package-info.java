/** Lays everything told of one product out as one page that needs nothing else. */
@NullMarked
package panade.page;

import org.jspecify.annotations.NullMarked;
