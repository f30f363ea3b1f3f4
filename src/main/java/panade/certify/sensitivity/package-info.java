/** One-sided rates and entering prices, by pivots from a proved optimum. */
@NullMarked
package panade.certify.sensitivity;

import org.jspecify.annotations.NullMarked;
