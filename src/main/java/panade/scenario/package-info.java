/**
 * Many price vectors for one model, answered on a graph of known bases in binary floating point. Which bases there are
 * does not depend on prices, so what is learnt for one draw serves all. What an answer is worth is told by a proof of
 * its basis, elsewhere.
 */
@NullMarked
package panade.scenario;

import org.jspecify.annotations.NullMarked;
