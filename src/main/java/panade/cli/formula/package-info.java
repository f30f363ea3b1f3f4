/** The commands on formulas. */
@NullMarked
package panade.cli.formula;

import org.jspecify.annotations.NullMarked;
