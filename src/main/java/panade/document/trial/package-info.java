/** Reads trials: what was weighed, how it was made, and what was measured. */
@NullMarked
package panade.document.trial;

import org.jspecify.annotations.NullMarked;
