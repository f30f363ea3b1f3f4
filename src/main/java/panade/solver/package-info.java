/** The port: a model in, a closed family of answers out. */
@NullMarked
package panade.solver;

import org.jspecify.annotations.NullMarked;
