/** Measures a blend against a brief straight from the domain, never through the compiled model. */
@NullMarked
package panade.audit;

import org.jspecify.annotations.NullMarked;
