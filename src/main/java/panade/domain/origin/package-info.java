/** Where a value was written, and what is remarked of it. */
@NullMarked
package panade.domain.origin;

import org.jspecify.annotations.NullMarked;
