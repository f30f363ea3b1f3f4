/** Writes results as JSON for machines. */
@NullMarked
package panade.export;

import org.jspecify.annotations.NullMarked;
