/** Fits what was measured on trials to what was weighed into them, and says what they teach and what they do not. */
@NullMarked
package panade.trial;

import org.jspecify.annotations.NullMarked;
