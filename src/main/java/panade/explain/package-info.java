/** Says what binds, what it costs and at which price something would change. */
@NullMarked
package panade.explain;

import org.jspecify.annotations.NullMarked;
