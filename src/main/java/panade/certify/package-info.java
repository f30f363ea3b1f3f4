/** Decides in exact arithmetic what a solver's answer really proves. */
@NullMarked
package panade.certify;

import org.jspecify.annotations.NullMarked;
