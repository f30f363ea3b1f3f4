/** Which mixings to try next, and what knowing how they come out is worth. */
@NullMarked
package panade.experiment;

import org.jspecify.annotations.NullMarked;
