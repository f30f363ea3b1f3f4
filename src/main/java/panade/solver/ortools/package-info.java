/** The only code that knows OR-Tools, and the only code that computes in binary floating point. */
@NullMarked
package panade.solver.ortools;

import org.jspecify.annotations.NullMarked;
