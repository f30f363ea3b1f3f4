/** What the commands on formulas answer. */
@NullMarked
package panade.result.formula;

import org.jspecify.annotations.NullMarked;
