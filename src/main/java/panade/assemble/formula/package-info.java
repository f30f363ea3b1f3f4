/** Makes the results of commands that lay formulas side by side. */
@NullMarked
package panade.assemble.formula;

import org.jspecify.annotations.NullMarked;
